import { InputError, requireNumber } from "../../input/index.ts";
import { bathTemperatureLimits } from "./bath-temperature.ts";
import type { RateRange, RateReach } from "./rate-model.ts";

/**
 * Range given to a coefficient that comes without evidence of its own: how far below and above the
 * reference temperature it is trusted, and how much farther it is stretched with a warning, °C.
 *
 * Around 20 °C that is 18 to 26 °C, refused below 12 and above 32 °C. The range is where hand
 * processing is taught to work: below 65 °F development becomes incomplete, up to 80 °F films are
 * processed with care. How far beyond it is stretched is common practice, no source. Give `range`
 * and `refuseBeyondC` to replace them.
 *
 * @example
 * defaultRateReach.refuseBeyondC // => 6
 *
 * Source: US Army Signal Center, subcourse SS0509 (edition 8, 1988), Laboratory Procedures, lesson 1,
 * p. 13.
 */
export const defaultRateReach = { belowC: 2, aboveC: 6, refuseBeyondC: 6 } as const;

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
