export {
  type CoolingFromReadings,
  coolingFromTwoReadings,
  type TemperatureReading,
} from "./drift/cooling-from-two-readings.ts";
export { type CoolingInWaterBath, coolingInWaterBath } from "./drift/cooling-in-water-bath.ts";
export { type CoolingOfTank, type CoolingTank, coolingOfTank } from "./drift/cooling-of-tank.ts";
export { type DevelopUntil, developUntil } from "./drift/develop-until.ts";
export {
  type DevelopmentDose,
  doseForProfile,
  doseUnderCourse,
} from "./drift/dose-under-course.ts";
export { type LoggedTemperatures, loggedTemperatures } from "./drift/logged-temperatures.ts";
export { type NewtonCooling, newtonCooling } from "./drift/newton-cooling.ts";
export { constantTemperature, type TemperatureCourse } from "./drift/temperature-course.ts";
export {
  type ActivationEnergyModel,
  activationEnergyModel,
} from "./rate/activation-energy-model.ts";
export {
  type BathTemperatureLimits,
  bathTemperatureLimits,
  requireBathTemperature,
} from "./rate/bath-temperature.ts";
export { type CompensatedTime, compensateTime } from "./rate/compensate-time.ts";
export { defaultRateModel, publishedFactorSpan } from "./rate/default-rate-model.ts";
export {
  type EvenDevelopmentChoice,
  type EvenDevelopmentLimits,
  evenDevelopmentLimits,
  evenDevelopmentWarnings,
  type Handling,
} from "./rate/even-development.ts";
export {
  type FactorPerTenDegreesModel,
  factorPerTenDegreesModel,
} from "./rate/factor-per-ten-degrees-model.ts";
export { molarGasConstant } from "./rate/kelvin.ts";
export {
  type PublishedTableModel,
  publishedTableModel,
  type TimeTemperatureRow,
} from "./rate/published-table-model.ts";
export {
  type RateModel,
  type RateModelKind,
  type RateRange,
  type RateReach,
  rangeWarnings,
} from "./rate/rate-model.ts";
export { defaultRateReach } from "./rate/rate-reach.ts";
export { type TemperatureForTime, temperatureForTime } from "./rate/temperature-for-time.ts";
export {
  type BottleTemperingTime,
  bottleTemperingTime,
} from "./tempering/bottle-tempering-time.ts";
export type { LiquidPart, VesselPart } from "./tempering/heat-parts.ts";
export {
  type HeatProperties,
  type HeatSource,
  type HeatTransferMedium,
  heatProperties,
  type VesselMaterial,
} from "./tempering/heat-properties.ts";
export { type HeaterTime, heaterTime } from "./tempering/heater-time.ts";
export { type IceToCool, iceToCool } from "./tempering/ice-to-cool.ts";
export { type MixedTemperature, mixedTemperature } from "./tempering/mixed-temperature.ts";
export { type TemperedWater, temperWater } from "./tempering/temper-water.ts";
export { type WaterTemperature, waterTemperatureFor } from "./tempering/water-temperature-for.ts";
