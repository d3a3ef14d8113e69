import erfBase from "@stdlib/math-base-special-erf";
import erfcInverse from "@stdlib/math-base-special-erfcinv";
import gammaLnBase from "@stdlib/math-base-special-gammaln";
import chiSquareCdfBase from "@stdlib/stats-base-dists-chisquare-cdf";
import chiSquareQuantileBase from "@stdlib/stats-base-dists-chisquare-quantile";
import fCdfBase from "@stdlib/stats-base-dists-f-cdf";
import fQuantileBase from "@stdlib/stats-base-dists-f-quantile";
import normalCdfBase from "@stdlib/stats-base-dists-normal-cdf";
import tCdfBase from "@stdlib/stats-base-dists-t-cdf";
import tQuantileBase from "@stdlib/stats-base-dists-t-quantile";
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
 */
export function erf(x: number): number {
  return erfBase(requireNumber("erf", "x", x));
}

/**
 * Natural logarithm of the gamma function.
 *
 * @param x greater than 0
 * @throws InputError if `x` is not a positive number
 *
 * @example
 * gammaLn(5) // => 3.178053830347946
 */
export function gammaLn(x: number): number {
  return gammaLnBase(requireNumber("gammaLn", "x", x, { above: 0 }));
}

/**
 * Probability that a standard normal variable is at most `z`.
 *
 * @param z any finite number
 * @returns a probability from 0 to 1
 * @throws InputError if `z` is not finite
 *
 * @example
 * normalCdf(-3) // => 0.00134989803163
 */
export function normalCdf(z: number): number {
  return normalCdfBase(requireNumber("normalCdf", "z", z), 0, 1);
}

/**
 * The `z` below which a standard normal variable lies with probability `p`.
 *
 * @param p greater than 0 and less than 1
 * @throws InputError if `p` is outside (0, 1)
 *
 * @example
 * normalQuantile(0.975) // => 1.95996398454005
 */
export function normalQuantile(p: number): number {
  // By the complement: 2p − 1 would lose the digits of a small p.
  return -Math.SQRT2 * erfcInverse(2 * inside("normalQuantile", p));
}

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
 */
export function studentTCdf(t: number, degreesOfFreedom: number): number {
  requireNumber("studentTCdf", "t", t);
  return tCdfBase(t, positive("studentTCdf", degreesOfFreedom));
}

/**
 * The `t` below which a Student t variable lies with probability `p`.
 *
 * @param p greater than 0 and less than 1
 * @param degreesOfFreedom greater than 0
 * @throws InputError if an argument is out of range
 *
 * @example
 * studentTQuantile(0.975, 5) // => 2.5705818356
 */
export function studentTQuantile(p: number, degreesOfFreedom: number): number {
  return tQuantileBase(
    inside("studentTQuantile", p),
    positive("studentTQuantile", degreesOfFreedom),
  );
}

/**
 * Probability that a chi-square variable is at most `x`.
 *
 * @param x at least 0
 * @param degreesOfFreedom greater than 0
 * @returns a probability from 0 to 1
 * @throws InputError if an argument is out of range
 *
 * @example
 * chiSquareCdf(3.841458820694124, 1) // => 0.95
 */
export function chiSquareCdf(x: number, degreesOfFreedom: number): number {
  requireNumber("chiSquareCdf", "x", x, { min: 0 });
  return chiSquareCdfBase(x, positive("chiSquareCdf", degreesOfFreedom));
}

/**
 * The value below which a chi-square variable lies with probability `p`.
 *
 * @param p greater than 0 and less than 1
 * @param degreesOfFreedom greater than 0
 * @throws InputError if an argument is out of range
 *
 * @example
 * chiSquareQuantile(0.975, 24) // => 39.364077026604
 */
export function chiSquareQuantile(p: number, degreesOfFreedom: number): number {
  return chiSquareQuantileBase(
    inside("chiSquareQuantile", p),
    positive("chiSquareQuantile", degreesOfFreedom),
  );
}

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
  return fCdfBase(x, positive("fCdf", numeratorDf), positive("fCdf", denominatorDf));
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
    inside("fQuantile", p),
    positive("fQuantile", numeratorDf),
    positive("fQuantile", denominatorDf),
  );
}

function inside(where: string, p: number): number {
  return requireNumber(where, "p", p, { above: 0, below: 1 });
}

function positive(where: string, degreesOfFreedom: number): number {
  return requireNumber(where, "degreesOfFreedom", degreesOfFreedom, { above: 0 });
}
