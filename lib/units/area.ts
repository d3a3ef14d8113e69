import { convertWithin, type UnitTable } from "./exact-ratio.ts";

// In square millimetres.
const AREAS = {
  mm2: [1n, 1n],
  cm2: [100n, 1n],
  m2: [1_000_000n, 1n],
  in2: [64_516n, 100n],
  ft2: [9_290_304n, 100n],
} as const satisfies UnitTable;

/** Units of area. */
export type AreaUnit = keyof typeof AREAS;

/**
 * An area in another unit.
 *
 * value · size(from) / size(to), with 1 in² = 645.16 mm² and 1 ft² = 0.09290304 m² exactly.
 *
 * @param value any finite number
 * @param from its unit: `mm2`, `cm2`, `m2`, `in2`, `ft2`
 * @param to the unit wanted
 * @returns the area in `to`
 * @throws InputError for a number that is not finite or an unknown unit
 *
 * @example
 * convertArea(80, "in2", "m2") // => 0.0516128
 *
 * Source: NIST Special Publication 811 (2008), Appendix B.8.
 */
export function convertArea(value: number, from: AreaUnit, to: AreaUnit): number {
  return convertWithin("convertArea", AREAS, value, from, to);
}
