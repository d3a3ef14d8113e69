export { type CheckLogOptions, parseCheckLog } from "./check-log.ts";
export { type DensitometerReading, parseDensitometerLog } from "./densitometer-log.ts";
export { type DeveloperLogs, developerLogs, type LoggedRows } from "./developer-logs.ts";
export { fileBeside } from "./file-beside.ts";
export { formatCheckLog, formatWorkLog } from "./format-checks-and-work.ts";
export {
  formatProductionLog,
  formatPumpLog,
  formatRemakesLog,
  formatTemperatureLog,
} from "./format-logs.ts";
export { formatStripBatchRegister, formatStripLog } from "./format-strips.ts";
export type {
  LabBath,
  LabDescription,
  LabDryer,
  LabLine,
  LabPump,
} from "./lab-description.ts";
export type { LogOptions, LogProblem, LogSource, ParsedLog } from "./log-problem.ts";
export type {
  BathTemperature,
  CylinderCheck,
  LineCheck,
  ProductionRow,
  PumpReading,
  RemakesDay,
  WorkEntry,
} from "./log-rows.ts";
export { loggedBaths, parseLabDescription } from "./parse-lab-description.ts";
export { parseStripLogs, type StripLogFile } from "./parse-strip-logs.ts";
export { type ProblemLog, problemMessage } from "./problem-message.ts";
export { type ProductionLogOptions, parseProductionLog } from "./production-log.ts";
export { type PumpInterval, pumpIntervals } from "./pump-intervals.ts";
export { type PumpLogOptions, parsePumpLog } from "./pump-log.ts";
export { readingsOfPump } from "./readings-of-pump.ts";
export { parseRemakesLog, type RemakesLogOptions } from "./remakes-log.ts";
export { LogError, requireCleanLog } from "./require-clean-log.ts";
export { parseStripBatchRegister, type StripBatchRegisterOptions } from "./strip-batch-register.ts";
export { parseStripLog, type RegisteredBatch, type StripLogOptions } from "./strip-log.ts";
export {
  type LoggedBath,
  parseTemperatureLog,
  type TemperatureLogOptions,
} from "./temperature-log.ts";
export { parseWorkLog, type WorkLogOptions } from "./work-log.ts";
