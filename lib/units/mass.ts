import { convertWithin, type UnitTable } from "./exact-ratio.ts";

// In grams. 1 lb = 0.453 592 37 kg exactly = 16 oz = 7000 grains.
const POUND = 45_359_237n;

const MASSES = {
  mg: [1n, 1000n],
  g: [1n, 1n],
  kg: [1000n, 1n],
  lb: [POUND, 100_000n],
  oz: [POUND, 1_600_000n],
  grain: [POUND, 700_000_000n],
} as const satisfies UnitTable;

/** Units of mass; `oz` and `lb` are avoirdupois, as in photographic formulas. */
export type MassUnit = keyof typeof MASSES;

/**
 * A mass in another unit.
 *
 * value · size(from) / size(to), with sizes exact: 1 lb = 453.59237 g = 16 oz = 7000 grains.
 *
 * @param value any finite number
 * @param from its unit: `mg`, `g`, `kg`, `lb`, `oz` (avoirdupois), `grain`
 * @param to the unit wanted
 * @returns the mass in `to`
 * @throws InputError for a number that is not finite or an unknown unit
 *
 * @example
 * convertMass(1, "oz", "grain") // => 437.5
 * convertMass(1, "oz", "g") // => 28.349523125
 *
 * Source: NIST Special Publication 811 (2008), Appendix B.8.
 */
export function convertMass(value: number, from: MassUnit, to: MassUnit): number {
  return convertWithin("convertMass", MASSES, value, from, to);
}
