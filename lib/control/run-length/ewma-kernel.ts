import { type ChartKernel, nodeCount, nodesOn } from "./chart-kernel.ts";

/** Half-width of the asymptotic limits of an EWMA of standard normal readings. */
export function ewmaHalfWidth(lambda: number, limitWidth: number): number {
  return limitWidth * Math.sqrt(lambda / (2 - lambda));
}

/** EWMA with limits at ±`halfWidth`; the states are quadrature nodes between them. */
export function twoSidedEwmaKernel(lambda: number, halfWidth: number): ChartKernel {
  const { nodes, weights } = nodesOn(-halfWidth, halfWidth, nodeCount((2 * halfWidth) / lambda));
  return { states: Float64Array.from(nodes), ...inSteps(lambda, nodes, weights), barrier: false };
}

/**
 * Upper EWMA: the average is put back to the centre line whenever it falls below, so that only a
 * rise can signal. The last state is the barrier.
 */
export function upperEwmaKernel(lambda: number, halfWidth: number): ChartKernel {
  const { nodes, weights } = nodesOn(0, halfWidth, nodeCount(halfWidth / lambda));
  return {
    states: Float64Array.from([...nodes, 0]),
    ...inSteps(lambda, nodes, weights),
    barrier: true,
  };
}

/** A step of the average has the standard deviation λ. */
function inSteps(lambda: number, nodes: readonly number[], weights: readonly number[]) {
  return {
    targets: Float64Array.from(nodes, (node) => node / lambda),
    weights: Float64Array.from(weights, (weight) => weight / lambda),
    centre: (from: number) => ((1 - lambda) / lambda) * from,
  };
}
