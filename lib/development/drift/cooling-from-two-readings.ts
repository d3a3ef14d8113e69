import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { requireBathTemperature } from "../rate/bath-temperature.ts";
import { shown } from "../rate/shown.ts";
import { type NewtonCooling, newtonCooling, requireSurroundings } from "./newton-cooling.ts";

/** One reading of a bath's thermometer. */
export interface TemperatureReading {
  readonly timeMin: number;
  readonly temperatureC: number;
}

/** Cooling found from readings, with what the thermometer's uncertainty does to it. */
export interface CoolingFromReadings extends NewtonCooling {
  /** Standard uncertainty of `ratePerMin` from that of the readings. */
  readonly rateUncertaintyPerMin: number;
}

/**
 * Newton cooling found from two readings of a bath and the temperature of the room.
 *
 * k = ln[(T1 − T_s)/(T2 − T_s)] / (t2 − t1);  u(k) = √[(u/(T1−T_s))² + (u/(T2−T_s))²] / (t2 − t1)
 *
 * @param input.first @param input.second readings: minutes and °C, the second later
 * @param input.surroundingsC temperature of the room or water bath, °C
 * @param input.readingUncertaintyC standard uncertainty of one reading, °C, default 0.1
 * @returns the course from minute 0 of the readings' clock on, with the uncertainty of its rate
 * @throws InputError if the readings are not in order, lie on different sides of the surroundings,
 * or move away from them
 *
 * @example
 * coolingFromTwoReadings({
 *   first: { timeMin: 0, temperatureC: 38 },
 *   second: { timeMin: 10, temperatureC: 36 },
 *   surroundingsC: 20,
 * }).ratePerMin // => 0.0117783
 *
 * Source: Newton's law of cooling, solved for k.
 */
export function coolingFromTwoReadings(input: {
  readonly first: TemperatureReading;
  readonly second: TemperatureReading;
  readonly surroundingsC: number;
  readonly readingUncertaintyC?: number;
}): CoolingFromReadings {
  const where = "coolingFromTwoReadings";
  requireObject(where, "input", input, "an object with first, second and surroundingsC");
  requireObject(where, "second", input.second, "an object with timeMin and temperatureC");
  requireObject(where, "first", input.first, "an object with timeMin and temperatureC");
  const { first, second } = input;
  const t1 = requireNumber(where, "first.timeMin", first.timeMin, { min: 0, unit: "min" });
  const t2 = requireNumber(where, "second.timeMin", second.timeMin, {
    above: t1,
    unit: "min",
    hint: "the second reading comes after the first",
  });
  requireBathTemperature(where, "first.temperatureC", first.temperatureC);
  requireBathTemperature(where, "second.temperatureC", second.temperatureC);
  const around = requireSurroundings(where, "surroundingsC", input.surroundingsC);
  const u = requireNumber(where, "readingUncertaintyC", input.readingUncertaintyC ?? 0.1, {
    min: 0,
    max: 5,
  });
  const d1 = first.temperatureC - around;
  const d2 = second.temperatureC - around;
  if (d1 * d2 <= 0 || Math.abs(d2) > Math.abs(d1)) {
    const advice = `write a second reading between ${shown(first.temperatureC)} °C and the surroundings' ${shown(around)} °C: a bath left alone moves towards its surroundings and does not reach them; if it moved otherwise, something else heated or cooled it, or the room's temperature is wrong`;
    throw new InputError(where, "second.temperatureC", second.temperatureC, advice);
  }
  const ratePerMin = Math.log(d1 / d2) / (t2 - t1);
  const startTemperatureC = around + d1 * Math.exp(ratePerMin * t1);
  const course = newtonCooling({ startTemperatureC, surroundingsC: around, ratePerMin });
  return { ...course, rateUncertaintyPerMin: Math.hypot(u / d1, u / d2) / (t2 - t1) };
}
