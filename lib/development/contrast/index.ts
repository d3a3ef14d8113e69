export type { AllowedError } from "./allowed-error.ts";
export {
  type ContrastCurve,
  type ContrastLaw,
  type ContrastReach,
  exponentialApproach,
  powerOfTime,
} from "./contrast-curve.ts";
export { contrastCurveFromFit } from "./contrast-curve-from-fit.ts";
export { type ContrastExample, contrastExample } from "./contrast-example.ts";
export {
  type ContrastReading,
  contrastFromTwoTimes,
  type TwoTimeContrast,
} from "./contrast-from-two-times.ts";
export { type DevelopmentChange, developmentChange } from "./development-change.ts";
export {
  developmentForRange,
  type ZoneDevelopment,
  type ZoneDevelopments,
} from "./development-for-range.ts";
export {
  type DevelopmentFactor,
  developmentFactors,
  type FactorialDevelopment,
  factorialDevelopment,
} from "./factorial-development.ts";
export { type ContrastFit, fitContrastTime } from "./fit-contrast-time.ts";
export {
  type PushDevelopment,
  type PushedTone,
  pushDevelopment,
} from "./push-development.ts";
export {
  type TemperatureTolerance,
  temperatureTolerance,
} from "./temperature-tolerance.ts";
export { type TimeForContrast, timeForContrast } from "./time-for-contrast.ts";
