import { cachedRule, nodesOn } from "./chart-kernel.ts";

/** Values at Gauss nodes of an interval stand for the polynomial through them. */
export interface PolynomialBasis {
  readonly nodes: readonly number[];
  /** Weights c with Σ cⱼ·fⱼ = ∫ f(v)·density(v) dv over [from, to]. */
  readonly integral: (from: number, to: number, density?: (v: number) => number) => number[];
}

/** The polynomial through values at `count` Gauss nodes of [lower, upper], in barycentric form. */
export function polynomialBasis(lower: number, upper: number, count: number): PolynomialBasis {
  const { nodes, weights: whole } = nodesOn(lower, upper, count);
  const { nodes: unit, weights } = cachedRule(count);
  // Barycentric weights of Gauss nodes (H. Wang and S. Xiang, Math. Comp. 81 (2012) 861–877).
  const barycentric = unit.map(
    (x, j) => (j % 2 ? -1 : 1) * Math.sqrt((1 - x * x) * (weights[j] ?? 0)),
  );
  const integral = (from: number, to: number, density = (_v: number) => 1): number[] => {
    const total = new Array<number>(count).fill(0);
    if (!(to > from)) return total;
    // Over the whole interval the Gauss rule itself is as good.
    if (from === lower && to === upper) return nodes.map((v, j) => (whole[j] ?? 0) * density(v));
    const inner = nodesOn(from, to, 2 * count);
    const terms = new Float64Array(count);
    inner.nodes.forEach((v, i) => {
      const weight = (inner.weights[i] ?? 0) * density(v);
      let sum = 0;
      for (let j = 0; j < count; j++) {
        const term = (barycentric[j] ?? 0) / (v - (nodes[j] ?? 0));
        // On a node itself the polynomial is the value there.
        if (!Number.isFinite(term)) {
          add(total, j, weight);
          return;
        }
        terms[j] = term;
        sum += term;
      }
      const share = weight / sum;
      for (let j = 0; j < count; j++) add(total, j, share * (terms[j] ?? 0));
    });
    return total;
  };
  return { nodes, integral };
}

function add(total: number[], at: number, value: number): void {
  total[at] = (total[at] ?? 0) + value;
}
