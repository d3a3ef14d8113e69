import { CholeskyDecomposition, EigenvalueDecomposition, Matrix } from "ml-matrix";
import { gaussLegendre } from "../../numerics/index.ts";
import type { Signature } from "./pattern-signature.ts";

const { nodes, weights } = gaussLegendre(14);
/** Marks of the pieces of the integral, in widths of the peak. */
const MARKS = [-9, -4, -1.5, 0, 1.5, 4, 9, 20];

/** How well a signature explains a mean deviation, over all its sizes. */
export interface SizeEvidence {
  /** ln of p(deviation | signature) over p(deviation | nothing wrong). */
  readonly logEvidence: number;
  /** Size most likely after the readings, in action limits. */
  readonly size: number;
  /** Standard deviation of the size. */
  readonly sizeSd: number;
}

/** A signature made ready for one noise: in coordinates in which noise and scatter are independent. */
export interface WhitenedSignature {
  readonly mean: readonly number[];
  /** Scatter per coordinate, in units of the noise. */
  readonly scatter: readonly number[];
  /** Takes a deviation into these coordinates. */
  readonly into: Matrix;
}

/** Lower triangle L of a covariance L·Lᵀ, or `undefined` if it cannot be inverted. */
export function choleskyOf(covariance: Matrix): Matrix | undefined {
  const decomposition = new CholeskyDecomposition(covariance);
  if (!decomposition.isPositiveDefinite()) return undefined;
  const L = decomposition.lowerTriangularMatrix;
  const pivots = L.diagonal();
  const smallest = Math.min(...pivots.map((d, j) => d / Math.sqrt(covariance.get(j, j))));
  return smallest > 1e-7 ? L : undefined;
}

/** Turns noise L·Lᵀ into 1 and the signature's scatter into a diagonal. */
export function whiten({ mean, covariance }: Signature, L: Matrix): WhitenedSignature {
  const inverse = forwardInverse(L);
  const inner = inverse.mmul(covariance).mmul(inverse.transpose());
  const symmetric = Matrix.add(inner, inner.transpose()).div(2);
  const decomposition = new EigenvalueDecomposition(symmetric, { assumeSymmetric: true });
  const into = decomposition.eigenvectorMatrix.transpose().mmul(inverse);
  const turned = into.mmul(Matrix.columnVector([...mean])).to1DArray();
  const scatter = decomposition.realEigenvalues.map((v) => Math.max(0, v));
  return { mean: turned, scatter, into };
}

function forwardInverse(L: Matrix): Matrix {
  const p = L.rows;
  const inverse = new Matrix(p, p);
  for (let c = 0; c < p; c++) {
    for (let r = c; r < p; r++) {
      let sum = r === c ? 1 : 0;
      for (let k = c; k < r; k++) sum -= L.get(r, k) * inverse.get(k, c);
      inverse.set(r, c, sum / L.get(r, r));
    }
  }
  return inverse;
}

/**
 * Evidence of a signature for a weighted mean of `strips` strips' worth:
 * `ln ∫₀^∞ N(y; a·s, a²·C + Σ/n) / N(y; 0, Σ/n) · p(a) da`, with a Rayleigh prior of mode τ,
 * `p(a) = a/τ² · exp(−a²/2τ²)`, that leaves the smallest sizes to "nothing wrong". Integrated in pieces around its peak with Gauss–Legendre nodes.
 *
 * @param turned the mean deviation in the signature's coordinates
 */
export function sizeEvidence(
  signature: WhitenedSignature,
  turned: readonly number[],
  strips: number,
  sizeScale: number,
): SizeEvidence {
  const { mean, scatter } = signature;
  const p = mean.length;
  const exponent = (a: number) => {
    let sum = Math.log(a) - 0.5 * (a / sizeScale) ** 2;
    for (let j = 0; j < p; j++) {
      const y = turned[j] ?? 0;
      const spread = 1 + a * a * strips * (scatter[j] ?? 0);
      const residual = y - a * (mean[j] ?? 0);
      sum += 0.5 * (strips * (y * y - (residual * residual) / spread) - Math.log(spread));
    }
    return sum;
  };
  const { peak, width } = findPeak(exponent, sizeScale);
  const top = exponent(peak);
  const marks = [...new Set([0, ...MARKS.map((m) => Math.max(0, peak + m * width))])];
  // Beyond the last mark the prior still reaches.
  const ends = [...marks, Math.max(peak + 40 * width, 8 * sizeScale)].sort((a, b) => a - b);
  let [mass, first, second] = [0, 0, 0];
  for (let k = 1; k < ends.length; k++) {
    const from = ends[k - 1] ?? 0;
    const half = ((ends[k] ?? 0) - from) / 2;
    for (let i = 0; i < nodes.length; i++) {
      const a = from + half * (1 + (nodes[i] ?? 0));
      const density = half * (weights[i] ?? 0) * Math.exp(exponent(a) - top);
      mass += density;
      first += density * a;
      second += density * a * a;
    }
  }
  const size = first / mass;
  const normalisation = -2 * Math.log(sizeScale);
  const sizeSd = Math.sqrt(Math.max(0, second / mass - size * size));
  return { logEvidence: top + Math.log(mass) + normalisation, size, sizeSd };
}

/** The highest point for a ≥ 0 and the width over which the exponent falls by about one half. */
function findPeak(exponent: (a: number) => number, sizeScale: number) {
  let peak = sizeScale;
  let top = exponent(peak);
  for (let k = -40; k <= 40; k++) {
    const a = sizeScale * 10 ** (k / 10);
    const value = exponent(a);
    if (value > top) [peak, top] = [a, value];
  }
  let [from, to] = [peak / 1.26, peak * 1.26];
  for (let k = 0; k < 30; k++) {
    const [left, right] = [from + 0.382 * (to - from), from + 0.618 * (to - from)];
    if (exponent(left) > exponent(right)) to = right;
    else from = left;
  }
  peak = (from + to) / 2;
  top = exponent(peak);
  let width = sizeScale * 1e-5;
  while (exponent(peak + width) > top - 0.5 && width < 64 * sizeScale) width *= 1.5;
  return { peak, width };
}
