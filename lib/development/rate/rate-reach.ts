import { InputError, requireNumber } from "../../input/index.ts";
import { bathTemperatureLimits } from "./bath-temperature.ts";
import type { RateRange, RateReach } from "./rate-model.ts";

/**
 * Range given to a coefficient that comes without evidence of its own: how far below and above the
 * reference temperature it is trusted, and how much farther it is stretched with a warning, °C.
 *
 * Around 20 °C that is 16 to 26 °C, refused below 10 and above 32 °C: printed time–temperature
 * tables span about 18 to 24 °C, and developers that rest on hydroquinone fall away faster than any
 * such law in the cold. Common practice, no source; give `range` and `refuseBeyondC` to replace it.
 *
 * @example
 * defaultRateReach.refuseBeyondC // => 6
 */
export const defaultRateReach = { belowC: 4, aboveC: 6, refuseBeyondC: 6 } as const;

/** Checks the range and reach given to a model constructor, filling in the defaults. */
export function checkedReach(
  where: string,
  referenceTemperatureC: number,
  given: RateReach,
): { readonly range: RateRange; readonly refuseBeyondC: number } {
  const range = given.range ?? {
    minC: Math.max(bathTemperatureLimits.minC, referenceTemperatureC - defaultRateReach.belowC),
    maxC: referenceTemperatureC + defaultRateReach.aboveC,
  };
  requireNumber(where, "range.minC", range.minC, { unit: "°C", min: -20, max: 100 });
  requireNumber(where, "range.maxC", range.maxC, { unit: "°C", min: -20, max: 100 });
  if (range.minC >= range.maxC) {
    throw new InputError(where, "range", range, "write minC lower than maxC, both in °C");
  }
  const refuseBeyondC = requireNumber(
    where,
    "refuseBeyondC",
    given.refuseBeyondC ?? defaultRateReach.refuseBeyondC,
    { min: 0, max: 40, unit: "°C" },
  );
  return { range: { minC: range.minC, maxC: range.maxC }, refuseBeyondC };
}
