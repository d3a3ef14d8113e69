export { type DeveloperLogs, developerLogs, type LoggedRows } from "./lab/developer-logs.ts";
export { fileBeside } from "./lab/file-beside.ts";
export type {
  LabBath,
  LabDescription,
  LabDryer,
  LabLine,
  LabPump,
} from "./lab/lab-description.ts";
export { loggedBaths, parseLabDescription } from "./lab/parse-lab-description.ts";
export { type CheckLogOptions, parseCheckLog } from "./logs/check-log.ts";
export { type DensitometerReading, parseDensitometerLog } from "./logs/densitometer-log.ts";
export type {
  BathTemperature,
  CylinderCheck,
  LineCheck,
  ProductionRow,
  PumpReading,
  RemakesDay,
  WorkEntry,
} from "./logs/log-rows.ts";
export { type ProductionLogOptions, parseProductionLog } from "./logs/production-log.ts";
export { type PumpInterval, pumpIntervals } from "./logs/pump-intervals.ts";
export { type PumpLogOptions, parsePumpLog } from "./logs/pump-log.ts";
export { readingsOfPump } from "./logs/readings-of-pump.ts";
export { parseRemakesLog, type RemakesLogOptions } from "./logs/remakes-log.ts";
export {
  type LoggedBath,
  parseTemperatureLog,
  type TemperatureLogOptions,
} from "./logs/temperature-log.ts";
export { parseWorkLog, type WorkLogOptions } from "./logs/work-log.ts";
export type { LogOptions, LogProblem, LogSource, ParsedLog } from "./reading/log-problem.ts";
export { type ProblemLog, problemMessage } from "./reading/problem-message.ts";
export { LogError, requireCleanLog } from "./reading/require-clean-log.ts";
export { parseStripLogs, type StripLogFile } from "./strips/parse-strip-logs.ts";
export {
  parseStripBatchRegister,
  type StripBatchRegisterOptions,
} from "./strips/strip-batch-register.ts";
export { parseStripLog, type RegisteredBatch, type StripLogOptions } from "./strips/strip-log.ts";
export { formatCheckLog, formatWorkLog } from "./writing/format-checks-and-work.ts";
export {
  formatProductionLog,
  formatPumpLog,
  formatRemakesLog,
  formatTemperatureLog,
} from "./writing/format-logs.ts";
export { formatStripBatchRegister, formatStripLog } from "./writing/format-strips.ts";
