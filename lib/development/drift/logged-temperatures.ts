import { InputError, requireNumber } from "../../input/index.ts";
import { requireBathTemperature } from "../rate/bath-temperature.ts";
import { shown } from "../rate/shown.ts";
import type { TemperatureReading } from "./cooling-from-two-readings.ts";
import type { TemperatureCourse } from "./temperature-course.ts";

/** A course read off a thermometer. */
export interface LoggedTemperatures extends TemperatureCourse {
  readonly kind: "logged";
  readonly readings: readonly TemperatureReading[];
  readonly knownUntilMin: number;
}

/**
 * The course of a bath from logged readings, straight lines between them. Minute 0 is the first
 * reading, whatever its clock says; after the last reading its temperature is held.
 *
 * @param readings at least two: minutes, each later than the one before, and °C
 * @returns the course
 * @throws InputError for fewer than two readings, readings out of order or at the same minute, a
 * temperature in °F
 *
 * @example
 * loggedTemperatures([
 *   { timeMin: 0, temperatureC: 22 },
 *   { timeMin: 10, temperatureC: 20 },
 * ]).temperatureAt(5) // => 21
 *
 * Source: linear interpolation.
 */
export function loggedTemperatures(readings: readonly TemperatureReading[]): LoggedTemperatures {
  const where = "loggedTemperatures";
  if (!Array.isArray(readings) || readings.length < 2) {
    const count = Array.isArray(readings) ? `${readings.length} reading(s)` : readings;
    const advice =
      "write at least two readings { timeMin, temperatureC }; for a bath that keeps its temperature use constantTemperature";
    throw new InputError(where, "readings", count, advice);
  }
  const checked = readings.map((each: TemperatureReading | null, i) => ({
    timeMin: requireNumber(where, `readings[${i}].timeMin`, each?.timeMin, { unit: "min" }),
    temperatureC: requireBathTemperature(where, `readings[${i}].temperatureC`, each?.temperatureC),
  }));
  for (const [i, each] of checked.entries()) {
    const before = checked[i - 1];
    if (before !== undefined && each.timeMin <= before.timeMin) {
      const advice = `write readings in order of time: reading ${i + 1} must be later than ${shown(before.timeMin)} min`;
      throw new InputError(where, `readings[${i}].timeMin`, each.timeMin, advice);
    }
  }
  const origin = checked[0]?.timeMin ?? 0;
  const rows = checked.map((each) => ({ ...each, timeMin: each.timeMin - origin }));
  const temperatures = rows.map((each) => each.temperatureC);
  const knownUntilMin = rows.at(-1)?.timeMin ?? 0;
  return {
    kind: "logged",
    readings: rows,
    startTemperatureC: temperatures[0] ?? 0,
    lowestC: temperatures.reduce((low, each) => Math.min(low, each)),
    highestC: temperatures.reduce((high, each) => Math.max(high, each)),
    breakpointsMin: rows.slice(1).map((each) => each.timeMin),
    knownUntilMin,
    description: `${rows.length} readings over ${shown(knownUntilMin)} min`,
    assumptions: ["between two readings the temperature ran in a straight line"],
    temperatureAt: (timeMin) => interpolate(rows, timeMin),
  };
}

function interpolate(rows: readonly TemperatureReading[], timeMin: number): number {
  let low = 0;
  let high = rows.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((rows[middle]?.timeMin ?? 0) <= timeMin) low = middle;
    else high = middle;
  }
  const a = rows[low];
  const b = rows[high];
  if (a === undefined || b === undefined) return Number.NaN;
  if (timeMin <= a.timeMin) return a.temperatureC;
  if (timeMin >= b.timeMin) return b.temperatureC;
  const part = (timeMin - a.timeMin) / (b.timeMin - a.timeMin);
  return a.temperatureC + part * (b.temperatureC - a.temperatureC);
}
