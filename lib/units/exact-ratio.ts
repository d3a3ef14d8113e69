import { requireNumber, requireOneOf } from "../input/index.ts";

/** Size of a unit in its quantity's base unit, as an exact fraction of whole numbers. */
export type ExactSize = readonly [numerator: bigint, denominator: bigint];

/** The units of one quantity by name, each an exact fraction of the same base unit. */
export type UnitTable = Readonly<Record<string, ExactSize>>;

/**
 * Converts within one table. The two exact sizes are divided as fractions and brought to lowest
 * terms before a double is touched, so 1 usGallon is exactly 4 usQuart, not 3.9999999999999996.
 */
export function convertWithin<T extends UnitTable>(
  where: string,
  units: T,
  value: number,
  from: string,
  to: string,
): number {
  requireNumber(where, "value", value);
  const names = Object.keys(units);
  const [fromTop, fromBottom] = units[requireOneOf(where, "from", from, names)] ?? [1n, 1n];
  const [toTop, toBottom] = units[requireOneOf(where, "to", to, names)] ?? [1n, 1n];
  const top = fromTop * toBottom;
  const bottom = fromBottom * toTop;
  const shared = greatestCommonDivisor(top, bottom);
  const result = (value * Number(top / shared)) / Number(bottom / shared);
  return requireNumber(where, "value", result, { hint: "the result is too large for a number" });
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  return b === 0n ? a : greatestCommonDivisor(b, a % b);
}
