import { InputError, requireNumber } from "../../input/index.ts";
import { bathTemperatureLimits } from "./bath-temperature.ts";
import type { RateRange, RateReach } from "./rate-model.ts";

/**
 * Range given to a coefficient that comes without evidence of its own, °C.
 *
 * With a reference temperature inside `hand` that is `hand`, 18 to 26 °C, where hand processing is
 * taught to work: below 65 °F development becomes incomplete, up to 80 °F films are processed with
 * care. With any other reference it is from `belowC` below to `aboveC` above it. It is stretched
 * `refuseBeyondC` farther with a warning (common practice, no source). Give `range` and
 * `refuseBeyondC` to replace them.
 *
 * @example
 * defaultRateReach.refuseBeyondC // => 6
 *
 * Source: US Army Signal Center, subcourse SS0509 (edition 8, 1988), Laboratory Procedures, lesson 1,
 * p. 13.
 */
export const defaultRateReach = {
  hand: { minC: 18, maxC: 26 },
  belowC: 2,
  aboveC: 6,
  refuseBeyondC: 6,
} as const;

/** Checks the range and reach given to a model constructor, filling in the defaults. */
export function checkedReach(
  where: string,
  referenceTemperatureC: number,
  given: RateReach,
): { readonly range: RateRange; readonly refuseBeyondC: number } {
  const range = given.range ?? defaultRange(referenceTemperatureC);
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

function defaultRange(referenceTemperatureC: number): RateRange {
  const { hand, belowC, aboveC } = defaultRateReach;
  if (referenceTemperatureC >= hand.minC && referenceTemperatureC <= hand.maxC) return hand;
  return {
    minC: Math.max(bathTemperatureLimits.minC, referenceTemperatureC - belowC),
    maxC: referenceTemperatureC + aboveC,
  };
}
