import fCdfBase from "@stdlib/stats-base-dists-f-cdf";
import fQuantileBase from "@stdlib/stats-base-dists-f-quantile";
import { requireNumber } from "../input/index.ts";
import {
  requireDegreesOfFreedom,
  requireFiniteQuantile,
  requireProbability,
} from "./require-distribution.ts";

// Above this the incomplete beta function loses digits.
const MOST_DEGREES_OF_FREEDOM = 1e10;

/**
 * Probability that an F variable is at most `x`.
 *
 * @param x at least 0
 * @param numeratorDf degrees of freedom above the line, greater than 0, at most 1e10
 * @param denominatorDf degrees of freedom below the line, greater than 0, at most 1e10
 * @returns a probability from 0 to 1
 * @throws InputError if an argument is out of range
 *
 * @example
 * fCdf(3.1, 4, 18) // => 0.95821647707
 *
 * Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (NBS AMS 55, 1964),
 * section 26.6; values checked against R, see docs/checks.md.
 */
export function fCdf(x: number, numeratorDf: number, denominatorDf: number): number {
  requireNumber("fCdf", "x", x, { min: 0 });
  return fCdfBase(
    x,
    requireDegreesOfFreedom("fCdf", numeratorDf, MOST_DEGREES_OF_FREEDOM),
    requireDegreesOfFreedom("fCdf", denominatorDf, MOST_DEGREES_OF_FREEDOM),
  );
}

/**
 * The value below which an F variable lies with probability `p`.
 *
 * @param p greater than 0 and less than 1
 * @param numeratorDf degrees of freedom above the line, greater than 0, at most 1e10
 * @param denominatorDf degrees of freedom below the line, greater than 0, at most 1e10
 * @returns a number greater than 0
 * @throws InputError if an argument is out of range, or the quantile too large for a number
 *
 * @example
 * fQuantile(0.95, 1, 1) // => 161.4476387976
 *
 * Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (NBS AMS 55, 1964),
 * section 26.6; checked as the inverse of the probability, which R confirms.
 */
export function fQuantile(p: number, numeratorDf: number, denominatorDf: number): number {
  const where = "fQuantile";
  const quantile = fQuantileBase(
    requireProbability(where, p),
    requireDegreesOfFreedom(where, numeratorDf, MOST_DEGREES_OF_FREEDOM),
    requireDegreesOfFreedom(where, denominatorDf, MOST_DEGREES_OF_FREEDOM),
  );
  return requireFiniteQuantile(where, p, quantile);
}
