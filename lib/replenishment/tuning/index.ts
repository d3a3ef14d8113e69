export {
  type IllustrativeSensitivity,
  illustrativeSensitivity,
} from "./illustrative-sensitivity.ts";
export { noiseCovariance } from "./noise-covariance.ts";
export {
  type PathPoint,
  type RateAdvice,
  type RateAdviceOptions,
  rateAdvice,
} from "./rate-advice.ts";
export { type RateChangeOptions, rateChange } from "./rate-change.ts";
export type { RateChange } from "./rate-change-result.ts";
export {
  type ChannelSensitivity,
  type KnownRateChange,
  rateSensitivity,
} from "./rate-sensitivity.ts";
export { type RateEstimate, sequentialRateChange } from "./sequential-rate-change.ts";
export { planStepTest, type StepTestPlan } from "./step-test.ts";
export { type StripChannel, type StripRows, stripRows } from "./strip-rows.ts";
export type { TuningSeries } from "./strip-series.ts";
