import type { RateProfile } from "./rate-estimator.ts";

/** How much worse than the best a fit may be, in residual variances, to lie within an interval. */
export interface LikelihoodCuts {
  readonly size: number;
  readonly moment: number;
}

/** Estimates and profile-likelihood intervals of a step in delivered rate. */
export interface StepEstimate {
  readonly error: number;
  readonly errorInterval: readonly [number, number];
  readonly changeAt: number;
  readonly changeAtInterval: readonly [number, number];
  readonly baseline: number;
  /** Standard deviation of z about the fit. */
  readonly residualSd: number;
  /** How much better the best moment fits than no change, in residual variances. */
  readonly largestRatio: number;
}

/** Parameters that the fit spends: baseline, size, moment. */
export const STEP_PARAMETERS = 3;

/**
 * Best fit over the moments of change, with likelihood-ratio intervals. For each moment the residual
 * sum is a parabola in the size, so the interval of the size is the union of the parabolas' cuts, and
 * that of the moment is where the lowest point of the parabola lies below the cut.
 */
export function stepEstimate(profile: RateProfile, cuts: LikelihoodCuts): StepEstimate {
  const { moments, strips } = profile;
  const best = moments.reduce((a, b) => (b.rest < a.rest ? b : a));
  const variance = best.rest / (strips - STEP_PARAMETERS);
  const sizeCut = best.rest + variance * cuts.size;
  const momentCut = best.rest + variance * cuts.moment;
  let [low, high] = [best.error, best.error];
  let [early, late] = [best.changeAt, best.changeAt];
  for (const moment of moments) {
    if (moment.rest <= momentCut) {
      early = Math.min(early, moment.changeAt);
      late = Math.max(late, moment.changeAt);
    }
    if (moment.rest <= sizeCut && moment.spread > 0) {
      const reach = Math.sqrt((sizeCut - moment.rest) / moment.spread);
      low = Math.min(low, moment.error - reach);
      high = Math.max(high, moment.error + reach);
    }
  }
  return {
    error: best.error,
    errorInterval: [low, high],
    changeAt: best.changeAt,
    changeAtInterval: [early, late],
    baseline: best.baseline,
    residualSd: Math.sqrt(variance),
    largestRatio: Math.max(0, profile.restWithoutChange - best.rest) / variance,
  };
}
