export type { ChangeTestOptions } from "./change-test-options.ts";
export {
  type IllustrativeSensitivity,
  illustrativeSensitivity,
} from "./illustrative-sensitivity.ts";
export { knownRateAnswer } from "./known-rate-answer.ts";
export { momentAtTurnovers } from "./moment-at-turnovers.ts";
export { noiseCovariance } from "./noise-covariance.ts";
export { oddStrips } from "./odd-strips.ts";
export {
  type PathPoint,
  type RateAdvice,
  type RateAdviceOptions,
  rateAdvice,
} from "./rate-advice.ts";
export { type RateAlarm, rateAlarm } from "./rate-alarm.ts";
export { type RateChangeOptions, rateChange } from "./rate-change.ts";
export type { RateChange } from "./rate-change-result.ts";
export { type MonthlyCost, type RateCost, rateCost } from "./rate-cost.ts";
export type { RateLogs, RateWatch, RateWatchOptions } from "./rate-logs.ts";
export { type RateProfile, rateProfile } from "./rate-profile.ts";
export {
  type ChannelSensitivity,
  type KnownRateChange,
  rateSensitivity,
} from "./rate-sensitivity.ts";
export { rateWatch } from "./rate-watch.ts";
export { type LoggedSensitivity, sensitivityFromLogs } from "./sensitivity-from-logs.ts";
export { type RateEstimate, sequentialRateChange } from "./sequential-rate-change.ts";
export { slowShareOfNoise } from "./slow-noise.ts";
export { planStepTest, type StepTestPlan } from "./step-test.ts";
export { type StripChannel, type StripRows, stripRows } from "./strip-rows.ts";
export type { TuningSeries } from "./strip-series.ts";
export { rateAnswer } from "./tank-answer.ts";
export { type RateTuning, tuneRate } from "./tune-rate.ts";
