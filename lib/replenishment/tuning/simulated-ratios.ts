import { seededRandom } from "../../numerics/index.ts";
import { STEP_PARAMETERS } from "./rate-intervals.ts";
import { responseShare } from "./response-sums.ts";

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

/**
 * @param turnovers of the strips
 * @param moments that the fit may choose among
 * @param step `size` in standard deviations of z and `moment`, an index into `moments`
 */
export function simulatedRatios(
  turnovers: readonly number[],
  moments: readonly number[],
  step: { readonly size: number; readonly moment: number },
  draws: number,
  seed: number,
): SimulatedRatios {
  const n = turnovers.length;
  const responses = moments.map((at) => centred(turnovers.map((t) => responseShare(t - at))));
  const spread = responses.map((g) => dotProduct(g, g));
  const truth = responses[step.moment] ?? new Float64Array(n);
  const { normal } = seededRandom(seed);
  const change: number[] = [];
  const size: number[] = [];
  const moment: number[] = [];
  const z = new Float64Array(n);
  for (let draw = 0; draw < draws; draw++) {
    let mean = 0;
    for (let i = 0; i < n; i++) {
      z[i] = normal();
      mean += (z[i] ?? 0) / n;
    }
    for (let i = 0; i < n; i++) z[i] = (z[i] ?? 0) - mean + step.size * (truth[i] ?? 0);
    const total = dotProduct(z, z);
    let best = total;
    let bestWithSize = Number.POSITIVE_INFINITY;
    let atTruth = total;
    responses.forEach((g, k) => {
      const s = spread[k] ?? 0;
      const cross = s > 1e-12 ? dotProduct(g, z) : 0;
      const rest = s > 1e-12 ? total - (cross * cross) / s : total;
      best = Math.min(best, rest);
      bestWithSize = Math.min(bestWithSize, total - 2 * step.size * cross + step.size ** 2 * s);
      if (k === step.moment) atTruth = rest;
    });
    const variance = best / (n - STEP_PARAMETERS);
    change.push((total - best) / variance);
    size.push((bestWithSize - best) / variance);
    moment.push((atTruth - best) / variance);
  }
  const ascending = (a: number, b: number) => a - b;
  return {
    change: change.sort(ascending),
    size: size.sort(ascending),
    moment: moment.sort(ascending),
  };
}

/** The value below which a share `p` of sorted draws lies. */
export function drawnQuantile(sorted: readonly number[], p: number): number {
  return sorted[Math.min(sorted.length - 1, Math.ceil(p * (sorted.length + 1)) - 1)] ?? Number.NaN;
}

function centred(values: readonly number[]): Float64Array {
  const mean = values.reduce((sum, v) => sum + v, 0) / values.length;
  return Float64Array.from(values, (v) => v - mean);
}

function dotProduct(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}
