import { requireNumber } from "../input/index.ts";

/**
 * Numerical tolerance that goes with an uncertainty quoted to a number of significant digits.
 *
 * u = c · 10^l with c a whole number of n digits; δ = ½ · 10^l.
 *
 * @param standardUncertainty above 0
 * @param significantDigits of the uncertainty that mean something, 1 or 2 as a rule
 * @returns δ, in the unit of the uncertainty
 * @throws InputError if the uncertainty is not above 0 or the digits not a whole number from 1 to 15
 *
 * @example
 * numericalTolerance(0.00035, 2) // => 0.000005
 *
 * Source: JCGM 101:2008, 7.9.2.
 */
export function numericalTolerance(standardUncertainty: number, significantDigits: number): number {
  const where = "numericalTolerance";
  const u = requireNumber(where, "standardUncertainty", standardUncertainty, { above: 0 });
  const bounds = { min: 1, max: 15, whole: true };
  const digits = requireNumber(where, "significantDigits", significantDigits, bounds);
  // toExponential rounds as the number would be quoted: 0.0996 to one digit is 0.1, not 0.09.
  const exponent = Number(u.toExponential(digits - 1).split("e")[1]);
  return 0.5 * 10 ** (exponent - (digits - 1));
}
