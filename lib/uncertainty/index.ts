export type { InputCorrelation } from "./correlation.ts";
export { coverageFactor } from "./coverage-factor.ts";
export { type CoverageIntervals, coverageIntervals } from "./coverage-interval.ts";
export type { DegreesOfFreedom, Distribution, InputQuantity } from "./distribution.ts";
export {
  degreesOfFreedomFromReliability,
  effectiveDegreesOfFreedom,
} from "./effective-degrees-of-freedom.ts";
export {
  type BalanceReading,
  balanceInput,
  type GraduateReading,
  graduateInput,
  type ThermometerReading,
  thermometerInput,
} from "./instrument-inputs.ts";
export type { MonteCarloOptions, MonteCarloResult } from "./monte-carlo-result.ts";
export { monteCarloUncertainty } from "./monte-carlo-uncertainty.ts";
export { numericalTolerance } from "./numerical-tolerance.ts";
export { propagateUncertainty } from "./propagate-uncertainty.ts";
export { quoteResult } from "./quote-result.ts";
export {
  type MeasurementModel,
  type NumericalDerivative,
  numericalDerivative,
} from "./sensitivity.ts";
export { standardUncertainty } from "./standard-uncertainty.ts";
export {
  type DilutionInputs,
  dilutionStrengthBudget,
  type PowderInputs,
  powderStrengthBudget,
} from "./strength-budget.ts";
export {
  correlationOfReadings,
  readingsInput,
  type TypeAEvaluation,
  typeAEvaluation,
} from "./type-a-evaluation.ts";
export type { BudgetRow, PropagationOptions, UncertaintyBudget } from "./uncertainty-budget.ts";
export { type PropagationValidation, validatePropagation } from "./validate-propagation.ts";
