import { seededRandom } from "../../numerics/index.ts";
import { STEP_PARAMETERS } from "./rate-intervals.ts";
import { type StepDesign, stepCross, stepDesign } from "./rate-surface.ts";
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
  readonly change: Float64Array;
  /** Best step against the best with the true size, sorted. */
  readonly size: Float64Array;
  /** Best step against the best at the true moment, sorted. */
  readonly moment: Float64Array;
}

/** Series of noise of standard deviation 1 on given turnovers, drawn once and used for every step. */
export function noiseDraws(
  turnovers: readonly number[],
  { draws, seed, slowShare }: Readonly<Record<"draws" | "seed" | "slowShare", number>>,
): Float64Array[] {
  const { normal } = seededRandom(seed);
  return Array.from({ length: draws }, () => {
    const noise = new Float64Array(turnovers.length);
    fillNoise(noise, turnovers, slowShare, normal);
    return noise;
  });
}

/** Fits a step of free size and moment, of the given pace, to the step with each of the noises. */
export function simulatedRatios(
  turnovers: readonly number[],
  moments: readonly number[],
  step: SimulatedStep,
  noises: readonly Float64Array[],
): SimulatedRatios {
  const n = turnovers.length;
  const at = moments[step.moment] ?? 0;
  const answer = turnovers.map((t) => (t > at ? -step.size * Math.expm1(step.pace * (at - t)) : 0));
  const design = stepDesign(step.pace, moments, turnovers);
  const count = noises.length;
  const [change, size, moment] = [
    new Float64Array(count),
    new Float64Array(count),
    new Float64Array(count),
  ];
  const z = new Float64Array(n);
  noises.forEach((noise, draw) => {
    for (let i = 0; i < n; i++) z[i] = (noise[i] ?? 0) + (answer[i] ?? 0);
    const total = centre(z);
    const rests = leastRests(design, stepCross(design, z), total, step);
    const variance = rests.best / (n - STEP_PARAMETERS);
    change[draw] = (total - rests.best) / variance;
    size[draw] = (rests.bestWithSize - rests.best) / variance;
    moment[draw] = (rests.atMoment - rests.best) / variance;
  });
  return { change: change.sort(), size: size.sort(), moment: moment.sort() };
}

/** Best step of free size against no change, in residual variances: the statistic of the test. */
export function changeRatio(
  turnovers: readonly number[],
  moments: readonly number[],
  readings: readonly number[],
): number {
  const z = Float64Array.from(readings);
  const total = centre(z);
  const design = stepDesign(1, moments, turnovers);
  const { best } = leastRests(design, stepCross(design, z), total, { size: 0, moment: 0 });
  return best > 0 ? ((total - best) * (z.length - STEP_PARAMETERS)) / best : 0;
}

function leastRests(
  { spread }: StepDesign,
  cross: Float64Array,
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
export function drawnQuantile(sorted: ArrayLike<number>, p: number): number {
  return sorted[Math.min(sorted.length - 1, Math.ceil(p * (sorted.length + 1)) - 1)] ?? Number.NaN;
}
