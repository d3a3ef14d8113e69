import erfcInverse from "@stdlib/math-base-special-erfcinv";
import normalCdfBase from "@stdlib/stats-base-dists-normal-cdf";
import { requireNumber } from "../input/index.ts";
import { requireProbability } from "./require-distribution.ts";

/**
 * Probability that a standard normal variable is at most `z`.
 *
 * @param z any finite number
 * @returns a probability from 0 to 1
 * @throws InputError if `z` is not finite
 *
 * @example
 * normalCdf(-3) // => 0.00134989803163
 *
 * Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (NBS AMS 55, 1964),
 * section 26.2; values checked against R, see docs/checks.md.
 */
export function normalCdf(z: number): number {
  return normalCdfBase(requireNumber("normalCdf", "z", z), 0, 1);
}

/**
 * The `z` below which a standard normal variable lies with probability `p`.
 *
 * @param p greater than 0 and less than 1
 * @returns any finite number
 * @throws InputError if `p` is outside (0, 1)
 *
 * @example
 * normalQuantile(0.975) // => 1.95996398454005
 *
 * Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (NBS AMS 55, 1964),
 * section 26.2; values checked against R, see docs/checks.md.
 */
export function normalQuantile(p: number): number {
  // By the complement: 2p − 1 would lose the digits of a small p.
  return 0 - Math.SQRT2 * erfcInverse(2 * requireProbability("normalQuantile", p));
}
