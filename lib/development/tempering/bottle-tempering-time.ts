import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { type CoolingTank, coolingOfTank } from "../drift/cooling-of-tank.ts";
import { shown } from "../rate/shown.ts";

/** How long a bottle stands in a water bath until it is at temperature. */
export interface BottleTemperingTime {
  readonly minutes: number;
  /** For the highest and the lowest published heat transfer outside, minutes. */
  readonly shortestMin: number;
  readonly longestMin: number;
  readonly targetC: number;
  readonly ratePerMin: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * How long a stock bottle stands in a water bath of constant temperature until its contents are
 * within a tolerance of the bath.
 *
 * t = (1/k)·ln( |T0 − T_bath| / tolerance ), k as in coolingOfTank
 *
 * @param input.bottle volume in mL, surface in cm² or diameter and height in mm, wall
 * @param input.startC @param input.bathC temperatures, °C
 * @param input.withinC how near to the bath is near enough, °C, greater than 0, default 0.5
 * @param input.medium "still water" (default), "stirred water", …
 * @param input.outsideWPerM2K @param input.insideWPerM2K coefficients of one's own, W/(m²·K)
 * @returns minutes, with the range that published coefficients leave open
 * @throws InputError if the bottle is already there, or a size is missing
 *
 * @example
 * bottleTemperingTime({
 *   bottle: { volumeMl: 1000, diameterMm: 90, heightMm: 180, wall: { material: "polyethylene", thicknessMm: 1 } },
 *   startC: 16,
 *   bathC: 24,
 * }).minutes // => 72.8697
 *
 * Source: Newton's law of cooling; coefficients as in coolingOfTank.
 */
export function bottleTemperingTime(input: {
  readonly bottle: CoolingTank;
  readonly startC: number;
  readonly bathC: number;
  readonly withinC?: number;
  readonly medium?: string;
  readonly outsideWPerM2K?: number;
  readonly insideWPerM2K?: number;
}): BottleTemperingTime {
  const where = "bottleTemperingTime";
  requireObject(where, "input", input, "an object with bottle, startC and bathC");
  requireObject(where, "bottle", input.bottle, "an object with volumeMl");
  const withinC = requireNumber(where, "withinC", input.withinC ?? 0.5, {
    above: 0,
    max: 20,
    unit: "°C",
  });
  const { bottle, startC, bathC, withinC: _, ...rest } = input;
  const course = coolingOfTank({
    ...rest,
    tank: bottle,
    startTemperatureC: startC,
    surroundingsC: bathC,
    medium: input.medium ?? "still water",
  });
  const apart = Math.abs(startC - bathC);
  if (apart <= withinC) {
    const advice = `write a bath farther than ${shown(withinC)} °C from the bottle: it is at temperature already`;
    throw new InputError(where, "bathC", bathC, advice);
  }
  const time = (rate: number) => Math.log(apart / withinC) / rate;
  return {
    minutes: time(course.ratePerMin),
    shortestMin: time(course.fastestRatePerMin),
    longestMin: time(course.slowestRatePerMin),
    targetC: bathC + Math.sign(startC - bathC) * withinC,
    ratePerMin: course.ratePerMin,
    assumptions: [...course.assumptions, "the water bath keeps its temperature"],
    warnings: ["an estimate: put a clean thermometer into the bottle before use, and shake it"],
  };
}
