import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { shown } from "../rate/shown.ts";
import {
  liquidHeat,
  mixAssumptions,
  requireLiquidTemperature,
  type VesselPart,
  vesselHeat,
} from "./heat-parts.ts";

/** How much hot and cold water to take. */
export interface TemperedWater {
  readonly hotMl: number;
  readonly coldMl: number;
  readonly totalMl: number;
  readonly temperatureC: number;
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
}

/**
 * Volumes of hot and cold water that together, in their vessels, have a wanted temperature.
 *
 * V_hot·c·(T_hot − T) + (V − V_hot)·c·(T_cold − T) + Σ C_vessel·(T_vessel − T) = 0
 *
 * @param input.totalMl volume wanted, mL, greater than 0
 * @param input.targetC temperature wanted, °C
 * @param input.hotC @param input.coldC temperatures of the two taps, °C, hot above cold
 * @param input.vessels what the water is poured into: mass in g, °C, material or specific heat
 * @returns volumes in mL
 * @throws InputError if the target cannot be reached from these two (the message gives the range)
 *
 * @example
 * temperWater({ totalMl: 1000, targetC: 38, hotC: 55, coldC: 18 }).hotMl // => 540.5405
 *
 * Source: conservation of energy.
 */
export function temperWater(input: {
  readonly totalMl: number;
  readonly targetC: number;
  readonly hotC: number;
  readonly coldC: number;
  readonly vessels?: readonly VesselPart[];
}): TemperedWater {
  const where = "temperWater";
  requireObject(where, "input", input, "an object with totalMl, targetC, hotC, …");
  const total = requireNumber(where, "totalMl", input.totalMl, { above: 0, unit: "mL" });
  const target = requireLiquidTemperature(where, "targetC", input.targetC);
  const hot = requireLiquidTemperature(where, "hotC", input.hotC);
  const cold = requireLiquidTemperature(where, "coldC", input.coldC);
  if (hot <= cold) {
    throw new InputError(where, "hotC", hot, `write a hot water warmer than coldC (${cold} °C)`);
  }
  const vessels = (input.vessels ?? []).map((each, i) => vesselHeat(where, `vessels[${i}]`, each));
  const { heatCapacityJPerK: water } = liquidHeat(where, "water", {
    volumeMl: total,
    temperatureC: target,
  });
  const warming = vessels.reduce(
    (sum, each) => sum + each.heatCapacityJPerK * (target - each.temperatureC),
    0,
  );
  const share = ((target - cold) * water + warming) / ((hot - cold) * water);
  if (share < 0 || share > 1) {
    const vesselC = vessels.reduce((sum, each) => sum + each.heatCapacityJPerK, 0);
    const heat = vessels.reduce((sum, e) => sum + e.heatCapacityJPerK * e.temperatureC, 0);
    const reach = (t: number) => shown((water * t + heat) / (water + vesselC));
    const help = share < 0 ? "; cool with ice (iceToCool)" : "; heat the water further";
    const advice = `write a temperature from ${reach(cold)} to ${reach(hot)} °C, which is what these two waters and vessels can give${help}`;
    throw new InputError(where, "targetC", target, advice);
  }
  return {
    hotMl: share * total,
    coldMl: (1 - share) * total,
    totalMl: total,
    temperatureC: target,
    assumptions: mixAssumptions,
    cautions: hot > 50 ? ["water above 50 °C scalds: pour the hot into the cold"] : [],
  };
}
