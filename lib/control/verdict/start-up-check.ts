import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import type { ProcessLimit } from "../process/process-limits.ts";
import type { Colour } from "../strip.ts";
import { roundDensity } from "../strips/density.ts";
import { seriesOfTable } from "../strips/series-of-table.ts";
import type { StripHistory } from "../strips/strip-history.ts";
import { stripTable } from "../strips/strip-table.ts";
import { isBeyondLimit } from "./limit-level.ts";

/** One parameter at the start of a process. */
export interface StartUpParameter {
  readonly parameter: string;
  readonly name: string;
  readonly colour: Colour | null;
  readonly strips: number;
  /** Mean deviation from aim in density, `null` if it was not read. */
  readonly meanDeviation: number | null;
  /** The limit it was held against, `null` if the process has none. */
  readonly limit: ProcessLimit | null;
  readonly limitName: "adjustment" | "action" | "control" | null;
  readonly ready: boolean;
}

/** Whether a process that was started or adjusted stands close enough to its aims. */
export interface StartUpCheck {
  readonly ready: boolean;
  readonly strips: number;
  readonly parameters: readonly StartUpParameter[];
  readonly warnings: readonly string[];
}

/**
 * Start-up check: the mean of the first strips after a start or an adjustment against the aims,
 * within the adjustment tolerance (the action or control limit where none is published).
 *
 * `mean deviation = Σ deviation / n`; ready if every mean is within or on its limit
 *
 * @param history the strips of the start-up alone, with batches and specification
 * @param minimumStrips strips wanted, default 5
 * @returns each parameter's mean deviation and whether it is ready; fewer strips are never ready
 * @throws InputError if there is no strip of the process, and as `seriesOfStrips`
 *
 * @example
 * const grey = (d: number) => ({ red: d, green: d, blue: d });
 * const reference = { dMin: grey(0.1), ld: grey(0.8), hd: grey(1.6), dMax: grey(2.4) };
 * const batches = [{ id: "77", process: "colour-paper", reference, correction: {} }];
 * const strips = [0.82, 0.85, 0.83, 0.84, 0.81].map((ld, i) => ({
 *   takenAt: `2026-08-14T07:${i + 1}0`, process: "colour-paper", stripBatch: "77", operator: "A",
 *   patches: { ...reference, ld: grey(ld), hd: grey(ld + 0.8) },
 * }));
 * startUpCheck({ strips, batches, specification: colourPaperProcess }).ready // => true
 *
 * Source: Kodak publication V2CS p. 18 (mean of five strips against the aims).
 */
export function startUpCheck(history: StripHistory, minimumStrips = 5): StartUpCheck {
  const where = "startUpCheck";
  requireObject(where, "history", history, "an object with strips, batches and specification");
  requireNumber(where, "minimumStrips", minimumStrips, { min: 1, whole: true });
  const table = stripTable(where, history);
  const strips = table.rows.length;
  if (strips === 0) {
    const advice = `write at least one strip of process ${JSON.stringify(history.specification.id)}`;
    throw new InputError(where, "strips", "without one of this process", advice);
  }
  const parameters = table.keys.map((_, k): StartUpParameter => {
    const series = seriesOfTable(table, k, history.specification.id);
    const { parameter, name, colour, deviations, limits } = series;
    const n = deviations.length;
    const mean = n === 0 ? null : roundDensity(deviations.reduce((a, b) => a + b, 0) / n);
    const names = ["adjustment", "action", "control"] as const;
    const limitName = names.find((each) => limits[each] !== null) ?? null;
    const limit = limitName === null ? null : limits[limitName];
    const ready = mean !== null && !isBeyondLimit(mean, limit);
    return { parameter, name, colour, strips: n, meanDeviation: mean, limit, limitName, ready };
  });
  const few = strips < minimumStrips;
  return {
    ready: !few && parameters.every((each) => each.ready),
    strips,
    parameters,
    warnings: few ? [`${strips} strips only; run ${minimumStrips} and take their mean`] : [],
  };
}
