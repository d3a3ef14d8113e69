export { type CrossedReadings, crossedReadings, type GaugeReading } from "./crossed-readings.ts";
export { type GaugeAnova, gaugeStudyByAnova, type VarianceLine } from "./gauge-by-anova.ts";
export { gaugeStudyByRange } from "./gauge-by-range.ts";
export type { GaugeReadings } from "./gauge-readings.ts";
export type { GaugeStudy } from "./gauge-result.ts";
export { type GaugeShare, gaugeShareOfLimits } from "./gauge-share.ts";
export { type ZeroDrift, zeroDrift } from "./zero-drift.ts";
