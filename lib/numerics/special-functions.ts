import erfBase from "@stdlib/math-base-special-erf";
import gammaLnBase from "@stdlib/math-base-special-gammaln";
import { requireNumber } from "../input/index.ts";

/**
 * Error function, erf(x) = 2/√π · ∫₀ˣ exp(−t²) dt.
 *
 * @param x any finite number
 * @returns a number from −1 to 1
 * @throws InputError if `x` is not finite
 *
 * @example
 * erf(1) // => 0.842700792949715
 *
 * Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (NBS AMS 55, 1964),
 * section 7.1; checked against the normal law, of which it is the other form.
 */
export function erf(x: number): number {
  return erfBase(requireNumber("erf", "x", x));
}

/**
 * Natural logarithm of the gamma function.
 *
 * @param x greater than 0, at most 1e305
 * @returns any finite number
 * @throws InputError if `x` is not a positive number
 *
 * @example
 * gammaLn(5) // => 3.178053830347946
 *
 * Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (NBS AMS 55, 1964),
 * section 6.1; checked against factorials, Γ(1/2) and the reflection formula.
 */
export function gammaLn(x: number): number {
  return gammaLnBase(requireNumber("gammaLn", "x", x, { above: 0, max: 1e305 }));
}
