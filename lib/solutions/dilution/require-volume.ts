import { requireNumber } from "../../input/index.ts";

// From a thousandth of a microlitre to a thousand million litres: no bath is outside, and no sum,
// product or quotient of such volumes leaves the range of a double.
const SMALLEST_ML = 1e-6;
const LARGEST_ML = 1e12;

/** Lets a volume above 0 in, if a vessel could hold it. */
export function requireVolumeMl(where: string, argument: string, value: unknown): number {
  requireNumber(where, argument, value, { above: 0, unit: "mL" });
  return requireNumber(where, argument, value, { min: SMALLEST_ML, max: LARGEST_ML, unit: "mL" });
}

/** Lets a volume of 0 or more in. */
export function requireVolumeOrNoneMl(where: string, argument: string, value: unknown): number {
  return requireNumber(where, argument, value, { min: 0, max: LARGEST_ML, unit: "mL" });
}
