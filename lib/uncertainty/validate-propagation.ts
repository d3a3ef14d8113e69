import { requireNumber, requireObject } from "../input/index.ts";
import type { MonteCarloResult } from "./monte-carlo-result.ts";
import { numericalTolerance } from "./numerical-tolerance.ts";
import type { UncertaintyBudget } from "./uncertainty-budget.ts";

/** Whether the propagation by sensitivity may be trusted for a model. */
export interface PropagationValidation {
  readonly validated: boolean;
  /** Distance of the lower ends of the two intervals. */
  readonly lowerDifference: number;
  /** Distance of the upper ends. */
  readonly upperDifference: number;
  /** δ that both must keep within. */
  readonly tolerance: number;
  readonly reason: string;
}

/**
 * Compares the interval from sensitivities with the one from Monte Carlo.
 *
 * d_low = |y − U − y_low|, d_high = |y + U − y_high|; validated if neither exceeds δ.
 *
 * @param budget from `propagateUncertainty`
 * @param drawn from `monteCarloUncertainty`, at the same coverage probability
 * @param significantDigits of u_c that mean something, 1 or 2 as a rule
 * @returns whether both ends agree to δ, and by how much they differ
 * @throws InputError if the digits are not a whole number, or an end of an interval is no number
 *
 * @example
 * validatePropagation({ interval: [1, 3], combinedStandardUncertainty: 0.5 }, { symmetricInterval: [1.01, 2.98] }, 1).validated // => true
 *
 * Source: JCGM 101:2008, clause 8.
 */
export function validatePropagation(
  budget: Pick<UncertaintyBudget, "interval" | "combinedStandardUncertainty">,
  drawn: Pick<MonteCarloResult, "symmetricInterval">,
  significantDigits: number,
): PropagationValidation {
  const where = "validatePropagation";
  requireObject(where, "budget", budget, "an object with interval and combinedStandardUncertainty");
  requireObject(where, "drawn", drawn, "an object with symmetricInterval");
  const u = requireNumber(
    where,
    "budget.combinedStandardUncertainty",
    budget.combinedStandardUncertainty,
    { min: 0 },
  );
  for (const end of [0, 1]) {
    requireNumber(where, `budget.interval[${end}]`, budget.interval?.[end]);
    requireNumber(where, `drawn.symmetricInterval[${end}]`, drawn.symmetricInterval?.[end]);
  }
  const tolerance = u > 0 ? numericalTolerance(u, significantDigits) : 0;
  const lowerDifference = Math.abs(budget.interval[0] - drawn.symmetricInterval[0]);
  const upperDifference = Math.abs(budget.interval[1] - drawn.symmetricInterval[1]);
  const validated = lowerDifference <= tolerance && upperDifference <= tolerance;
  const reason = validated
    ? "both ends agree to the digits that mean something"
    : "the ends differ in digits that mean something; use the Monte Carlo interval";
  return { validated, lowerDifference, upperDifference, tolerance, reason };
}
