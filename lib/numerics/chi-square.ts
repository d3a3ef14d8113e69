import chiSquareCdfBase from "@stdlib/stats-base-dists-chisquare-cdf";
import chiSquareQuantileBase from "@stdlib/stats-base-dists-chisquare-quantile";
import { requireNumber } from "../input/index.ts";
import { requireDegreesOfFreedom, requireProbability } from "./require-distribution.ts";

// Above this the incomplete gamma function loses digits.
const MOST_DEGREES_OF_FREEDOM = 1e10;

/**
 * Probability that a chi-square variable is at most `x`.
 *
 * @param x at least 0
 * @param degreesOfFreedom greater than 0, at most 1e10
 * @returns a probability from 0 to 1
 * @throws InputError if an argument is out of range
 *
 * @example
 * chiSquareCdf(3.841458820694124, 1) // => 0.95
 *
 * Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (NBS AMS 55, 1964),
 * section 26.4; checked as the inverse of the quantile, which R confirms.
 */
export function chiSquareCdf(x: number, degreesOfFreedom: number): number {
  requireNumber("chiSquareCdf", "x", x, { min: 0 });
  return chiSquareCdfBase(
    x,
    requireDegreesOfFreedom("chiSquareCdf", degreesOfFreedom, MOST_DEGREES_OF_FREEDOM),
  );
}

/**
 * The value below which a chi-square variable lies with probability `p`.
 *
 * @param p greater than 0 and less than 1
 * @param degreesOfFreedom greater than 0, at most 1e10
 * @returns a number greater than 0
 * @throws InputError if an argument is out of range
 *
 * @example
 * chiSquareQuantile(0.975, 24) // => 39.364077026604
 *
 * Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (NBS AMS 55, 1964),
 * section 26.4; values checked against R, see docs/checks.md.
 */
export function chiSquareQuantile(p: number, degreesOfFreedom: number): number {
  return chiSquareQuantileBase(
    requireProbability("chiSquareQuantile", p),
    requireDegreesOfFreedom("chiSquareQuantile", degreesOfFreedom, MOST_DEGREES_OF_FREEDOM),
  );
}
