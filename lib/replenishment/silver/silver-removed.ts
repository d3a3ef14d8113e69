import { requireNumber, requireObject } from "../../input/index.ts";

/**
 * Silver that material gives to the fixer.
 *
 * m = coated weight · area · fraction removed
 *
 * The fraction is near 1 for colour material, whose bleach turns all silver into what fixer takes out;
 * for black-and-white it is what development left, 1 minus the developed share.
 *
 * @param given.coatedGPerM2 silver coated, g/m², at least 0 (ranges in `coatedSilver`)
 * @param given.areaM2 area, m², at least 0
 * @param given.fractionRemoved 0 to 1
 * @returns g
 * @throws InputError for a number out of range
 *
 * @example
 * silverRemoved({ coatedGPerM2: 5, areaM2: 20, fractionRemoved: 1 }) // => 100
 *
 * Source: mass balance.
 */
export function silverRemoved(given: {
  readonly coatedGPerM2: number;
  readonly areaM2: number;
  readonly fractionRemoved: number;
}): number {
  const where = "silverRemoved";
  requireObject(where, "given", given, "an object with coatedGPerM2, areaM2 and fractionRemoved");
  const coated = requireNumber(where, "coatedGPerM2", given.coatedGPerM2, {
    min: 0,
    max: 100,
    unit: "g/m²",
  });
  const area = requireNumber(where, "areaM2", given.areaM2, { min: 0, max: 1e9, unit: "m²" });
  return (
    coated *
    area *
    requireNumber(where, "fractionRemoved", given.fractionRemoved, { min: 0, max: 1 })
  );
}
