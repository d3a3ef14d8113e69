export { type AreaByDay, areaByDay, type DayArea, type ProducedFormat } from "./area-by-day.ts";
export type { CylinderError } from "./cylinder-error.ts";
export { type DeliveredMonth, deliveredByMonth } from "./delivered-by-month.ts";
export { type DeliveredError, deliveredError } from "./delivered-error.ts";
export { type DeliveredInterval, type DeliveredRates, deliveredRates } from "./delivered-rates.ts";
export { type MachineRun, machineRun } from "./machine-run.ts";
export type { OwnFormat } from "./own-formats.ts";
export { type PublishedRate, publishedRates } from "./published-rates.ts";
export { type CylinderReading, type PumpCalibration, pumpCalibration } from "./pump-calibration.ts";
export type { PumpCounterReading, PumpLogProblem } from "./pump-days.ts";
export { type PumpEvidence, type PumpOfLine, pumpEvidence } from "./pump-evidence.ts";
export { type FormatRate, type RateTable, ratePerAreaFromFormat, rateTable } from "./rate-table.ts";
export {
  type ReplenisherRate,
  type ReplenisherUse,
  replenisherForecast,
  replenisherUse,
} from "./replenisher-use.ts";
export { type SetRateChange, setRateChanges } from "./set-rate-changes.ts";
export { type SplicedLength, splicedLength } from "./spliced-length.ts";
export { type TankTurnovers, tankTurnoversAt } from "./tank-turnovers.ts";
