import { normalCdf } from "../../numerics/index.ts";
import { type ChartKernel, nodeCount, nodesOn, normalDensity } from "./chart-kernel.ts";

/** Half-width of the asymptotic limits of an EWMA of standard normal readings. */
export function ewmaHalfWidth(lambda: number, limitWidth: number): number {
  return limitWidth * Math.sqrt(lambda / (2 - lambda));
}

/** EWMA with limits at ±`halfWidth`; the states are quadrature nodes between them. */
export function twoSidedEwmaKernel(lambda: number, halfWidth: number): ChartKernel {
  const { nodes, weights } = nodesOn(-halfWidth, halfWidth, nodeCount((2 * halfWidth) / lambda));
  return { states: nodes, row: ewmaRow(lambda, nodes, weights) };
}

/**
 * Upper EWMA: the average is put back to the centre line whenever it falls below, so that only a
 * rise can signal. The last state is the barrier.
 */
export function upperEwmaKernel(lambda: number, halfWidth: number): ChartKernel {
  const { nodes, weights } = nodesOn(0, halfWidth, nodeCount(halfWidth / lambda));
  const inside = ewmaRow(lambda, nodes, weights);
  return {
    states: [...nodes, 0],
    row: (from, shift) => [
      ...inside(from, shift),
      normalCdf((-(1 - lambda) * from) / lambda - shift),
    ],
  };
}

/** One step of the average from `from`, onto given nodes. */
export function ewmaRow(
  lambda: number,
  nodes: readonly number[],
  weights: readonly number[],
): (from: number, shift: number) => number[] {
  return (from, shift) => {
    const centre = (1 - lambda) * from + lambda * shift;
    return nodes.map(
      (to, j) => ((weights[j] ?? 0) / lambda) * normalDensity((to - centre) / lambda),
    );
  };
}
