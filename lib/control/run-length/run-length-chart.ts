import { requireNumber } from "../../input/index.ts";
import type { DriftChart } from "./drift-run-length.ts";
import type { ZoneRule } from "./zone-rule.ts";

/**
 * A chart whose run lengths are wanted one by one: EWMA and individuals two-sided, CUSUM the upper
 * sum, or an individuals chart with zone rules.
 */
export type RunLengthChart =
  | DriftChart
  | { readonly chart: "zone rules"; readonly rules: readonly ZoneRule[] };

/** How the mean moves, in standard deviations of a reading: reading t has shift + t·drift. */
export interface MeanCourse {
  /** Sudden shift, there from the first reading on, −10 to 10; default 0. */
  readonly shift?: number;
  /** Steady drift a reading, −1 to 1; default 0. */
  readonly driftPerReading?: number;
}

/** Mean of reading t = 1, 2, …; checks the course. */
export function meanCourse(where: string, course: MeanCourse): (t: number) => number {
  const shift = requireNumber(where, "shift", course.shift ?? 0, { min: -10, max: 10 });
  const drift = requireNumber(where, "driftPerReading", course.driftPerReading ?? 0, {
    min: -1,
    max: 1,
  });
  return (t) => shift + t * drift;
}

/** Checks the constants of a chart. */
export function requireChart(where: string, chart: RunLengthChart): void {
  if (chart.chart === "ewma") {
    requireNumber(where, "lambda", chart.lambda, { min: 0.005, max: 1 });
  }
  if (chart.chart === "ewma" || chart.chart === "individuals") {
    requireNumber(where, "limitWidth", chart.limitWidth, { min: 0.1, max: 6 });
  }
  if (chart.chart === "cusum") {
    requireNumber(where, "referenceValue", chart.referenceValue, { min: 0, max: 5 });
    requireNumber(where, "decisionInterval", chart.decisionInterval, { min: 0.1, max: 40 });
  }
  if (chart.chart === "zone rules") {
    requireNumber(where, "number of rules", chart.rules.length, { min: 1 });
  }
}
