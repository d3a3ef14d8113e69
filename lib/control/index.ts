export * from "./autocorrelation/index.ts";
export {
  type BasePeriodFound,
  type BasePeriodSearch,
  basePeriodInControl,
} from "./charts/base-period-in-control.ts";
export type { BasePeriod, ChartChoices } from "./charts/chart-choices.ts";
export { type ChartConstants, chartConstants } from "./charts/chart-constants.ts";
export type {
  CusumChart,
  CusumSignal,
  EwmaChart,
  IndividualsChart,
  MovingRangeChart,
} from "./charts/chart-results.ts";
export { controlCharts, type SeriesCharts } from "./charts/control-charts.ts";
export { type CusumOptions, cusumChart } from "./charts/cusum-chart.ts";
export { type EwmaOptions, ewmaChart } from "./charts/ewma-chart.ts";
export { type IndividualsChartOptions, individualsChart } from "./charts/individuals-chart.ts";
export { prespecifiedLimits } from "./charts/prespecified-limits.ts";
export type { Readings } from "./charts/readings.ts";
export {
  type SigmaSource,
  type StatisticalLimits,
  type StatisticalLimitsOptions,
  statisticalLimits,
} from "./charts/statistical-limits.ts";
export * from "./faults/index.ts";
export * from "./gauge/index.ts";
export { parseProcessSpecification } from "./process/parse-process-specification.ts";
export type { LimitOrigin, ProcessLimit, ProcessLimits } from "./process/process-limits.ts";
export type {
  DifferenceParameter,
  ParameterSpecification,
  PatchParameter,
  ProcessSpecification,
  SpreadParameter,
} from "./process/process-specification.ts";
export { processSpecifications } from "./process/process-specifications.ts";
export { colourNegativeProcess, colourPaperProcess } from "./process/processes.ts";
export { type LimitReplacement, replaceLimits } from "./process/replace-limits.ts";
export * from "./remakes/index.ts";
export { type RunRuleFalseAlarms, runRuleFalseAlarms } from "./rules/false-alarms.ts";
export type { RunRuleOptions } from "./rules/run-rule-options.ts";
export {
  nelsonRules,
  type RunRuleId,
  type RunRuleSignal,
  westernElectricRules,
} from "./rules/run-rule-signal.ts";
export { runRules } from "./rules/run-rules.ts";
export * from "./run-length/index.ts";
export {
  type Aims,
  type Colour,
  type Densities,
  type Patches,
  type Strip,
  type StripBatch,
  type StripSource,
  stripColours,
} from "./strip.ts";
export { aimsOfBatch } from "./strips/aims-of-batch.ts";
export { crossover } from "./strips/crossover.ts";
export type {
  Crossover,
  CrossoverDifference,
  CrossoverOptions,
  StripPair,
} from "./strips/crossover-result.ts";
export { type CrossoverSearch, crossoversOfStrips } from "./strips/crossovers-of-strips.ts";
export {
  type Deviations,
  deviationsFromAim,
  type ParameterDeviation,
} from "./strips/deviations-from-aim.ts";
export type { BatchChange, ParameterSeries } from "./strips/parameter-series.ts";
export { seriesOfStrips } from "./strips/series-of-strips.ts";
export type { StripHistory } from "./strips/strip-history.ts";
export { type StripPairSearch, stripPairs } from "./strips/strip-pairs.ts";
export * from "./trend/index.ts";
export type { MorningChartChoices } from "./verdict/charts-of-process.ts";
export { comparedDays } from "./verdict/compared-days.ts";
export { type LikelyCause, likelyCauses, type ProcessLogs } from "./verdict/likely-causes.ts";
export { type MorningCallInput, morningCall } from "./verdict/morning-call.ts";
export { morningCharts } from "./verdict/morning-charts.ts";
export { processVerdict } from "./verdict/process-verdict.ts";
export {
  type StartUpCheck,
  type StartUpParameter,
  startUpCheck,
} from "./verdict/start-up-check.ts";
export { stripHistories } from "./verdict/strip-histories.ts";
export type {
  ChangeSinceGoodDay,
  MorningCall,
  ParameterChange,
  ParameterVerdict,
  ProcessVerdict,
  StatisticalBase,
  StatisticalSignal,
  StatisticalSignalKind,
  Verdict,
} from "./verdict/verdict.ts";
export { type StripVerdict, verdictHistory } from "./verdict/verdict-history.ts";
export type { VerdictOptions } from "./verdict/verdict-options.ts";
