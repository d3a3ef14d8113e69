import { normalCdf } from "../../numerics/index.ts";
import { type ChartKernel, nodeCount, nodesOn, normalDensity } from "./chart-kernel.ts";

/** Upper CUSUM, S = max(0, S + X − k), going on while S ≤ h; the last state is S = 0. */
export function upperCusumKernel(k: number, h: number): ChartKernel {
  const { nodes, weights } = nodesOn(0, h, nodeCount(h));
  return {
    states: [...nodes, 0],
    row: (from, shift) => {
      const centre = from - k + shift;
      const row = nodes.map((to, j) => (weights[j] ?? 0) * normalDensity(to - centre));
      row.push(normalCdf(-centre));
      return row;
    },
  };
}
