import { gaussLegendre, normalCdf } from "../../numerics/index.ts";

/**
 * A chart whose memory is one number. The number lives on a set of states: nodes of a quadrature
 * rule over the stretch where the chart goes on, and for a chart with a barrier the barrier itself,
 * at 0 and last. A reading takes the chart to a normal density about `centre(from) + shift`.
 */
export interface ChartKernel {
  /** The value of the chart in each state. */
  readonly states: Float64Array;
  /** Each node in standard deviations of one step. */
  readonly targets: Float64Array;
  /** Quadrature weight of each node, in standard deviations of one step. */
  readonly weights: Float64Array;
  /** Where the value `from` leads in control, in standard deviations of one step. */
  readonly centre: (from: number) => number;
  /** Whether what falls below 0 is put back to 0. */
  readonly barrier: boolean;
}

const ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

/** Density of the standard normal distribution. */
export function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / ROOT_TWO_PI;
}

/** Writes the weights with which the value `from` leads to each state without a signal. */
export function writeRow(
  kernel: ChartKernel,
  from: number,
  shift: number,
  into: Float64Array,
  offset = 0,
): void {
  const { targets, weights } = kernel;
  const centre = kernel.centre(from) + shift;
  for (let j = 0; j < targets.length; j++) {
    into[offset + j] = (weights[j] ?? 0) * normalDensity((targets[j] ?? 0) - centre);
  }
  if (kernel.barrier) into[offset + targets.length] = normalCdf(-centre);
}

/** One row of the step, from any value. */
export function rowFrom(kernel: ChartKernel, from: number, shift: number): Float64Array {
  const row = new Float64Array(kernel.states.length);
  writeRow(kernel, from, shift, row);
  return row;
}

/** The whole step, row by row. */
export function stepMatrix(kernel: ChartKernel, shift: number): Float64Array {
  const size = kernel.states.length;
  const matrix = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    writeRow(kernel, kernel.states[i] ?? 0, shift, matrix, i * size);
  }
  return matrix;
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
 * Enough nodes for eleven digits: the kernel is a normal density, so what counts is the width of the
 * stretch in its standard deviations. Found by convergence: for widths of 0.5 to 40 no chart needed
 * more than 6 + 1.9·width.
 */
export function nodeCount(widthInSd: number): number {
  return Math.ceil(14 + 1.75 * widthInSd);
}

const rules = new Map<number, ReturnType<typeof gaussLegendre>>();

/** Gauss–Legendre rules are computed once. */
export function cachedRule(count: number): ReturnType<typeof gaussLegendre> {
  const known = rules.get(count);
  if (known) return known;
  const rule = gaussLegendre(count);
  rules.set(count, rule);
  return rule;
}
