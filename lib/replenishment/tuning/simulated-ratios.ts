import { seededRandom } from "../../numerics/index.ts";
import { STEP_PARAMETERS } from "./rate-intervals.ts";
import { type StepSums, stepSums } from "./rate-surface.ts";
import { fillNoise } from "./slow-noise.ts";

/** A step by which series are simulated, or none (size 0). */
export interface SimulatedStep {
  /** Size of the full answer, in standard deviations of z. */
  readonly size: number;
  /** Index of its moment. */
  readonly moment: number;
  /** How fast the answer comes, 1 + ε. */
  readonly pace: number;
}

/**
 * Likelihood ratios of many simulated series with the strips' own turnovers, a given step and
 * independent normal noise of standard deviation 1. They stand in for textbook quantiles where
 * those fail: the moment of a change that hardly shows has no regular likelihood.
 */
export interface SimulatedRatios {
  /** Best step against no change, sorted. */
  readonly change: readonly number[];
  /** Best step against the best with the true size, sorted. */
  readonly size: readonly number[];
  /** Best step against the best at the true moment, sorted. */
  readonly moment: readonly number[];
}

/** Draws series and fits a step of free size and moment, of the given pace, to each. */
export function simulatedRatios(
  turnovers: readonly number[],
  moments: readonly number[],
  step: SimulatedStep,
  draws: number,
  seed: number,
  slowShare = 0,
): SimulatedRatios {
  const n = turnovers.length;
  const at = moments[step.moment] ?? 0;
  const answer = turnovers.map((t) => (t > at ? -step.size * Math.expm1(step.pace * (at - t)) : 0));
  const { normal } = seededRandom(seed);
  const ratios = { change: [] as number[], size: [] as number[], moment: [] as number[] };
  const z = new Float64Array(n);
  for (let draw = 0; draw < draws; draw++) {
    fillNoise(z, turnovers, slowShare, normal);
    for (let i = 0; i < n; i++) z[i] = (z[i] ?? 0) + (answer[i] ?? 0);
    const total = centre(z);
    const rests = leastRests(stepSums(step.pace, moments, turnovers, z), total, step);
    const variance = rests.best / (n - STEP_PARAMETERS);
    ratios.change.push((total - rests.best) / variance);
    ratios.size.push((rests.bestWithSize - rests.best) / variance);
    ratios.moment.push((rests.atMoment - rests.best) / variance);
  }
  const ascending = (a: number, b: number) => a - b;
  ratios.change.sort(ascending);
  ratios.size.sort(ascending);
  ratios.moment.sort(ascending);
  return ratios;
}

/** Best step of free size against no change, in residual variances: the statistic of the test. */
export function changeRatio(
  turnovers: readonly number[],
  moments: readonly number[],
  readings: readonly number[],
): number {
  const z = Float64Array.from(readings);
  const total = centre(z);
  const { best } = leastRests(stepSums(1, moments, turnovers, z), total, { size: 0, moment: 0 });
  return best > 0 ? ((total - best) * (z.length - STEP_PARAMETERS)) / best : 0;
}

function leastRests(
  { spread, cross }: StepSums,
  total: number,
  { size, moment }: { readonly size: number; readonly moment: number },
) {
  let [best, bestWithSize, atMoment] = [total, Number.POSITIVE_INFINITY, total];
  for (let m = 0; m < spread.length; m++) {
    const s = spread[m] ?? 0;
    const c = cross[m] ?? 0;
    const rest = s > 0 ? total - (c * c) / s : total;
    if (rest < best) best = rest;
    if (m === moment) atMoment = rest;
    bestWithSize = Math.min(bestWithSize, total - 2 * size * c + size * size * s);
  }
  return { best, bestWithSize, atMoment };
}

/** Takes the mean away and returns the sum of squares that is left. */
function centre(z: Float64Array): number {
  let mean = 0;
  for (const value of z) mean += value / z.length;
  let total = 0;
  for (let i = 0; i < z.length; i++) {
    const value = (z[i] ?? 0) - mean;
    z[i] = value;
    total += value * value;
  }
  return total;
}

/** The value below which a share `p` of sorted draws lies. */
export function drawnQuantile(sorted: readonly number[], p: number): number {
  return sorted[Math.min(sorted.length - 1, Math.ceil(p * (sorted.length + 1)) - 1)] ?? Number.NaN;
}
