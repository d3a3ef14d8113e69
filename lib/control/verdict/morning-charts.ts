import { requireEntries, requireObject } from "../../input/index.ts";
import { controlCharts, type SeriesCharts } from "../charts/control-charts.ts";
import { chartsOfProcess } from "./charts-of-process.ts";
import type { MorningCallInput } from "./morning-call.ts";
import { stripHistories } from "./strip-histories.ts";

/**
 * The statistical charts behind a morning call: individuals, EWMA and CUSUM of every parameter and
 * colour of every process, from the same base periods and by the same choices.
 *
 * @param lab what `morningCall` is given
 * @returns one entry for each parameter and colour of the processes that have a base period; none if
 * `charts` and `basePeriods` are left out
 * @throws InputError as `controlCharts`
 *
 * @example
 * const grey = (d: number) => ({ red: d, green: d, blue: d });
 * const reference = { dMin: grey(0.1), ld: grey(0.8), hd: grey(1.6), dMax: grey(2.4) };
 * const strips = Array.from({ length: 28 }, (_, day) => ({
 *   takenAt: `2026-08-${String(day + 1).padStart(2, "0")}T07:10`, process: "colour-paper",
 *   stripBatch: "77", operator: "A", patches: { ...reference, ld: grey(0.8 + 0.01 * (day % 3)) },
 * }));
 * const batches = [{ id: "77", process: "colour-paper", reference, correction: {} }];
 * const charts = morningCharts({ strips, batches, specifications: [colourPaperProcess], charts: {} });
 * charts[3]?.limits?.baseReadings // => 21
 */
export function morningCharts(lab: MorningCallInput): readonly SeriesCharts[] {
  requireObject("morningCharts", "lab", lab, "an object with strips, batches and specifications");
  requireEntries("morningCharts", "specifications", lab.specifications);
  requireEntries("morningCharts", "strips", lab.strips);
  return stripHistories(lab).flatMap((history) => {
    const own = lab.basePeriods?.[history.specification.id];
    const { charts } = chartsOfProcess(history, lab.charts, own);
    return charts === undefined ? [] : controlCharts(history, charts);
  });
}
