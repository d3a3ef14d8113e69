import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import {
  type LiquidPart,
  liquidHeat,
  mixAssumptions,
  type VesselPart,
  vesselHeat,
} from "./heat-parts.ts";

/** The temperature of a mix. */
export interface MixedTemperature {
  readonly temperatureC: number;
  readonly volumeMl: number;
  /** Heat capacity of everything together, J/K. */
  readonly heatCapacityJPerK: number;
  readonly assumptions: readonly string[];
}

/**
 * The temperature at which liquids and the vessels they touch come to rest.
 *
 * T = Σ C·T / Σ C, with C = volume · density · specific heat, or mass · specific heat
 *
 * @param input.liquids one or more: mL and °C; water unless specific heat and density are given
 * @param input.vessels tank, spiral, jug: mass in g, °C, and material or specific heat
 * @returns the temperature in °C, the volume in mL, the heat capacity in J/K
 * @throws InputError if nothing has any heat capacity, or a number lies outside its bounds
 *
 * @example
 * mixedTemperature({
 *   liquids: [{ volumeMl: 600, temperatureC: 20 }],
 *   vessels: [{ massG: 300, temperatureC: 14, material: "stainless steel" }],
 * }).temperatureC // => 19.667797
 *
 * Source: conservation of energy.
 */
export function mixedTemperature(input: {
  readonly liquids: readonly LiquidPart[];
  readonly vessels?: readonly VesselPart[];
}): MixedTemperature {
  const where = "mixedTemperature";
  requireObject(where, "input", input, "an object with liquids");
  if (input.vessels !== undefined) requireEntries(where, "vessels", input.vessels);
  requireEntries(where, "liquids", input.liquids);
  const parts = [
    ...input.liquids.map((each, i) => liquidHeat(where, `liquids[${i}]`, each)),
    ...(input.vessels ?? []).map((each, i) => vesselHeat(where, `vessels[${i}]`, each)),
  ];
  const capacity = parts.reduce((sum, each) => sum + each.heatCapacityJPerK, 0);
  if (!(capacity > 0)) {
    const advice = "write at least one liquid with a volume above 0 mL";
    throw new InputError(where, "liquids", input.liquids, advice);
  }
  const heat = parts.reduce((sum, each) => sum + each.heatCapacityJPerK * each.temperatureC, 0);
  return {
    temperatureC: heat / capacity,
    volumeMl: input.liquids.reduce((sum, each) => sum + each.volumeMl, 0),
    heatCapacityJPerK: capacity,
    assumptions: mixAssumptions,
  };
}
