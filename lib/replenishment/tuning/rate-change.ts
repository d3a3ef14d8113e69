import { requireNumber } from "../../input/index.ts";
import { fQuantile } from "../../numerics/index.ts";
import { type ChangeTestOptions, changeTestOptions } from "./change-test-options.ts";
import type { RateChange } from "./rate-change-result.ts";
import { rateFinding } from "./rate-finding.ts";
import { COARSE_ERRORS, closerFit, oldErrorInterval } from "./rate-fit.ts";
import { STEP_PARAMETERS, stepEstimate } from "./rate-intervals.ts";
import { momentGrid, rateSurface } from "./rate-surface.ts";
import { simulatedCuts } from "./simulated-cuts.ts";
import { changeRatio, noiseDraws, simulatedRatios } from "./simulated-ratios.ts";
import { type TuningSeries, weightedSeries } from "./strip-series.ts";

/** Choices of `rateChange`. */
export interface RateChangeOptions extends ChangeTestOptions {
  /** Confidence of the intervals, 0.5 to 0.999; default 0.95. */
  readonly confidence?: number;
  /** Widest interval of the error that still carries advice, upper minus lower; default 0.3. */
  readonly widestInterval?: number;
  /** Relative standard error of the sensitivity, 0 to 0.5; default 0. It widens the interval of the error. */
  readonly sensitivityError?: number;
}

/** Moments of change that are tried, per tank turnover; then a closer look at those left possible. */
export const MOMENTS_PER_TURNOVER = 24;
const FEWEST_STRIPS = 10;

/**
 * Whether, when and by how much the delivered replenishment rate changed, from control strips.
 *
 * A fractional error ε of the rate since turnover τ shows in every channel as
 * D(n) = b + S·ε/(1 + ε)·(1 − e^(−(1 + ε)(n − τ))), the balance's own answer, with turnovers counted as
 * the pump is set. All channels are put together by generalised least squares, then b, ε and τ are
 * fitted together. First a test whether there was a change at all: without one its moment means
 * nothing, and the best of many moments always looks like something, so the test's threshold comes
 * from simulated series with the strips' own turnovers. The intervals are profile likelihood, their
 * cuts the larger of the F quantile and that of series simulated at the estimate.
 *
 * @param series turnovers, deviations, sensitivity and noise; at least 10 strips
 * @param options confidence, false alarms, widest interval, error of the sensitivity, draws and seed
 * @returns the finding with its reason, estimates with intervals, and what they rest on
 * @throws InputError if the series is too short or its parts do not fit together
 *
 * @example
 * const turnovers = Array.from({ length: 40 }, (_, i) => i * 0.1);
 * const wobble = (i: number) => 0.004 * Math.sin(7 * i);
 * const deviations = turnovers.map((n, i) => [(n > 2 ? -0.06 * (1 - Math.exp(2 - n)) : 0) + wobble(i)]);
 * rateChange({ turnovers, deviations, sensitivity: [0.4], noise: [[0.0001]] }).finding // => "rate changed"
 *
 * Source: D. V. Hinkley, Biometrika 56 (1969) 495–504 (two-phase regression); R. B. Davies,
 * Biometrika 74 (1987) 33–43 (a parameter that exists only under the alternative).
 */
export function rateChange(series: TuningSeries, options: RateChangeOptions = {}): RateChange {
  const where = "rateChange";
  const confidence = requireNumber(where, "confidence", options.confidence ?? 0.95, {
    min: 0.5,
    max: 0.999,
  });
  const widest = requireNumber(where, "widestInterval", options.widestInterval ?? 0.3, {
    above: 0,
    max: 2,
  });
  const sensitivityError = requireNumber(where, "sensitivityError", options.sensitivityError ?? 0, {
    min: 0,
    max: 0.5,
  });
  const { falseAlarms, draws, seed, slowShare } = changeTestOptions(where, options);
  const weighted = weightedSeries(where, series);
  const strips = requireNumber(where, "number of strips", weighted.z.length, {
    min: FEWEST_STRIPS,
  });
  const first = weighted.turnovers[0] ?? 0;
  const last = weighted.turnovers.at(-1) ?? 0;
  requireNumber(where, "turnovers between first and last strip", last - first, {
    min: 0.25,
    hint: "the bath has hardly been replenished yet",
  });
  const moments = momentGrid(first, last, 1 / MOMENTS_PER_TURNOVER);
  const coarse = rateSurface({ errors: COARSE_ERRORS, moments }, weighted.turnovers, weighted.z);
  const usual = fQuantile(confidence, 1, strips - STEP_PARAMETERS);
  const rough = stepEstimate(coarse, { size: usual, moment: usual });
  const noises = noiseDraws(weighted.turnovers, { draws, seed, slowShare });
  const cuts = simulatedCuts(weighted, moments, rough, { usual, confidence, noises });
  const noStep = { size: 0, moment: 0, pace: 1 };
  const unchanged = simulatedRatios(weighted.turnovers, moments, noStep, noises);
  return rateFinding({
    estimate: closerFit(weighted, coarse, cuts),
    pValue: shareAtLeast(unchanged.change, changeRatio(weighted.turnovers, moments, weighted.z)),
    falseAlarms,
    widestInterval: widest,
    confidence,
    weighted,
    oldErrorInterval: oldErrorInterval(weighted, cuts),
    sensitivityError,
  });
}

/** Share of draws at least as large, counting the observed one among them. */
function shareAtLeast(sorted: Float64Array, observed: number): number {
  const larger = sorted.filter((each) => each >= observed).length;
  return (1 + larger) / (1 + sorted.length);
}
