import { convertWithin, type UnitTable } from "./exact-ratio.ts";

// In millimetres; 1 in = 25.4 mm exactly.
const LENGTHS = {
  mm: [1n, 1n],
  cm: [10n, 1n],
  m: [1000n, 1n],
  in: [254n, 10n],
  ft: [3048n, 10n],
} as const satisfies UnitTable;

/** Units of length. */
export type LengthUnit = keyof typeof LENGTHS;

/**
 * A length in another unit.
 *
 * value · size(from) / size(to), with 1 in = 25.4 mm and 1 ft = 304.8 mm exactly.
 *
 * @param value any finite number
 * @param from its unit: `mm`, `cm`, `m`, `in`, `ft`
 * @param to the unit wanted
 * @returns the length in `to`
 * @throws InputError for a number that is not finite or an unknown unit
 *
 * @example
 * convertLength(100, "ft", "m") // => 30.48
 *
 * Source: NIST Special Publication 811 (2008), Appendix B.8.
 */
export function convertLength(value: number, from: LengthUnit, to: LengthUnit): number {
  return convertWithin("convertLength", LENGTHS, value, from, to);
}
