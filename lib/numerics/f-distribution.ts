import fCdfBase from "@stdlib/stats-base-dists-f-cdf";
import fQuantileBase from "@stdlib/stats-base-dists-f-quantile";
import { requireNumber } from "../input/index.ts";
import { requireDegreesOfFreedom, requireProbability } from "./require-distribution.ts";

/**
 * Probability that an F variable is at most `x`.
 *
 * @param x at least 0
 * @param numeratorDf degrees of freedom above the line, greater than 0
 * @param denominatorDf degrees of freedom below the line, greater than 0
 * @returns a probability from 0 to 1
 * @throws InputError if an argument is out of range
 *
 * @example
 * fCdf(3.1, 4, 18) // => 0.95821647707
 */
export function fCdf(x: number, numeratorDf: number, denominatorDf: number): number {
  requireNumber("fCdf", "x", x, { min: 0 });
  return fCdfBase(
    x,
    requireDegreesOfFreedom("fCdf", numeratorDf),
    requireDegreesOfFreedom("fCdf", denominatorDf),
  );
}

/**
 * The value below which an F variable lies with probability `p`.
 *
 * @param p greater than 0 and less than 1
 * @param numeratorDf degrees of freedom above the line, greater than 0
 * @param denominatorDf degrees of freedom below the line, greater than 0
 * @throws InputError if an argument is out of range
 *
 * @example
 * fQuantile(0.95, 1, 1) // => 161.4476387976
 */
export function fQuantile(p: number, numeratorDf: number, denominatorDf: number): number {
  return fQuantileBase(
    requireProbability("fQuantile", p),
    requireDegreesOfFreedom("fQuantile", numeratorDf),
    requireDegreesOfFreedom("fQuantile", denominatorDf),
  );
}
