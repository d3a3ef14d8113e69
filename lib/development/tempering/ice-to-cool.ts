import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import {
  liquidHeat,
  mixAssumptions,
  requireLiquidTemperature,
  type VesselPart,
  vesselHeat,
} from "./heat-parts.ts";
import { heatProperties } from "./heat-properties.ts";

/** How much ice cools a bath. */
export interface IceToCool {
  readonly iceG: number;
  /** Volume after the ice has melted into it, mL. */
  readonly volumeAfterMl: number;
  /** Strength left if the ice melts into the solution itself: volume before over after. */
  readonly strengthFactor: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * The mass of ice that cools a volume of water or solution to a temperature.
 *
 * m·[ c_ice·(0 − T_ice) + L + c·T ] = (V·c)·(T0 − T) + Σ C_vessel·(T_vessel − T)
 *
 * @param input.volumeMl volume to cool, mL, greater than 0
 * @param input.temperatureC its temperature, °C
 * @param input.targetC temperature wanted, °C, below `temperatureC`
 * @param input.iceTemperatureC temperature of the ice, °C, −40 to 0, default 0 (already wet)
 * @param input.vessels what holds the water: mass in g, °C, material or specific heat
 * @returns grams of ice, the volume after melting in mL, and the strength left
 * @throws InputError if the target is not below the temperature
 *
 * @example
 * iceToCool({ volumeMl: 2000, temperatureC: 26, targetC: 20 }).iceG // => 120.115
 *
 * Source: conservation of energy; latent heat 334 J/g (data/development/heat-properties.json).
 */
export function iceToCool(input: {
  readonly volumeMl: number;
  readonly temperatureC: number;
  readonly targetC: number;
  readonly iceTemperatureC?: number;
  readonly vessels?: readonly VesselPart[];
}): IceToCool {
  const where = "iceToCool";
  requireObject(where, "input", input, "an object with volumeMl, temperatureC and targetC");
  const volume = requireNumber(where, "volumeMl", input.volumeMl, { above: 0, unit: "mL" });
  const start = requireLiquidTemperature(where, "temperatureC", input.temperatureC);
  const target = requireLiquidTemperature(where, "targetC", input.targetC);
  const iceC = requireNumber(where, "iceTemperatureC", input.iceTemperatureC ?? 0, {
    min: -40,
    max: 0,
    unit: "°C",
  });
  const { ice, water } = heatProperties;
  const liquid = liquidHeat(where, "water", { volumeMl: volume, temperatureC: start });
  const vessels = (input.vessels ?? []).map((each, i) => vesselHeat(where, `vessels[${i}]`, each));
  const heat = [liquid, ...vessels].reduce(
    (sum, each) => sum + each.heatCapacityJPerK * (each.temperatureC - target),
    0,
  );
  if (heat <= 0) {
    const advice = "write a target below the temperature of the water: ice only cools";
    throw new InputError(where, "targetC", target, advice);
  }
  const perGram =
    ice.specificHeatJPerGK * -iceC + ice.latentHeatJPerG + water.specificHeatJPerGK * target;
  const iceG = heat / perGram;
  const volumeAfterMl = volume + iceG / water.densityGPerMl;
  return {
    iceG,
    volumeAfterMl,
    strengthFactor: volume / volumeAfterMl,
    assumptions: [...mixAssumptions, "all the ice melts before the temperature is read"],
    warnings: [
      "ice that melts into a solution dilutes it: keep it in a closed bag, or put it into the water bath around the tank",
    ],
  };
}
