import { InputError, requireFunction, requireNumber, requireObject } from "../input/index.ts";
import { seededRandom } from "../numerics/index.ts";
import { coverageIntervals } from "./coverage-interval.ts";
import type { InputQuantity } from "./distribution.ts";
import { jointDraws } from "./joint-draws.ts";
import {
  type MonteCarloOptions,
  type MonteCarloResult,
  momentsOf,
  summary,
} from "./monte-carlo-result.ts";
import { numericalTolerance } from "./numerical-tolerance.ts";
import { modelValue, requireInputs } from "./require-inputs.ts";
import type { MeasurementModel } from "./sensitivity.ts";

/**
 * Distribution of a result, by drawing the inputs from theirs (Monte Carlo), adaptively.
 *
 * M = max(⌈100/(1 − p)⌉, 10⁴) draws a pass; after h ≥ 2 passes it stops when twice the standard
 * deviation of the passes' mean, uncertainty and interval ends is at most δ.
 *
 * @param model the result from named inputs
 * @param inputs each with a name and a distribution
 * @param options.seed whole number
 * @param options.trials a fixed number of draws instead of the adaptive procedure
 * @param options.significantDigits of the uncertainty to hold stable; 2 if left out
 * @param options.coverageProbability of the intervals; 0.95 if left out
 * @param options.correlations for normal inputs only
 * @returns value, uncertainty and intervals in the result's unit, all draws taken together
 * @throws InputError for bad inputs, or a model that gives no finite number at a draw
 *
 * @example
 * monteCarloUncertainty(({ x }) => 2 * x, [{ name: "x", distribution: { kind: "rectangular", mean: 1, halfWidth: 0.1 } }], { seed: 1, significantDigits: 1 }).stable // => true
 *
 * Source: JCGM 101:2008, clause 7 (7.9 for the adaptive procedure).
 */
export function monteCarloUncertainty(
  model: MeasurementModel,
  inputs: readonly InputQuantity[],
  options: MonteCarloOptions,
): MonteCarloResult {
  const where = "monteCarloUncertainty";
  requireFunction(where, "model", model);
  requireObject(where, "options", options, "an object with seed");
  requireInputs(where, inputs);
  const p = requireNumber(where, "coverageProbability", options.coverageProbability ?? 0.95, {
    above: 0,
    below: 1,
  });
  const digits = options.significantDigits ?? 2;
  const smallest = Math.ceil(100 / (1 - p) - 1e-9);
  const limit = requireNumber(where, "maximumTrials", options.maximumTrials ?? 2_000_000, {
    min: 1,
  });
  const next = jointDraws(where, inputs, options.correlations ?? [], seededRandom(options.seed));
  const draw = (count: number): Float64Array => {
    const values = new Float64Array(count);
    for (let i = 0; i < count; i++) values[i] = modelValue(where, model, next());
    return values;
  };
  if (options.trials !== undefined) {
    const bounds = { whole: true, min: Math.ceil(10 / (1 - p)), max: 1e8 };
    const trials = requireNumber(where, "trials", options.trials, bounds);
    return summary([draw(trials)], p, digits, null);
  }
  const perPass = Math.max(smallest, 10_000);
  if (limit < 2 * perPass) {
    const advice = `write at least ${2 * perPass} (two passes) or give trials`;
    throw new InputError(where, "maximumTrials", limit, advice);
  }
  const passes: Float64Array[] = [];
  const results: (readonly number[])[] = [];
  while (passes.length * perPass + perPass <= limit) {
    const pass = draw(perPass);
    passes.push(pass);
    results.push(passResults(pass, p));
    if (passes.length < 2) continue;
    const { standardDeviation } = momentsOf(passes);
    if (standardDeviation === 0) return summary(passes, p, digits, true);
    if (spreadOfMeans(results) <= numericalTolerance(standardDeviation, digits)) {
      return summary(passes, p, digits, true);
    }
  }
  return summary(passes, p, digits, false);
}

function passResults(values: Float64Array, p: number): readonly number[] {
  const { mean, standardDeviation } = momentsOf([values]);
  const { symmetric } = coverageIntervals(Float64Array.from(values).sort(), p);
  return [mean, standardDeviation, ...symmetric];
}

/** The largest of 2·s(mean over passes) over mean, uncertainty, lower and upper end. */
function spreadOfMeans(results: readonly (readonly number[])[]): number {
  const h = results.length;
  const spreads = [0, 1, 2, 3].map((column) => {
    const { standardDeviation } = momentsOf([
      Float64Array.from(results, (result) => result[column] ?? 0),
    ]);
    return (2 * standardDeviation) / Math.sqrt(h);
  });
  return Math.max(...spreads);
}
