import { requireBathTemperature } from "../rate/bath-temperature.ts";
import { shown } from "../rate/shown.ts";

/**
 * The temperature of a bath over time, from minute 0 on.
 *
 * A plain object; `temperatureAt` is its only function. Between two neighbouring `breakpointsMin`
 * (and after the last) the temperature is smooth; it never leaves `lowestC` to `highestC`.
 */
export interface TemperatureCourse {
  readonly kind: "constant" | "newton-cooling" | "water-bath" | "logged";
  readonly startTemperatureC: number;
  /** Bounds of the temperature from minute 0 on, °C. */
  readonly lowestC: number;
  readonly highestC: number;
  /** Minutes at which the course has a kink, ascending. */
  readonly breakpointsMin: readonly number[];
  /** Minutes up to which the course rests on readings; without it, it is a law for all time. */
  readonly knownUntilMin?: number;
  readonly description: string;
  readonly assumptions: readonly string[];
  /** Temperature in °C at a time in minutes, at least 0. */
  temperatureAt(timeMin: number): number;
}

/**
 * A bath that keeps its temperature.
 *
 * @param temperatureC temperature, °C
 * @returns the course
 * @throws InputError for a temperature no processing bath has
 *
 * @example
 * constantTemperature(20).temperatureAt(7) // => 20
 */
export function constantTemperature(temperatureC: number): TemperatureCourse {
  requireBathTemperature("constantTemperature", "temperatureC", temperatureC);
  return {
    kind: "constant",
    startTemperatureC: temperatureC,
    lowestC: temperatureC,
    highestC: temperatureC,
    breakpointsMin: [],
    description: `constant ${shown(temperatureC)} °C`,
    assumptions: ["the bath keeps its temperature"],
    temperatureAt: () => temperatureC,
  };
}
