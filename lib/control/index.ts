export type {
  CusumChart,
  CusumSignal,
  EwmaChart,
  IndividualsChart,
  MovingRangeChart,
} from "./charts/chart-results.ts";
export type { StatisticalLimits } from "./charts/statistical-limits.ts";
export type { LimitOrigin, ProcessLimit, ProcessLimits } from "./process/process-limits.ts";
export type {
  DifferenceParameter,
  ParameterSpecification,
  PatchParameter,
  ProcessSpecification,
  SpreadParameter,
} from "./process/process-specification.ts";
export type { RunRuleId, RunRuleSignal } from "./rules/run-rule-signal.ts";
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
export type { BatchChange, ParameterSeries } from "./strips/parameter-series.ts";
export type {
  ChangeSinceGoodDay,
  MorningCall,
  ParameterChange,
  ParameterVerdict,
  ProcessVerdict,
  StatisticalSignal,
  Verdict,
} from "./verdict/verdict.ts";
