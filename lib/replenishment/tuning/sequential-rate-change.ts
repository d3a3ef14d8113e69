import { requireNumber } from "../../input/index.ts";
import { fQuantile } from "../../numerics/index.ts";
import { rateBank } from "./rate-bank.ts";
import { MOMENTS_PER_TURNOVER } from "./rate-change.ts";
import { COARSE_ERRORS } from "./rate-fit.ts";
import { STEP_PARAMETERS, stepEstimate } from "./rate-intervals.ts";
import { momentGrid, type RateSurface } from "./rate-surface.ts";
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
 * The same step fitted again after every strip by a bank of recursive regressions in state-space form:
 * each pair of error and moment keeps the share of its answer still to come, x ← x·e^(−(1 + ε)·Δn), and
 * its running sums, so that a strip costs as much on the last day as on the first. The last estimate is
 * the one a fit over all strips gives on the same grid (24 moments a turnover, errors 2 % apart;
 * textbook likelihood intervals).
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
  const last = turnovers.at(-1) ?? 0;
  const moments = momentGrid(first, last, 1 / MOMENTS_PER_TURNOVER);
  const bank = rateBank({ errors: COARSE_ERRORS, moments });
  const estimates: RateEstimate[] = [];
  turnovers.forEach((n, i) => {
    bank.add(n, z[i] ?? Number.NaN);
    if (i + 1 < FEWEST_STRIPS) return;
    const usual = fQuantile(confidence, 1, i + 1 - STEP_PARAMETERS);
    const fit = stepEstimate(untilNow(bank.surface(), n), { size: usual, moment: usual });
    estimates.push({
      strip: i,
      turnovers: n,
      error: fit.error,
      errorInterval: fit.errorInterval,
      changeAtTurnovers: fit.changeAt,
      ratio: fit.ratio,
    });
  });
  return estimates;
}

/** A change after the newest strip is not one that the strips could show. */
function untilNow(surface: RateSurface, now: number): RateSurface {
  const { errors, moments } = surface.grid;
  const possible = Math.max(1, moments.filter((at) => at < now).length);
  if (possible === moments.length) return surface;
  const rest = new Float64Array(errors.length * possible);
  errors.forEach((_, e) => {
    const from = e * moments.length;
    rest.set(surface.rest.subarray(from, from + possible), e * possible);
  });
  return { ...surface, grid: { errors, moments: moments.slice(0, possible) }, rest };
}
