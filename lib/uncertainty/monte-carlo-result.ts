import type { InputCorrelation } from "./correlation.ts";
import { coverageIntervals } from "./coverage-interval.ts";
import { numericalTolerance } from "./numerical-tolerance.ts";

/** What `monteCarloUncertainty` needs. */
export interface MonteCarloOptions {
  /** Whole number; the same seed gives the same result. */
  readonly seed: number;
  /** Number of draws; left out, they go on until the result is stable (JCGM 101, 7.9). */
  readonly trials?: number;
  /** Digits of the standard uncertainty that must be stable, 1 or 2; 2 if left out. */
  readonly significantDigits?: number;
  /** Where the adaptive procedure gives up; 2 000 000 if left out. */
  readonly maximumTrials?: number;
  /** Probability of the intervals, above 0 and below 1; 0.95 if left out. */
  readonly coverageProbability?: number;
  readonly correlations?: readonly InputCorrelation[];
}

/** Result of propagating distributions through a model. */
export interface MonteCarloResult {
  readonly value: number;
  readonly standardUncertainty: number;
  readonly coverageProbability: number;
  readonly symmetricInterval: readonly [number, number];
  readonly shortestInterval: readonly [number, number];
  readonly trials: number;
  /** Whether value, uncertainty and ends are stable to `tolerance`; null for a fixed number. */
  readonly stable: boolean | null;
  /** δ, half a unit of the last significant digit of the uncertainty. */
  readonly tolerance: number;
  /** 101 values of the result, at the probabilities 0.005, 0.0149 … 0.995, for a drawing. */
  readonly quantiles: readonly number[];
  readonly warnings: readonly string[];
}

/** Mean and standard deviation of several lists taken as one. */
export function momentsOf(lists: readonly Float64Array[]): {
  mean: number;
  standardDeviation: number;
} {
  let count = 0;
  let mean = 0;
  let squares = 0;
  for (const list of lists) {
    for (const value of list) {
      count += 1;
      const difference = value - mean;
      mean += difference / count;
      squares += difference * (value - mean);
    }
  }
  return { mean, standardDeviation: count > 1 ? Math.sqrt(squares / (count - 1)) : 0 };
}

/** Everything said of all draws of all passes taken together. */
export function summary(
  passes: readonly Float64Array[],
  p: number,
  digits: number,
  stable: boolean | null,
): MonteCarloResult {
  const { mean, standardDeviation } = momentsOf(passes);
  const all = new Float64Array(passes.reduce((sum, pass) => sum + pass.length, 0));
  let offset = 0;
  for (const pass of passes) {
    all.set(pass, offset);
    offset += pass.length;
  }
  all.sort();
  const { symmetric, shortest } = coverageIntervals(all, p);
  const quantiles = Array.from({ length: 101 }, (_, i) => {
    const rank = (0.005 + 0.0099 * i) * (all.length - 1);
    const low = all[Math.floor(rank)] ?? 0;
    return low + (rank - Math.floor(rank)) * ((all[Math.ceil(rank)] ?? low) - low);
  });
  const unstable = "the draws ran out before the result was stable; its last digit is not sure";
  return {
    value: mean,
    standardUncertainty: standardDeviation,
    coverageProbability: p,
    symmetricInterval: symmetric,
    shortestInterval: shortest,
    trials: all.length,
    stable,
    tolerance: standardDeviation === 0 ? 0 : numericalTolerance(standardDeviation, digits),
    quantiles,
    warnings: stable === false ? [unstable] : [],
  };
}
