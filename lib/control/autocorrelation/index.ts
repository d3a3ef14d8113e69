export { type Ar1Model, ar1Innovations, fitAr1 } from "./ar1-model.ts";
export {
  type Autocorrelation,
  type AutocorrelationOptions,
  autocorrelation,
  type LagCorrelation,
} from "./autocorrelation.ts";
export { type CorrelatedLimits, correlatedLimits } from "./correlated-limits.ts";
