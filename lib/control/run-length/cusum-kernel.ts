import { type ChartKernel, nodeCount, nodesOn } from "./chart-kernel.ts";

/** Upper CUSUM, S = max(0, S + X − k), going on while S ≤ h; the last state is S = 0. */
export function upperCusumKernel(k: number, h: number): ChartKernel {
  const { nodes, weights } = nodesOn(0, h, nodeCount(h));
  return {
    states: Float64Array.from([...nodes, 0]),
    targets: Float64Array.from(nodes),
    weights: Float64Array.from(weights),
    centre: (from) => from - k,
    barrier: true,
  };
}
