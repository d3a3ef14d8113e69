import { leastSquares, normalQuantile } from "../../numerics/index.ts";
import { noiseCovariance } from "./noise-covariance.ts";
import type { RateChange } from "./rate-change-result.ts";
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

/**
 * A finding with the sensitivity's own error in its interval. The bath settles at S·ε/(1 + ε): what is
 * known of the product divides by an S that is known to a relative error only, so the two errors add in
 * squares on ε/(1 + ε).
 */
export function withSensitivityError(change: RateChange, relative: number): RateChange {
  if (relative === 0) return change;
  const k = normalQuantile((1 + change.confidence) / 2) * relative;
  const settled = (error: number) => (error <= -0.99 ? -99 : error / (1 + error));
  const middle = settled(change.error);
  const wider = (end: number) => {
    const off = Math.hypot(settled(end) - middle, k * middle) * (end < change.error ? -1 : 1);
    return Math.min(1, Math.max(-1, (middle + off) / (1 - Math.min(0.99, middle + off))));
  };
  const [low, high] = change.errorInterval;
  const old = change.oldErrorInterval;
  return {
    ...change,
    errorInterval: [low <= -1 ? -1 : wider(low), Math.max(high, wider(high))],
    oldErrorInterval: old === null ? null : [old[0] * (1 + k), old[1] * (1 + k)],
    assumptions: change.assumptions.map((each) =>
      each.startsWith("The sensitivity of the densities")
        ? `The sensitivity is known to ${(100 * relative).toFixed(1)} % (standard error); that is in the interval.`
        : each,
    ),
  };
}
