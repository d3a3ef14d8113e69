import { requireNumber, requireObject } from "../../input/index.ts";
import { requireBathTemperature } from "../rate/bath-temperature.ts";
import { shown } from "../rate/shown.ts";
import { requireSurroundings } from "./newton-cooling.ts";
import type { TemperatureCourse } from "./temperature-course.ts";

/** A tank that stands in a water bath of limited size, which itself drifts towards the room. */
export interface CoolingInWaterBath extends TemperatureCourse {
  readonly kind: "water-bath";
  readonly roomC: number;
  /** Temperature of the water bath at a time in minutes, °C. */
  bathTemperatureAt(timeMin: number): number;
}

/**
 * A tank in a water bath of limited size: the two exchange heat, and the bath loses it to the room.
 *
 * dT1/dt = −k1·(T1 − T2);  dT2/dt = (V1/V2)·k1·(T1 − T2) − k2·(T2 − T_room), solved exactly (two
 * exponentials)
 *
 * @param input.tankVolumeMl @param input.bathVolumeMl volumes, mL, 0.001 to 1e15
 * @param input.startTemperatureC @param input.bathStartTemperatureC temperatures at minute 0, °C
 * @param input.roomC temperature of the room, °C
 * @param input.tankRatePerMin k1, exchange between tank and bath, per minute (coolingOfTank with
 * medium "still water" estimates it, coolingFromTwoReadings measures it)
 * @param input.bathRatePerMin k2, loss of the bath to the room, per minute
 * @returns the course of the tank, with that of the bath beside it
 * @throws InputError for a temperature no bath has or a number outside its bounds
 *
 * @example
 * const course = coolingInWaterBath({
 *   tankVolumeMl: 600, startTemperatureC: 24, tankRatePerMin: 0.1,
 *   bathVolumeMl: 6000, bathStartTemperatureC: 20, bathRatePerMin: 0.003, roomC: 16,
 * })
 * course.temperatureAt(10) // => 21.530420
 *
 * Source: Newton's law of cooling for two bodies; a linear system of two equations.
 */
export function coolingInWaterBath(input: {
  readonly tankVolumeMl: number;
  readonly startTemperatureC: number;
  readonly tankRatePerMin: number;
  readonly bathVolumeMl: number;
  readonly bathStartTemperatureC: number;
  readonly bathRatePerMin: number;
  readonly roomC: number;
}): CoolingInWaterBath {
  const where = "coolingInWaterBath";
  requireObject(
    where,
    "input",
    input,
    "an object with tankVolumeMl, startTemperatureC, tankRatePerMin, …",
  );
  const volume = { min: 1e-3, max: 1e15, unit: "mL" };
  const v1 = requireNumber(where, "tankVolumeMl", input.tankVolumeMl, volume);
  const v2 = requireNumber(where, "bathVolumeMl", input.bathVolumeMl, volume);
  const start = requireBathTemperature(where, "startTemperatureC", input.startTemperatureC);
  const bath = requireSurroundings(where, "bathStartTemperatureC", input.bathStartTemperatureC);
  const room = requireSurroundings(where, "roomC", input.roomC);
  const k1 = requireNumber(where, "tankRatePerMin", input.tankRatePerMin, { min: 0, max: 10 });
  const k2 = requireNumber(where, "bathRatePerMin", input.bathRatePerMin, { min: 0, max: 10 });
  const share = v1 / v2;
  // Temperatures above the room obey u' = A·u with A = [[−k1, k1], [share·k1, −(share·k1 + k2)]].
  const u1 = start - room;
  const u2 = bath - room;
  const middle = -(k1 + share * k1 + k2) / 2;
  const half = Math.sqrt((k1 - share * k1 - k2) ** 2 + 4 * share * k1 * k1) / 2;
  // From the product of the two rates: their difference loses its digits where one body is tiny.
  const fastRate = middle - half;
  const slowRate = fastRate === 0 ? 0 : (k1 * k2) / fastRate;
  const slope1 = -k1 * (u1 - u2);
  const slope2 = share * k1 * (u1 - u2) - k2 * u2;
  const follow = (u: number, slope: number, t: number) => {
    const slow = Math.exp(slowRate * t);
    const fast = Math.exp(fastRate * t);
    const odd = half * t < 1e-8 ? t * Math.exp(middle * t) : (slow - fast) / (2 * half);
    return room + (u * (slow + fast)) / 2 + (slope - middle * u) * odd;
  };
  return {
    kind: "water-bath",
    startTemperatureC: start,
    roomC: room,
    lowestC: Math.min(start, bath, room),
    highestC: Math.max(start, bath, room),
    breakpointsMin: [],
    description: `from ${shown(start)} °C in a water bath of ${shown(v2)} mL at ${shown(bath)} °C, room ${shown(room)} °C`,
    assumptions: [
      "tank and water bath are each mixed and hold heat in proportion to their volumes; the room keeps its temperature",
    ],
    temperatureAt: (t) => follow(u1, slope1, t),
    bathTemperatureAt: (t) => follow(u2, slope2, t),
  };
}
