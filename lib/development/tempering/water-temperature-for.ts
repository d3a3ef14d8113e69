import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { shown } from "../rate/shown.ts";
import {
  type LiquidPart,
  liquidHeat,
  mixAssumptions,
  requireLiquidTemperature,
  type VesselPart,
  vesselHeat,
} from "./heat-parts.ts";

/** How warm water, or a ready developer, has to be before it is mixed or poured. */
export interface WaterTemperature {
  readonly waterC: number;
  readonly waterMl: number;
  readonly targetC: number;
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
}

/**
 * How warm the water must be so that, with a concentrate of another temperature and in a tank of
 * another temperature, the whole comes to rest at the target.
 *
 * T_water = T + [ Σ C·(T − T_part) ] / (V·c), over the other liquids and the vessels
 *
 * Without other liquids it answers how warm to pour a ready developer into a cold tank.
 *
 * @param input.waterMl volume of the water or ready developer, mL, greater than 0
 * @param input.targetC temperature wanted, °C
 * @param input.liquids the other liquids: mL and °C
 * @param input.vessels tank, spiral, jug: mass in g, °C, material or specific heat
 * @returns the temperature in °C
 * @throws InputError if it would have to be ice or steam
 *
 * @example
 * waterTemperatureFor({
 *   waterMl: 750,
 *   targetC: 38,
 *   liquids: [{ volumeMl: 250, temperatureC: 20 }],
 * }).waterC // => 44
 *
 * Source: conservation of energy.
 */
export function waterTemperatureFor(input: {
  readonly waterMl: number;
  readonly targetC: number;
  readonly liquids?: readonly LiquidPart[];
  readonly vessels?: readonly VesselPart[];
}): WaterTemperature {
  const where = "waterTemperatureFor";
  requireObject(where, "input", input, "an object with waterMl and targetC");
  if (input.liquids !== undefined) requireEntries(where, "liquids", input.liquids);
  const volume = requireNumber(where, "waterMl", input.waterMl, { above: 0, unit: "mL" });
  const target = requireLiquidTemperature(where, "targetC", input.targetC);
  const others = [
    ...(input.liquids ?? []).map((each, i) => liquidHeat(where, `liquids[${i}]`, each)),
    ...(input.vessels ?? []).map((each, i) => vesselHeat(where, `vessels[${i}]`, each)),
  ];
  const water = liquidHeat(where, "water", { volumeMl: volume, temperatureC: target });
  const heat = others.reduce(
    (sum, each) => sum + each.heatCapacityJPerK * (target - each.temperatureC),
    0,
  );
  const waterC = target + heat / water.heatCapacityJPerK;
  if (!(waterC >= 0 && waterC <= 100)) {
    const advice = `write a target nearer to the temperature of the other parts: the water would have to be ${shown(waterC)} °C; temper the concentrate or the tank first`;
    throw new InputError(where, "targetC", target, advice);
  }
  return {
    waterC,
    waterMl: volume,
    targetC: target,
    assumptions: mixAssumptions,
    cautions:
      waterC > 50 ? ["water above 50 °C scalds, and many developers are not mixed above it"] : [],
  };
}
