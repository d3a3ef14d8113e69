import { gaussLegendre } from "../../numerics/index.ts";

/**
 * A chart whose memory is one number. The number lives on a set of states: nodes of a quadrature
 * rule over the stretch where the chart goes on, and for a chart with a barrier the barrier itself.
 */
export interface ChartKernel {
  /** The value of the chart in each state. */
  readonly states: readonly number[];
  /** Weights with which the value `from` leads to each state without a signal. */
  readonly row: (from: number, shift: number) => number[];
}

const ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

/** Density of the standard normal distribution. */
export function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / ROOT_TWO_PI;
}

/** Quadrature nodes and weights on an interval. */
export function nodesOn(
  lower: number,
  upper: number,
  count: number,
): { readonly nodes: readonly number[]; readonly weights: readonly number[] } {
  const rule = cachedRule(count);
  const half = (upper - lower) / 2;
  return {
    nodes: rule.nodes.map((x) => (lower + upper) / 2 + half * x),
    weights: rule.weights.map((w) => half * w),
  };
}

/**
 * Enough nodes for ten digits: the kernel is a normal density, so what counts is the width of the
 * stretch in its standard deviations.
 */
export function nodeCount(widthInSd: number): number {
  return Math.ceil(22 + 2.2 * widthInSd);
}

const rules = new Map<number, ReturnType<typeof gaussLegendre>>();

function cachedRule(count: number): ReturnType<typeof gaussLegendre> {
  const known = rules.get(count);
  if (known) return known;
  const rule = gaussLegendre(count);
  rules.set(count, rule);
  return rule;
}
