import { requireEntries, requireObject } from "../../input/index.ts";
import type { StripHistory } from "../strips/strip-history.ts";
import type { MorningCallInput } from "./morning-call.ts";

/**
 * The strips of a lab laid out process by process, for charts and tables: one history for each
 * process that has a strip up to the time asked for, in the order of the specifications.
 *
 * @param lab strips of all processes, batches, crossovers, specifications, and the local time up to
 * which strips count
 * @returns histories as `seriesOfStrips`, `controlCharts` and `verdictHistory` take them
 *
 * @example
 * const strip = { takenAt: "2026-08-14T07:10", process: "colour-paper", stripBatch: "77", operator: "A", patches: {} };
 * const specifications = [colourNegativeProcess, colourPaperProcess];
 * stripHistories({ strips: [strip], batches: [], specifications }).length // => 1
 */
export function stripHistories(
  lab: Pick<MorningCallInput, "strips" | "batches" | "crossovers" | "specifications" | "asOf">,
): readonly StripHistory[] {
  requireObject("stripHistories", "lab", lab, "an object with strips, batches and specifications");
  requireEntries("stripHistories", "specifications", lab.specifications);
  requireEntries("stripHistories", "strips", lab.strips);
  const { strips, batches, crossovers = [], specifications, asOf } = lab;
  const time = asOf === undefined ? {} : { asOf };
  return specifications
    .filter(({ id }) =>
      strips.some((one) => one.process === id && (asOf === undefined || one.takenAt <= asOf)),
    )
    .map((specification) => ({ strips, batches, crossovers, specification, ...time }));
}
