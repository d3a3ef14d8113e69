import type { InputCorrelation } from "./correlation.ts";
import type { DegreesOfFreedom, InputQuantity } from "./distribution.ts";

/** One line of an uncertainty budget. */
export interface BudgetRow {
  readonly name: string;
  readonly unit: string;
  /** Best estimate of the input. */
  readonly value: number;
  readonly standardUncertainty: number;
  readonly distribution: InputQuantity["distribution"]["kind"];
  readonly degreesOfFreedom: DegreesOfFreedom;
  /** ∂y/∂x at the best estimates. */
  readonly sensitivity: number;
  /** Estimated error of `sensitivity` from finding it numerically. */
  readonly sensitivityError: number;
  /** c·u(x): what this input alone contributes to the result's uncertainty, with its sign. */
  readonly contribution: number;
  /** Part of the variance in per cent; the rows sum to 100 (negative where a correlation helps). */
  readonly variancePercent: number;
}

/** Result of propagating uncertainty through a model. */
export interface UncertaintyBudget {
  readonly value: number;
  readonly combinedStandardUncertainty: number;
  /** u_c/|y|; null where y is 0. */
  readonly relativeStandardUncertainty: number | null;
  readonly effectiveDegreesOfFreedom: DegreesOfFreedom;
  readonly coverageProbability: number;
  readonly coverageFactor: number;
  readonly expandedUncertainty: number;
  readonly interval: readonly [number, number];
  readonly rows: readonly BudgetRow[];
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/** What `propagateUncertainty` needs. */
export interface PropagationOptions {
  /** Correlations other than 0. */
  readonly correlations?: readonly InputCorrelation[];
  /** Probability of the interval, above 0 and below 1; 0.95 if left out. */
  readonly coverageProbability?: number;
  /** k to use instead of Student's t, such as 2; above 0. */
  readonly coverageFactor?: number;
  /** 2 adds the next terms of the Taylor series (uncorrelated, symmetric inputs). */
  readonly order?: 1 | 2;
}
