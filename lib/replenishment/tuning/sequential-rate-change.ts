import { requireNumber } from "../../input/index.ts";
import { fQuantile } from "../../numerics/index.ts";
import { momentGrid, rateEstimator } from "./rate-estimator.ts";
import { STEP_PARAMETERS, stepEstimate } from "./rate-intervals.ts";
import { type TuningSeries, weightedSeries } from "./strip-series.ts";

/** The estimate as it stood after one strip. */
export interface RateEstimate {
  /** Index of the strip in the series. */
  readonly strip: number;
  readonly turnovers: number;
  readonly error: number;
  readonly errorInterval: readonly [number, number];
  readonly changeAtTurnovers: number;
  /** How much better a step fits than no change, in residual variances: large means plain. */
  readonly ratio: number;
}

const FEWEST_STRIPS = 10;

/**
 * The same step fitted again after every strip, each time from running sums, so that a strip costs as
 * much on the last day as on the first. The last estimate is the one a fit over all strips gives on
 * the same grid of moments (24 a turnover, not refined; textbook likelihood intervals).
 *
 * @param series turnovers, deviations, sensitivity and noise; at least 10 strips
 * @param options `confidence` of the intervals, 0.5 to 0.999, default 0.95
 * @returns one estimate a strip from the tenth on
 * @throws InputError if the series is too short or its parts do not fit together
 *
 * @example
 * const turnovers = Array.from({ length: 12 }, (_, i) => i * 0.1);
 * const deviations = turnovers.map((_, i) => [0.001 * Math.sin(5 * i)]);
 * sequentialRateChange({ turnovers, deviations, sensitivity: [0.4], noise: [[0.0001]] }).length // => 3
 *
 * Source: P. C. Young, Recursive Estimation and Time-Series Analysis, 2nd ed. 2011, ch. 3 (recursive
 * least squares).
 */
export function sequentialRateChange(
  series: TuningSeries,
  options: { readonly confidence?: number } = {},
): readonly RateEstimate[] {
  const where = "sequentialRateChange";
  const confidence = requireNumber(where, "confidence", options.confidence ?? 0.95, {
    min: 0.5,
    max: 0.999,
  });
  const { turnovers, z } = weightedSeries(where, series);
  requireNumber(where, "number of strips", z.length, { min: FEWEST_STRIPS });
  const first = turnovers[0] ?? 0;
  const spacing = 1 / 24;
  const estimator = rateEstimator(momentGrid(first, turnovers.at(-1) ?? 0, spacing));
  const estimates: RateEstimate[] = [];
  turnovers.forEach((n, i) => {
    estimator.add(n, z[i] ?? Number.NaN);
    if (i + 1 < FEWEST_STRIPS) return;
    const usual = fQuantile(confidence, 1, i + 1 - STEP_PARAMETERS);
    const profile = estimator.profile();
    // A change after the newest strip is not one that the strips could show.
    const moments = profile.moments.filter((each) => each.changeAt < n || each.changeAt === first);
    const fit = stepEstimate({ ...profile, moments }, { size: usual, moment: usual });
    estimates.push({
      strip: i,
      turnovers: n,
      error: fit.error,
      errorInterval: fit.errorInterval,
      changeAtTurnovers: fit.changeAt,
      ratio: fit.largestRatio,
    });
  });
  return estimates;
}
