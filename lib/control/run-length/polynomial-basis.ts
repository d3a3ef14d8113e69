import { gaussLegendre } from "../../numerics/index.ts";
import { nodesOn } from "./chart-kernel.ts";

/** Values at Gauss nodes of an interval stand for the polynomial through them. */
export interface PolynomialBasis {
  readonly nodes: readonly number[];
  /** Weights c with Σ cⱼ·fⱼ = ∫ f(v)·density(v) dv over [from, to]. */
  readonly integral: (from: number, to: number, density?: (v: number) => number) => number[];
  /** Weights c with Σ cⱼ·fⱼ = f(x). */
  readonly value: (x: number) => number[];
}

/** The polynomial through values at `count` Gauss nodes of [lower, upper], in barycentric form. */
export function polynomialBasis(lower: number, upper: number, count: number): PolynomialBasis {
  const { nodes } = nodesOn(lower, upper, count);
  const { nodes: unit, weights } = gaussLegendre(count);
  // Barycentric weights of Gauss nodes (H. Wang and S. Xiang, Math. Comp. 81 (2012) 861–877).
  const barycentric = unit.map(
    (x, j) => (j % 2 ? -1 : 1) * Math.sqrt((1 - x * x) * (weights[j] ?? 0)),
  );
  const value = (x: number): number[] => {
    const hit = nodes.indexOf(x);
    if (hit >= 0) return nodes.map((_, j) => (j === hit ? 1 : 0));
    const terms = nodes.map((node, j) => (barycentric[j] ?? 0) / (x - node));
    const sum = terms.reduce((s, each) => s + each, 0);
    return terms.map((each) => each / sum);
  };
  const integral = (from: number, to: number, density = (_v: number) => 1): number[] => {
    const total = nodes.map(() => 0);
    if (!(to > from)) return total;
    const inner = nodesOn(from, to, 2 * count);
    inner.nodes.forEach((v, i) => {
      const weight = (inner.weights[i] ?? 0) * density(v);
      value(v).forEach((basis, j) => {
        total[j] = (total[j] ?? 0) + weight * basis;
      });
    });
    return total;
  };
  return { nodes, integral, value };
}
