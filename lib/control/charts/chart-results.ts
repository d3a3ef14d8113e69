import type { RunRuleSignal } from "../rules/run-rule-signal.ts";
import type { StatisticalLimits } from "./statistical-limits.ts";

/** Individuals chart with its moving-range chart. Positions count readings of the series from 0. */
export interface IndividualsChart {
  readonly kind: "individuals chart";
  readonly values: readonly number[];
  readonly limits: StatisticalLimits;
  /** Positions strictly beyond the limits. */
  readonly beyond: readonly number[];
  readonly movingRange: MovingRangeChart;
  readonly signals: readonly RunRuleSignal[];
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/** Moving range of two. A range belongs to the later of its two readings. */
export interface MovingRangeChart {
  readonly kind: "moving range chart";
  /** Position in the individuals series of each range's later reading. */
  readonly rows: readonly number[];
  readonly values: readonly number[];
  readonly centre: number;
  readonly upperLimit: number;
  readonly lowerLimit: number;
  /** Positions (of the later reading) whose range is strictly beyond the upper limit. */
  readonly beyond: readonly number[];
}

/** Exponentially weighted moving average. */
export interface EwmaChart {
  readonly kind: "EWMA chart";
  /** Weight of the newest reading, 0 < λ ≤ 1. */
  readonly lambda: number;
  /** Limits stand this many standard deviations of the EWMA from the centre. */
  readonly widthSigma: number;
  readonly centre: number;
  readonly sigma: number;
  /** The average before the first reading. */
  readonly start: number;
  readonly limitForm: "exact" | "asymptotic";
  /** One average for each reading. */
  readonly values: readonly number[];
  readonly upperLimits: readonly number[];
  readonly lowerLimits: readonly number[];
  readonly beyond: readonly number[];
  readonly assumptions: readonly string[];
}

/** A CUSUM's sum has passed its decision interval. */
export interface CusumSignal {
  readonly at: number;
  readonly side: "above" | "below";
  /** Positions of the readings since the sum last stood at zero. */
  readonly rows: readonly number[];
  readonly sentence: string;
}

/** Tabular CUSUM, both sides. Sums are in the unit of the readings. */
export interface CusumChart {
  readonly kind: "CUSUM chart";
  readonly target: number;
  /** Reference value (allowance), in the unit of the readings. */
  readonly allowance: number;
  /** Decision interval, in the unit of the readings. */
  readonly decisionInterval: number;
  /** Both sums start here. */
  readonly headStart: number;
  readonly upperSums: readonly number[];
  readonly lowerSums: readonly number[];
  /** Positions at which either sum stands strictly beyond the decision interval. */
  readonly beyond: readonly number[];
  readonly signals: readonly CusumSignal[];
  readonly assumptions: readonly string[];
}
