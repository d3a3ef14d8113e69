export { cusumDecisionIntervalFor, type DesignedCusum, designCusum } from "./cusum-design.ts";
export {
  type CusumDesign,
  type CusumRunLengthOptions,
  cusumRunLength,
} from "./cusum-run-length.ts";
export type { DesignGoal, DesignPromise } from "./design-goal.ts";
export { type DriftChart, driftRunLength } from "./drift-run-length.ts";
export { type DesignedEwma, designEwma, ewmaLimitWidthFor } from "./ewma-design.ts";
export { type EwmaDesign, type EwmaRunLengthOptions, ewmaRunLength } from "./ewma-run-length.ts";
export { falseAlarmsPerYear } from "./false-alarms-per-year.ts";
export { individualsMovingRangeRunLength } from "./individuals-moving-range-run-length.ts";
export { alternatingRunLength, risingRunLength } from "./rank-rules-run-length.ts";
export type { AverageRunLength } from "./run-length.ts";
export type { MeanCourse, RunLengthChart } from "./run-length-chart.ts";
export { runLengthDistribution } from "./run-length-distribution.ts";
export { type SimulatedRunLengths, simulateRunLengths } from "./simulate-run-lengths.ts";
export {
  beyondThreeSigma,
  nelsonZoneRules,
  westernElectricZoneRules,
  type ZoneRule,
} from "./zone-rule.ts";
export { zoneRulesRunLength } from "./zone-rules-run-length.ts";
