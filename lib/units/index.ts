export { type AreaUnit, convertArea } from "./area.ts";
export { type AreaRateUnit, areaRateFromFilmLength, convertAreaRate } from "./area-rate.ts";
export { type AreaReading, formatAreaM2, rectangleAreaM2 } from "./formats/format-area.ts";
export { type PhotoFormat, photoFormats } from "./formats/photo-format.ts";
export { photoFormat } from "./formats/photo-format-by-id.ts";
export {
  type FormatCount,
  type ProductionArea,
  productionAreaM2,
} from "./formats/production-area.ts";
export { convertLength, type LengthUnit } from "./length.ts";
export { convertMass, type MassUnit } from "./mass.ts";
export { convertMassConcentration, type MassConcentrationUnit } from "./mass-concentration.ts";
export { formatMinutes, parseMinutes } from "./minutes.ts";
export { parseNumber } from "./number.ts";
export { parseRatio, type Ratio, type RatioReading } from "./ratio.ts";
export {
  celsiusDifferenceFromFahrenheit,
  celsiusFromFahrenheit,
  fahrenheitDifferenceFromCelsius,
  fahrenheitFromCelsius,
} from "./temperature.ts";
export { typedVolumeAdvice } from "./typed-volume.ts";
export { convertVolume, type VolumeUnit } from "./volume.ts";
