import { requireObject } from "../../input/index.ts";
import type { ParameterSeries } from "./parameter-series.ts";
import { seriesOfTable } from "./series-of-table.ts";
import type { StripHistory } from "./strip-history.ts";
import { stripTable } from "./strip-table.ts";

/**
 * Series of deviations from aim of every parameter and colour of one process, in the order of time:
 * what a control chart is drawn from.
 *
 * Each strip is compared with the aims of its own batch (a crossover's moved aims where there was
 * one), so a series runs on across a change of batch. A strip that lacks a patch leaves a gap in the
 * series that need it. Strips of the same minute keep the order in which they were given.
 *
 * @param history strips, batches, crossovers, process specification, and the time up to which strips
 * count
 * @returns one series for each parameter and colour; none has readings if the process has no strips
 * @throws InputError if a strip's batch is not registered, a batch lacks a patch that is needed, or
 * a time or density is not valid
 *
 * @example
 * const grey = (d: number) => ({ red: d, green: d, blue: d });
 * const reference = { dMin: grey(0.1), ld: grey(0.8), hd: grey(1.6), dMax: grey(2.4) };
 * const batches = [{ id: "77", process: "colour-paper", reference, correction: {} }];
 * const strips = [0.82, 0.8, 0.79].map((ld, day) => ({
 *   takenAt: `2026-08-1${day}T07:10`, process: "colour-paper", stripBatch: "77", operator: "A",
 *   patches: { ...reference, ld: grey(ld) },
 * }));
 * const series = seriesOfStrips({ strips, batches, specification: colourPaperProcess });
 * series[3]?.deviations // => [0.02, 0, -0.01]
 */
export function seriesOfStrips(history: StripHistory): readonly ParameterSeries[] {
  requireObject(
    "seriesOfStrips",
    "history",
    history,
    "an object with strips, batches and specification",
  );
  const table = stripTable("seriesOfStrips", history);
  return table.keys.map((_, k) => seriesOfTable(table, k, history.specification.id));
}
