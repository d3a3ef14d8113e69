export {
  activationEnergyFromFactor,
  factorFromActivationEnergy,
  type TemperaturePair,
} from "./activation-energy-from-factor.ts";
export {
  type ActivationEnergyModel,
  activationEnergyModel,
} from "./activation-energy-model.ts";
export {
  type BathTemperatureLimits,
  bathTemperatureLimits,
  requireBathTemperature,
} from "./bath-temperature.ts";
export { type CompensatedTime, compensateTime } from "./compensate-time.ts";
export { defaultRateModel, publishedFactorSpan } from "./default-rate-model.ts";
export {
  type EvenDevelopmentChoice,
  type EvenDevelopmentLimits,
  evenDevelopmentLimits,
  evenDevelopmentWarnings,
  type Handling,
} from "./even-development.ts";
export {
  type FactorPerTenDegreesModel,
  factorPerTenDegreesModel,
} from "./factor-per-ten-degrees-model.ts";
export { molarGasConstant } from "./kelvin.ts";
export {
  type PublishedTableModel,
  publishedTableModel,
  type TimeTemperatureRow,
} from "./published-table-model.ts";
export {
  type RateModel,
  type RateModelKind,
  type RateRange,
  type RateReach,
  rangeWarnings,
} from "./rate-model.ts";
export { defaultRateReach } from "./rate-reach.ts";
export { type TemperatureForTime, temperatureForTime } from "./temperature-for-time.ts";
