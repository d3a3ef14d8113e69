export type { AllowedError } from "./contrast/allowed-error.ts";
export {
  type ContrastCurve,
  type ContrastLaw,
  type ContrastReach,
  exponentialApproach,
  powerOfTime,
} from "./contrast/contrast-curve.ts";
export { contrastCurveFromFit } from "./contrast/contrast-curve-from-fit.ts";
export { type ContrastExample, contrastExample } from "./contrast/contrast-example.ts";
export {
  type ContrastReading,
  contrastFromTwoTimes,
  type TwoTimeContrast,
} from "./contrast/contrast-from-two-times.ts";
export { type DevelopmentChange, developmentChange } from "./contrast/development-change.ts";
export {
  developmentForRange,
  type ZoneDevelopment,
  type ZoneDevelopments,
} from "./contrast/development-for-range.ts";
export {
  type DevelopmentFactor,
  developmentFactors,
  type FactorialDevelopment,
  factorialDevelopment,
} from "./contrast/factorial-development.ts";
export { type ContrastFit, fitContrastTime } from "./contrast/fit-contrast-time.ts";
export {
  type PushDevelopment,
  type PushedTone,
  pushDevelopment,
} from "./contrast/push-development.ts";
export {
  type TemperatureTolerance,
  temperatureTolerance,
} from "./contrast/temperature-tolerance.ts";
export { type TimeForContrast, timeForContrast } from "./contrast/time-for-contrast.ts";
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
  type ComparedLaw,
  compareRateLaws,
  type RateLawComparison,
} from "./fitting/compare-rate-laws.ts";
export { fitTimeTemperature } from "./fitting/fit-time-temperature.ts";
export type { FittedValue } from "./fitting/fitted-value.ts";
export {
  type PublishedTimeRow,
  type PublishedTimeTable,
  publishedTimeTable,
  publishedTimeTables,
} from "./fitting/published-time-tables.ts";
export { rateModelFromFit } from "./fitting/rate-model-from-fit.ts";
export type { FittedRow, RateLaw, TimeTemperatureFit } from "./fitting/time-temperature-fit.ts";
export {
  activationEnergyFromFactor,
  factorFromActivationEnergy,
  type TemperaturePair,
} from "./rate/activation-energy-from-factor.ts";
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
  type AgitationMark,
  type AgitationScheme,
  agitationMarks,
  agitationSchemes,
} from "./session/agitation.ts";
export {
  type ClockMoment,
  type ClockTime,
  clockAfter,
  parseClockTime,
} from "./session/clock-time.ts";
export {
  type DevelopingTank,
  developingTank,
  developingTanks,
  type TankSpiral,
} from "./session/developing-tank.ts";
export { type FixerState, type FixingTime, fixingTime } from "./session/fixing-time.ts";
export {
  type PackedBatch,
  type PackedBatches,
  type PackingKind,
  packBatches,
} from "./session/pack-batches.ts";
export { planSession } from "./session/plan-session.ts";
export {
  type ProcessRecipe,
  processRecipe,
  processRecipes,
  type RecipeStep,
} from "./session/process-recipe.ts";
export { sessionLines } from "./session/session-lines.ts";
export type {
  RinseWater,
  SessionBottle,
  SessionDeveloper,
  SessionFilm,
  SessionHandling,
  SessionProcess,
  SessionRequest,
  SessionTemperatures,
  SessionWash,
} from "./session/session-request.ts";
export type {
  Session,
  SessionAction,
  SessionBatch,
  SessionBottleLeft,
  SessionDevelopment,
  SessionDrying,
  SessionStep,
  SessionStock,
} from "./session/session-result.ts";
export {
  coldFixerFactor,
  coldWashFactor,
  fillAndDumpFraction,
  runningWashFraction,
} from "./session/wash-factors.ts";
export {
  type FilmWash,
  type FilmWashResult,
  washByChanges,
  washByFlow,
} from "./session/wash-film.ts";
export { washChangesNeeded, washMinutesNeeded } from "./session/wash-needed.ts";
export { type SourcedRule, type WashRules, washRules } from "./session/wash-rules.ts";
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
