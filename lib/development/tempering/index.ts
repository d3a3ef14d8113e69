export {
  type BottleTemperingTime,
  bottleTemperingTime,
} from "./bottle-tempering-time.ts";
export type { LiquidPart, VesselPart } from "./heat-parts.ts";
export {
  type HeatProperties,
  type HeatSource,
  type HeatTransferMedium,
  heatProperties,
  type VesselMaterial,
} from "./heat-properties.ts";
export { type HeaterTime, heaterTime } from "./heater-time.ts";
export { type IceToCool, iceToCool } from "./ice-to-cool.ts";
export { type MixedTemperature, mixedTemperature } from "./mixed-temperature.ts";
export { type TemperedWater, temperWater } from "./temper-water.ts";
export { type WaterTemperature, waterTemperatureFor } from "./water-temperature-for.ts";
