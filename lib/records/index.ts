export type { LogOptions, LogProblem, LogSource, ParsedLog } from "./log-problem.ts";
export type {
  BathTemperature,
  CylinderCheck,
  ProductionRow,
  PumpReading,
  RemakesDay,
} from "./log-rows.ts";
