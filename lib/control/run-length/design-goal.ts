import { InputError, requireNumber } from "../../input/index.ts";
import { cusumRunLength } from "./cusum-run-length.ts";
import { type DriftChart, driftRunLength } from "./drift-run-length.ts";
import { ewmaRunLength } from "./ewma-run-length.ts";

/** What a chart is to be designed for. Give a `shift` or a `driftPerReading`, not both. */
export interface DesignGoal {
  /** Readings between false alarms, 20 to 100,000. */
  readonly inControlRunLength: number;
  /** Sudden change worth catching, in standard deviations of a reading, 0.1 to 5. */
  readonly shift?: number;
  /** Steady drift worth catching, in standard deviations a reading, 0.001 to 1. */
  readonly driftPerReading?: number;
  /** Control strips a day, to put readings into days. */
  readonly stripsPerDay?: number;
}

/** What a design promises. */
export interface DesignPromise {
  /** Readings between false alarms. */
  readonly inControlRunLength: number;
  /** Readings until the change worth catching is caught. */
  readonly readingsToSignal: number;
  /** The same in days, where `stripsPerDay` was given. */
  readonly daysBetweenFalseAlarms?: number;
  readonly daysToSignal?: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

type MemoryChart = Exclude<DriftChart, { readonly chart: "individuals" }>;

/** Readings to the signal for the change the goal names. */
export function delayFor(where: string, goal: DesignGoal): (chart: MemoryChart) => number {
  requireRunLength(where, goal.inControlRunLength);
  const { shift, driftPerReading: drift } = goal;
  if (goal.stripsPerDay !== undefined) {
    requireNumber(where, "stripsPerDay", goal.stripsPerDay, { above: 0, max: 1000 });
  }
  if ((shift === undefined) === (drift === undefined)) {
    const given = shift === undefined ? "without either" : "both shift and driftPerReading";
    throw new InputError(where, "goal", given, "give either shift or driftPerReading");
  }
  if (drift !== undefined) {
    requireNumber(where, "driftPerReading", drift, { min: 0.001, max: 1 });
    return (chart) => driftRunLength(chart, drift);
  }
  const size = requireNumber(where, "shift", shift, { min: 0.1, max: 5 });
  return (chart) =>
    chart.chart === "ewma"
      ? ewmaRunLength(chart, { shift: size }).zeroState
      : cusumRunLength(chart, { shift: size }).zeroState;
}

/** What a design promises, in readings and days. */
export function promise(
  goal: DesignGoal,
  readingsToSignal: number,
  warnings: readonly string[] = [],
): DesignPromise {
  const perDay = goal.stripsPerDay;
  return {
    inControlRunLength: goal.inControlRunLength,
    readingsToSignal,
    ...(perDay === undefined
      ? {}
      : {
          daysBetweenFalseAlarms: goal.inControlRunLength / perDay,
          daysToSignal: readingsToSignal / perDay,
        }),
    assumptions: [
      "Readings are independent and normal; mean and standard deviation are known.",
      "The change is there from the first reading on, the chart starting at its centre line.",
    ],
    warnings,
  };
}

/** Lets a wanted in-control run length in. */
export function requireRunLength(where: string, value: number): number {
  return requireNumber(where, "inControlRunLength", value, { min: 20, max: 100_000 });
}
