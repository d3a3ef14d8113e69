import { requireNumber, requireObject, requireOneOf } from "../../input/index.ts";

/**
 * Strength of a tank after the same addition has been made several times.
 *
 * Overflowing: s ← (s + f·a) / (1 + f), the surplus running off mixed. Dumped first: s ← (1 − f)·s + f·a.
 *
 * @param given.strength strength before, at least 0, any unit per volume
 * @param given.addStrength strength of what is added, at least 0; 0 for water
 * @param given.fraction volume added as a fraction of the tank's, above 0, at most 1
 * @param given.times how often, a whole number, at least 0, at most 1e6
 * @param given.order `"overflow"`: added to a full tank, `"dump first"`: as much is removed before
 * @returns the strength after the last addition
 * @throws InputError for a number out of range
 *
 * @example
 * strengthAfterAdditions({ strength: 1, addStrength: 0, fraction: 0.05, times: 2, order: "overflow" }) // => 0.907
 * strengthAfterAdditions({ strength: 1, addStrength: 0, fraction: 0.05, times: 2, order: "dump first" }) // => 0.9025
 *
 * Source: mass balance; additions of 5 % water as in Kodak publication CIS-254, p. 6.
 */
export function strengthAfterAdditions(given: {
  readonly strength: number;
  readonly addStrength: number;
  readonly fraction: number;
  readonly times: number;
  readonly order: "overflow" | "dump first";
}): number {
  const where = "strengthAfterAdditions";
  requireObject(where, "given", given, "an object with strength, addStrength, fraction, …");
  const strength = requireNumber(where, "strength", given.strength, { min: 0, max: 1e12 });
  const added = requireNumber(where, "addStrength", given.addStrength, { min: 0, max: 1e12 });
  const fraction = requireNumber(where, "fraction", given.fraction, { above: 0, max: 1 });
  const times = requireNumber(where, "times", given.times, { min: 0, max: 1e6, whole: true });
  const order = requireOneOf(where, "order", given.order, ["overflow", "dump first"]);
  const kept = order === "overflow" ? 1 / (1 + fraction) : 1 - fraction;
  return added + (strength - added) * kept ** times;
}
