export { type AfterCheck, afterCheck, type CheckMade } from "./after-check.ts";
export { faultById } from "./fault-by-id.ts";
export { type FaultCheck, faultChecks } from "./fault-check.ts";
export type { FaultComponent } from "./fault-component.ts";
export {
  type FaultEvidence,
  type FaultEvidenceInput,
  faultEvidence,
} from "./fault-evidence.ts";
export type {
  FaultGroup,
  FaultRanking,
  FaultResidual,
  RankedFault,
  ReadingEvidence,
} from "./fault-ranking.ts";
export type {
  ByParameterAndColour,
  FaultCourse,
  FaultEntry,
  FaultPattern,
  FaultTable,
  FreeShape,
  PatternScatter,
  PublishedSign,
  WholeSignature,
} from "./fault-table.ts";
export { colourNegativeFaults, colourPaperFaults } from "./fault-tables.ts";
export type { LabLogs, LogOfReadings, LogOfWork, LogStatement } from "./lab-log.ts";
export { labLogs } from "./lab-logs.ts";
export type {
  LabLogsInput,
  LoggedCheck,
  LoggedProduction,
  LoggedPump,
  LoggedTemperature,
  LoggedWork,
} from "./log-input.ts";
export { faultLogKinds, faultWorkKinds, type LogKind, type WorkKind } from "./log-kinds.ts";
export { parseFaultTable } from "./parse-fault-table.ts";
export { rankFaults } from "./rank-faults.ts";
export type { RankFaultsOptions } from "./rank-faults-options.ts";
export { type FaultHypothesis, type SeparatingCheck, separatingCheck } from "./separating-check.ts";
export {
  type EpisodeSignature,
  type FaultEpisode,
  signatureFromEpisodes,
} from "./signature-from-episodes.ts";
export { type StripCovariance, stripCovariance } from "./strip-covariance.ts";
export { withSignature } from "./with-signature.ts";
