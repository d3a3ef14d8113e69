import { requireNumber } from "../../input/index.ts";
import { fahrenheitHint } from "./fahrenheit-hint.ts";

/** Coldest and hottest processing bath let in, °C; every function that uses them takes others. */
export interface BathTemperatureLimits {
  readonly minC: number;
  readonly maxC: number;
}

/**
 * The limits used unless others are given: from the freezing point of water to 45 °C.
 *
 * The upper one keeps out Fahrenheit values and baths that soften and reticulate gelatin. It is a
 * working limit, common practice without source: processes run hotter only with films hardened for
 * them.
 *
 * @example
 * bathTemperatureLimits.maxC // => 45
 */
export const bathTemperatureLimits: BathTemperatureLimits = { minC: 0, maxC: 45 };

/**
 * Lets the temperature of a processing bath in, in °C, and returns it.
 *
 * @param where name of the public function, for the message
 * @param argument name of the argument, for the message
 * @param value what was given
 * @param limits coldest and hottest bath allowed, °C
 * @returns the same number
 * @throws InputError if it is no finite number, below freezing, or hotter than an emulsion stands;
 * a number that is likely °F is converted in the message
 *
 * @example
 * requireBathTemperature("compensateTime", "toTemperatureC", 22.5) // => 22.5
 */
export function requireBathTemperature(
  where: string,
  argument: string,
  value: unknown,
  limits: BathTemperatureLimits = bathTemperatureLimits,
): number {
  return requireNumber(where, argument, value, {
    min: limits.minC,
    max: limits.maxC,
    unit: "°C",
    ...bathHint(value, limits),
  });
}

/** From here on a number is likelier to be a bath in °F than in °C. */
const LIKELY_FAHRENHEIT = 45;

function bathHint(value: unknown, limits: BathTemperatureLimits): { readonly hint?: string } {
  if (typeof value !== "number" || !(value > limits.maxC)) return {};
  const soft = "a bath hotter than that softens the emulsion";
  const { minC, maxC } = bathTemperatureLimits;
  const meant = value > LIKELY_FAHRENHEIT ? fahrenheitHint(value, minC, maxC) : undefined;
  return { hint: meant === undefined ? soft : `${meant}; as °C, ${soft}` };
}
