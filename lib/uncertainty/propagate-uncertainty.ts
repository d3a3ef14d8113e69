import { InputError, requireFunction, requireNumber } from "../input/index.ts";
import { budgetRemarks } from "./budget-remarks.ts";
import { correlationMatrix } from "./correlation.ts";
import { coverageFactor } from "./coverage-factor.ts";
import type { DegreesOfFreedom, InputQuantity } from "./distribution.ts";
import { effectiveDegreesOfFreedom } from "./effective-degrees-of-freedom.ts";
import { modelValue, requireInputs } from "./require-inputs.ts";
import { secondOrderVariance } from "./second-order.ts";
import { type MeasurementModel, numericalDerivative } from "./sensitivity.ts";
import { bestEstimateOf, degreesOfFreedomOf, uncertaintyOf } from "./standard-uncertainty.ts";
import type { BudgetRow, PropagationOptions, UncertaintyBudget } from "./uncertainty-budget.ts";

/**
 * Combined standard uncertainty of a result, by the law of propagation, with its budget.
 *
 * u_c²(y) = Σ_i Σ_j c_i c_j u(x_i) u(x_j) r_ij, c_i = ∂f/∂x_i; U = k·u_c with k = t_p(ν_eff).
 *
 * @param model the result from named inputs; smooth near the best estimates
 * @param inputs each with a name, a distribution and perhaps a unit
 * @param options.correlations correlation coefficients other than 0
 * @param options.coverageProbability above 0 and below 1; 0.95 if left out
 * @param options.coverageFactor k to use instead, such as 2
 * @param options.order 2 adds the second-order terms of JCGM 100, 5.1.2
 * @returns value, uncertainties and interval in the result's unit, and one row per input
 * @throws InputError for a bad input, a model without a finite value, or coefficients that
 *   contradict each other
 *
 * @example
 * propagateUncertainty(({ m, V }) => m / V, [{ name: "m", distribution: { kind: "normal", mean: 10, standardUncertainty: 0.1 } }, { name: "V", distribution: { kind: "normal", mean: 2, standardUncertainty: 0.02 } }]).combinedStandardUncertainty // => 0.0707107
 *
 * Source: JCGM 100:2008, 5.1.2 and 5.2.2, annexes G and H.
 */
export function propagateUncertainty(
  model: MeasurementModel,
  inputs: readonly InputQuantity[],
  options: PropagationOptions = {},
): UncertaintyBudget {
  const where = "propagateUncertainty";
  requireFunction(where, "model", model);
  requireInputs(where, inputs);
  const correlations = options.correlations ?? [];
  const order = options.order ?? 1;
  const probability = options.coverageProbability ?? 0.95;
  const correlation = correlationMatrix(where, inputs, correlations);
  if (order === 2 && correlations.length > 0) {
    const advice =
      "the second-order terms hold for uncorrelated inputs; use the Monte Carlo method";
    throw new InputError(where, "order", order, advice);
  }
  const estimates: Record<string, number> = {};
  for (const { name, distribution } of inputs) estimates[name] = bestEstimateOf(distribution);
  const value = modelValue(where, model, estimates);
  const sensitivities = inputs.map(({ name, distribution }) => {
    const x = estimates[name] ?? 0;
    const along = (shifted: number) => model({ ...estimates, [name]: shifted });
    const u = uncertaintyOf(distribution);
    return numericalDerivative(along, x, u > 0 ? u : Math.abs(x) * 1e-3);
  });
  const uncertainties = inputs.map(({ distribution }) => uncertaintyOf(distribution));
  const contributions = sensitivities.map(
    ({ derivative }, i) => derivative * (uncertainties[i] ?? 0),
  );
  const shares = contributions.map((a, i) =>
    contributions.reduce((sum, b, j) => sum + a * b * correlation.get(i, j), 0),
  );
  const firstOrder = shares.reduce((sum, share) => sum + share, 0);
  const higher = order === 2 ? secondOrderVariance(model, estimates, inputs) : 0;
  const combined = Math.sqrt(Math.max(0, firstOrder + higher));

  const rows = inputs.map((input, i): BudgetRow => {
    const share = shares[i] ?? 0;
    return {
      name: input.name,
      unit: input.unit ?? "",
      value: estimates[input.name] ?? 0,
      standardUncertainty: uncertainties[i] ?? 0,
      distribution: input.distribution.kind,
      degreesOfFreedom: input.degreesOfFreedom ?? degreesOfFreedomOf(input.distribution),
      sensitivity: sensitivities[i]?.derivative ?? 0,
      sensitivityError: sensitivities[i]?.errorBound ?? 0,
      contribution: contributions[i] ?? 0,
      variancePercent: firstOrder > 0 ? (100 * share) / firstOrder : 0,
    };
  });
  const degreesOfFreedom = effectiveDegreesOfFreedom(rows);
  const k =
    options.coverageFactor === undefined
      ? coverageFactor(probability, atLeastOne(degreesOfFreedom))
      : requireNumber(where, "coverageFactor", options.coverageFactor, { above: 0 });
  const expanded = k * combined;
  return {
    value,
    combinedStandardUncertainty: combined,
    relativeStandardUncertainty: value === 0 ? null : combined / Math.abs(value),
    effectiveDegreesOfFreedom: degreesOfFreedom,
    coverageProbability: probability,
    coverageFactor: k,
    expandedUncertainty: expanded,
    interval: [value - expanded, value + expanded],
    rows,
    ...budgetRemarks(rows, combined, correlations.length > 0, options.coverageFactor !== undefined),
  };
}

function atLeastOne(degreesOfFreedom: DegreesOfFreedom): DegreesOfFreedom {
  return degreesOfFreedom === "infinite" ? degreesOfFreedom : Math.max(1, degreesOfFreedom);
}
