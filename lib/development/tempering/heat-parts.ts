import { InputError, requireNumber } from "../../input/index.ts";
import { fahrenheitHint } from "../rate/fahrenheit-hint.ts";
import { heatProperties, vesselMaterial } from "./heat-properties.ts";

/** A liquid that goes into a mix. */
export interface LiquidPart {
  readonly volumeMl: number;
  readonly temperatureC: number;
  /** Default that of water, 4.18. */
  readonly specificHeatJPerGK?: number;
  /** Default that of water, 1. */
  readonly densityGPerMl?: number;
}

/** A tank, spiral, bottle or jug that takes part in the exchange of heat. */
export interface VesselPart {
  /** Mass of what the liquid touches, g. */
  readonly massG: number;
  readonly temperatureC: number;
  /** A material of `heatProperties.materials`; or give `specificHeatJPerGK`. */
  readonly material?: string;
  readonly specificHeatJPerGK?: number;
}

/** Something with a heat capacity at a temperature. */
export interface HeatPart {
  readonly heatCapacityJPerK: number;
  readonly temperatureC: number;
}

/** Lets a water or vessel temperature in (liquid water). */
export function requireLiquidTemperature(where: string, argument: string, value: unknown): number {
  const hint = typeof value === "number" && value > 100 ? fahrenheitHint(value, 0, 100) : undefined;
  return requireNumber(where, argument, value, {
    min: 0,
    max: 100,
    unit: "°C",
    ...(hint === undefined ? {} : { hint }),
  });
}

/** The heat capacity of a liquid, checked. */
export function liquidHeat(where: string, argument: string, part: LiquidPart): HeatPart {
  const { water } = heatProperties;
  const volume = requireNumber(where, `${argument}.volumeMl`, part.volumeMl, {
    min: 0,
    unit: "mL",
  });
  const heat = requireNumber(
    where,
    `${argument}.specificHeatJPerGK`,
    part.specificHeatJPerGK ?? water.specificHeatJPerGK,
    { above: 0, max: 10, unit: "J/(g·K)" },
  );
  const density = requireNumber(
    where,
    `${argument}.densityGPerMl`,
    part.densityGPerMl ?? water.densityGPerMl,
    { above: 0, max: 3, unit: "g/mL" },
  );
  return {
    heatCapacityJPerK: volume * density * heat,
    temperatureC: requireLiquidTemperature(where, `${argument}.temperatureC`, part.temperatureC),
  };
}

/** The heat capacity of a vessel, checked. */
export function vesselHeat(where: string, argument: string, part: VesselPart): HeatPart {
  const mass = requireNumber(where, `${argument}.massG`, part.massG, { min: 0, unit: "g" });
  if (part.specificHeatJPerGK === undefined && part.material === undefined) {
    const names = heatProperties.materials.map((each) => each.material).join(", ");
    const advice = `write a material (${names}) or specificHeatJPerGK`;
    throw new InputError(where, `${argument}.material`, undefined, advice);
  }
  const heat =
    part.specificHeatJPerGK ??
    vesselMaterial(where, `${argument}.material`, part.material ?? "").specificHeatJPerGK;
  requireNumber(where, `${argument}.specificHeatJPerGK`, heat, { above: 0, max: 10 });
  return {
    heatCapacityJPerK: mass * heat,
    temperatureC: requireLiquidTemperature(where, `${argument}.temperatureC`, part.temperatureC),
  };
}

/** What all mixes take for granted. */
export const mixAssumptions: readonly string[] = [
  "no heat is lost to the room while mixing",
  "1 mL of water weighs 1 g and takes 4.18 J per degree at every temperature (between 18 and 55 °C an error of about 0.1 °C)",
];
