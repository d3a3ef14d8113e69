import tCdfBase from "@stdlib/stats-base-dists-t-cdf";
import tQuantileBase from "@stdlib/stats-base-dists-t-quantile";
import { requireNumber } from "../input/index.ts";
import { requireDegreesOfFreedom, requireProbability } from "./require-distribution.ts";

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
  return tCdfBase(t, requireDegreesOfFreedom("studentTCdf", degreesOfFreedom));
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
    requireProbability("studentTQuantile", p),
    requireDegreesOfFreedom("studentTQuantile", degreesOfFreedom),
  );
}
