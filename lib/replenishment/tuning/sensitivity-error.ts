import { leastSquares } from "../../numerics/index.ts";
import { noiseCovariance } from "./noise-covariance.ts";
import { weightedSeries } from "./strip-series.ts";

/**
 * Relative standard error of a sensitivity learned from known changes, of all channels together: put
 * together as `rateChange` does, they should follow the tank's answer with slope 1; the slope's standard
 * error is the sensitivity's.
 */
export function sensitivityError(learned: {
  readonly turnovers: readonly number[];
  readonly deviations: readonly (readonly number[])[];
  readonly sensitivity: readonly number[];
  readonly answer: readonly number[];
}): number {
  const noise = noiseCovariance(learned.deviations);
  const { z } = weightedSeries("sensitivityError", { ...learned, noise });
  const { standardErrors } = leastSquares({ rows: learned.answer.map((x) => [1, x]), y: z });
  return standardErrors[1] ?? 0;
}

/** Limits of what is sought: nothing delivered, and double. */
const clamped = (error: number) => Math.min(1, Math.max(-1, error));

/** Where the bath settles for an error, in units of the sensitivity, and back. */
const settled = (error: number) => (error <= -0.99 ? -99 : error / (1 + error));
const errorSettledAt = (x: number) => clamped(x / (1 - Math.min(0.99, x)));

/**
 * An interval of the error with the sensitivity's own error in it. The bath settles at S·ε/(1 + ε): what
 * is known of the product divides by an S that is known to a relative error only, so the two errors add
 * in squares on ε/(1 + ε).
 *
 * @param k normal quantile × relative standard error of the sensitivity
 */
export function withSensitivityError(
  error: number,
  [low, high]: readonly [number, number],
  k: number,
): readonly [number, number] {
  if (k === 0) return [low, high];
  const middle = settled(error);
  const off = (end: number) => Math.hypot(settled(end) - middle, k * middle);
  const least = low <= -1 ? -1 : errorSettledAt(middle - off(low));
  return [least, Math.max(high, errorSettledAt(middle + off(high)))];
}

/** The same where nothing is estimated: what is ruled out, each end as far out as S allows. */
export function ruledOutWithSensitivityError(
  [low, high]: readonly [number, number],
  k: number,
): readonly [number, number] {
  const reach = Math.min(k, 0.99);
  const outward = (end: number, sign: number) =>
    errorSettledAt(settled(end) * (1 + (sign * settled(end) > 0 ? reach : -reach)));
  return k === 0 ? [low, high] : [low <= -1 ? -1 : outward(low, -1), outward(high, 1)];
}
