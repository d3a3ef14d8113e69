import { requireNumber, requireObject } from "../../input/index.ts";
import { findRoot } from "../../numerics/index.ts";

/**
 * What is left in the last of several counter-current rinse tanks, as a share of what is carried in.
 *
 * c_n/c_0 = (R − 1)/(R^(n+1) − 1) = 1/(1 + R + R² + … + R^n), R = water over carry-over
 *
 * The approximation R^(1/n) + 1/n met in print for the water needed has the wrong sign of its second
 * term; this is the exact balance of the tanks.
 *
 * @param wash.ratio R: flow of water over flow of carried liquid, at least 0
 * @param wash.stages number of tanks, a whole number from 1 to 50
 * @returns c_n/c_0, from 0 to 1
 * @throws InputError for a number out of range
 *
 * @example
 * counterCurrentResidual({ ratio: 10, stages: 2 }) // => 0.009009
 *
 * Source: mass balance of well-stirred tanks in series; N. B. the carried liquid stays constant.
 */
export function counterCurrentResidual(wash: {
  readonly ratio: number;
  readonly stages: number;
}): number {
  const where = "counterCurrentResidual";
  requireObject(where, "wash", wash, "an object with ratio and stages");
  const ratio = requireNumber(where, "ratio", wash.ratio, { min: 0, max: 1e12 });
  const stages = requireNumber(where, "stages", wash.stages, { min: 1, max: 50, whole: true });
  return 1 / sumOfPowers(ratio, stages);
}

/**
 * Water over carry-over that a counter-current rinse needs for a wanted dilution.
 *
 * the R with 1 + R + R² + … + R^n = c_0/c_n
 *
 * @param wash.dilution c_0/c_n: how many times weaker the last tank must be, from 1 to 1e12
 * @param wash.stages number of tanks, a whole number from 1 to 50
 * @returns R, at least 0
 * @throws InputError for a number out of range
 *
 * @example
 * counterCurrentRatio({ dilution: 1000, stages: 2 }) // => 31.1109
 *
 * Source: as `counterCurrentResidual`.
 */
export function counterCurrentRatio(wash: {
  readonly dilution: number;
  readonly stages: number;
}): number {
  const where = "counterCurrentRatio";
  requireObject(where, "wash", wash, "an object with dilution and stages");
  const dilution = requireNumber(where, "dilution", wash.dilution, { min: 1, max: 1e12 });
  const stages = requireNumber(where, "stages", wash.stages, { min: 1, max: 50, whole: true });
  if (stages === 1 || dilution === 1) return dilution - 1;
  // In logarithms the sum is nearly straight, and no power overflows.
  const gap = (ratio: number) => Math.log(sumOfPowers(ratio, stages)) - Math.log(dilution);
  return findRoot(gap, { lower: 0, upper: dilution ** (1 / stages), tolerance: 1e-13 });
}

function sumOfPowers(ratio: number, stages: number): number {
  let sum = 1;
  for (let k = 0; k < stages; k++) sum = 1 + ratio * sum;
  return sum;
}
