import tCdfBase from "@stdlib/stats-base-dists-t-cdf";
import tQuantileBase from "@stdlib/stats-base-dists-t-quantile";
import { requireNumber } from "../input/index.ts";
import { normalQuantile } from "./normal.ts";
import {
  requireDegreesOfFreedom,
  requireFiniteQuantile,
  requireProbability,
} from "./require-distribution.ts";

// From here on t differs from the normal quantile z by (z³ + z)/4ν, less than a double's rounding,
// and the search of the library used goes astray.
const AS_GOOD_AS_NORMAL = 1e16;

/**
 * Probability that a Student t variable is at most `t`.
 *
 * @param t any finite number
 * @param degreesOfFreedom greater than 0
 * @returns a probability from 0 to 1
 * @throws InputError if an argument is out of range
 *
 * @example
 * studentTCdf(2.5, 7) // => 0.979503890707
 *
 * Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (NBS AMS 55, 1964),
 * section 26.7; values checked against R, see docs/checks.md.
 */
export function studentTCdf(t: number, degreesOfFreedom: number): number {
  requireNumber("studentTCdf", "t", t);
  return tCdfBase(t, requireDegreesOfFreedom("studentTCdf", degreesOfFreedom));
}

/**
 * The `t` below which a Student t variable lies with probability `p`.
 *
 * @param p greater than 0 and less than 1
 * @param degreesOfFreedom greater than 0
 * @returns any finite number
 * @throws InputError if an argument is out of range, or the quantile too large for a number
 *
 * @example
 * studentTQuantile(0.975, 5) // => 2.5705818356
 *
 * Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (NBS AMS 55, 1964),
 * section 26.7; values checked against R, see docs/checks.md.
 */
export function studentTQuantile(p: number, degreesOfFreedom: number): number {
  const where = "studentTQuantile";
  requireProbability(where, p);
  const nu = requireDegreesOfFreedom(where, degreesOfFreedom);
  if (nu >= AS_GOOD_AS_NORMAL) return normalQuantile(p);
  return requireFiniteQuantile(where, p, tQuantileBase(p, nu));
}
