import { requireNumber, requireObject } from "../../input/index.ts";
import { requireBathTemperature } from "../rate/bath-temperature.ts";
import { fahrenheitHint } from "../rate/fahrenheit-hint.ts";
import { shown } from "../rate/shown.ts";
import type { TemperatureCourse } from "./temperature-course.ts";

/** A bath that drifts towards its surroundings by Newton's law. */
export interface NewtonCooling extends TemperatureCourse {
  readonly kind: "newton-cooling";
  readonly surroundingsC: number;
  /** Fraction of the difference lost per minute, k. */
  readonly ratePerMin: number;
  /** Minutes until the difference has fallen to 1/e, 1/k. */
  readonly timeConstantMin: number;
  /** Minutes until the difference has halved, ln 2/k. */
  readonly halfTimeMin: number;
}

/**
 * A bath that drifts towards the room, or a water bath, of constant temperature.
 *
 * T(t) = T_s + (T_0 − T_s) · exp(−k·t)
 *
 * @param input.startTemperatureC temperature of the bath at minute 0, °C
 * @param input.surroundingsC temperature of what surrounds it, °C, −20 to 60
 * @param input.ratePerMin k, the fraction of the difference lost per minute, 0 to 10
 * @returns the course, with time constant and half-time in minutes; for k = 0 the bath
 * keeps its temperature and both are given as 1e9
 * @throws InputError for a temperature no bath has or a rate outside its bounds
 *
 * @example
 * newtonCooling({ startTemperatureC: 38, surroundingsC: 20, ratePerMin: 0.012 }).temperatureAt(10) // => 35.964568
 *
 * Source: Newton's law of cooling; F. P. Incropera et al., Fundamentals of Heat and Mass Transfer,
 * ch. 5, lumped capacitance (formula from memory).
 */
export function newtonCooling(input: {
  readonly startTemperatureC: number;
  readonly surroundingsC: number;
  readonly ratePerMin: number;
}): NewtonCooling {
  const where = "newtonCooling";
  requireObject(
    where,
    "input",
    input,
    "an object with startTemperatureC, surroundingsC and ratePerMin",
  );
  const start = requireBathTemperature(where, "startTemperatureC", input.startTemperatureC);
  const around = requireSurroundings(where, "surroundingsC", input.surroundingsC);
  const rate = requireNumber(where, "ratePerMin", input.ratePerMin, {
    min: 0,
    max: 10,
    hint: "per minute: 0.01 means 1 % of the difference each minute",
  });
  const timeConstantMin = rate === 0 ? ENDLESS_MIN : Math.min(1 / rate, ENDLESS_MIN);
  const end = rate === 0 ? start : around;
  return {
    kind: "newton-cooling",
    startTemperatureC: start,
    surroundingsC: around,
    ratePerMin: rate,
    timeConstantMin,
    halfTimeMin: Math.LN2 * timeConstantMin,
    lowestC: Math.min(start, end),
    highestC: Math.max(start, end),
    breakpointsMin: [],
    description: `from ${shown(start)} °C towards ${shown(around)} °C, time constant ${shown(timeConstantMin)} min`,
    assumptions: [
      "the bath is mixed, its surroundings keep their temperature, and the heat flow is proportional to the difference (Newton cooling)",
    ],
    temperatureAt: (timeMin) => around + (start - around) * Math.exp(-rate * timeMin),
  };
}

/** Stands for a time constant that is endless, so that results stay JSON-safe. */
export const ENDLESS_MIN = 1e9;

/** Lets a room or water-bath temperature in. */
export function requireSurroundings(
  where: string,
  argument: string,
  value: unknown,
  maxC = 60,
): number {
  const meant =
    typeof value === "number" && value > maxC ? fahrenheitHint(value, -20, 60) : undefined;
  return requireNumber(where, argument, value, {
    min: -20,
    max: maxC,
    unit: "°C",
    ...(meant === undefined ? {} : { hint: meant }),
  });
}
