import { requireNumber } from "../input/index.ts";

/** Nodes and weights of a quadrature rule. */
export interface QuadratureRule {
  readonly nodes: readonly number[];
  readonly weights: readonly number[];
}

/**
 * Gauss–Legendre quadrature rule on [−1, 1]: exact for polynomials up to degree 2n − 1. Nodes are
 * the roots of the Legendre polynomial, found by Newton steps from Chebyshev starting points.
 *
 * @param n number of nodes, a whole number from 1 to 1,000
 * @returns `nodes`, ascending, and `weights`, each of length n
 * @throws InputError if `n` is out of range
 *
 * @example
 * gaussLegendre(2).nodes // => [-0.577350269189626, 0.577350269189626]
 *
 * Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 25.4.29.
 */
export function gaussLegendre(n: number): QuadratureRule {
  requireNumber("gaussLegendre", "n", n, { min: 1, max: 1000, whole: true });
  const nodes = new Array<number>(n).fill(0);
  const weights = new Array<number>(n).fill(0);
  for (let i = 0; i < Math.ceil(n / 2); i++) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 0;
    for (let pass = 0; pass < 100; pass++) {
      const { value, derivative } = legendre(n, x);
      slope = derivative;
      const step = value / derivative;
      x -= step;
      if (Math.abs(step) < 1e-15) break;
    }
    if (2 * i + 1 === n) x = 0;
    slope = legendre(n, x).derivative;
    const weight = 2 / ((1 - x * x) * slope * slope);
    nodes[i] = -x;
    nodes[n - 1 - i] = x;
    weights[i] = weight;
    weights[n - 1 - i] = weight;
  }
  if (n % 2 === 1) nodes[(n - 1) / 2] = 0;
  return { nodes, weights };
}

function legendre(n: number, x: number): { value: number; derivative: number } {
  let previous = 1;
  let value = x;
  for (let k = 2; k <= n; k++) {
    [previous, value] = [value, ((2 * k - 1) * x * value - (k - 1) * previous) / k];
  }
  return { value, derivative: (n * (x * value - previous)) / (x * x - 1) };
}
