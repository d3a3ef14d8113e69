import { requireEntries, requireNumber } from "../../input/index.ts";
import { normalCdf } from "../../numerics/index.ts";

/** Outcome of a Mann–Kendall test. */
export interface MannKendall {
  /** Number of later readings above earlier ones less the number below. */
  readonly s: number;
  /** Variance of S without a trend, corrected for ties. */
  readonly varianceOfS: number;
  /** Normal score with continuity correction; 0 where S is 0. */
  readonly z: number;
  /** Two-sided probability of an |S| as large without a trend. */
  readonly pValue: number;
  /** Whether `pValue` is exact (few readings) or from the normal distribution. */
  readonly method: "exact" | "normal";
  /** Kendall's tau-b, −1 to 1. */
  readonly tau: number;
}

/** Up to here all orders are counted instead of trusting the normal distribution. */
const EXACT_UP_TO = 10;

/**
 * Mann–Kendall test for a rise or fall that need not be a straight line.
 *
 * S = Σ sgn(yⱼ − yᵢ) over all pairs i < j; Var S = [n(n − 1)(2n + 5) − Σ t(t − 1)(2t + 5)] / 18 with
 * ties of t readings. Up to 10 readings the probability is exact, ties or not. Cost n·log n.
 *
 * @param values readings in order of time, at least 4
 * @returns S, its variance, the probability and tau
 * @throws InputError if there are too few readings or one is not finite
 *
 * @example
 * mannKendall([10, 10, 10, 5, 10, 20, 18, 17, 15, 24, 15]).s // => 22
 *
 * Source: US EPA, Data Quality Assessment QA/G-9S (2006), p. 109; M. G. Kendall, Rank Correlation
 * Methods, 4th ed. 1975.
 */
export function mannKendall(values: readonly number[]): MannKendall {
  requireEntries("mannKendall", "values", values, "a list of numbers");
  const n = requireNumber("mannKendall", "number of readings", values.length, { min: 4 });
  values.forEach((v, i) => {
    requireNumber("mannKendall", `values[${i}]`, v);
  });
  const ties = tieSizes(values);
  const tiedPairs = ties.reduce((sum, t) => sum + (t * (t - 1)) / 2, 0);
  const pairs = (n * (n - 1)) / 2;
  const s = pairs - tiedPairs - 2 * inversions(values);
  const tieCorrection = ties.reduce((sum, t) => sum + t * (t - 1) * (2 * t + 5), 0);
  const varianceOfS = (n * (n - 1) * (2 * n + 5) - tieCorrection) / 18;
  const z = s === 0 ? 0 : (s - Math.sign(s)) / Math.sqrt(varianceOfS);
  const exact = n <= EXACT_UP_TO;
  const pValue = exact
    ? Math.min(1, 2 * exactTail(n, ties, Math.abs(s)))
    : 2 * normalCdf(-Math.abs(z));
  const tau = tiedPairs === pairs ? 0 : s / Math.sqrt(pairs * (pairs - tiedPairs));
  return { s, varianceOfS, z, pValue, method: exact ? "exact" : "normal", tau };
}

/** Sizes of the groups of equal readings, ones left out. */
function tieSizes(values: readonly number[]): number[] {
  const counts = new Map<number, number>();
  for (const v of values) counts.set(v, (counts.get(v) ?? 0) + 1);
  return [...counts.values()].filter((count) => count > 1);
}

/** Pairs i < j with yᵢ > yⱼ, by merge sort. */
function inversions(values: readonly number[]): number {
  let from = Float64Array.from(values);
  let to = new Float64Array(values.length);
  let count = 0;
  for (let width = 1; width < values.length; width *= 2) {
    for (let start = 0; start < values.length; start += 2 * width) {
      const middle = Math.min(start + width, values.length);
      const end = Math.min(start + 2 * width, values.length);
      let [i, j] = [start, middle];
      for (let k = start; k < end; k++) {
        const left = i < middle ? (from[i] ?? 0) : Number.POSITIVE_INFINITY;
        const right = j < end ? (from[j] ?? 0) : Number.POSITIVE_INFINITY;
        if (i < middle && (j >= end || left <= right)) {
          to[k] = left;
          i++;
        } else {
          to[k] = right;
          j++;
          count += middle - i;
        }
      }
    }
    [from, to] = [to, from];
  }
  return count;
}

/**
 * P(S ≥ s) over all orders of n readings with these ties, by counting inversions. Of n different
 * readings Π(1 + q + … + q^(k − 1)) counts them, k = 2 … n; a group of t equal ones divides by its own.
 */
function exactTail(n: number, ties: readonly number[], s: number): number {
  let counts = [1];
  for (let k = 2; k <= n; k++) counts = timesOnes(counts, k);
  for (const t of ties) for (let k = 2; k <= t; k++) counts = byOnes(counts, k);
  const total = counts.reduce((sum, count) => sum + count, 0);
  // S = (pairs that differ) − 2·inversions, and the last count is of the most inversions.
  const mostInversions = Math.floor((counts.length - 1 - s) / 2);
  return counts.slice(0, mostInversions + 1).reduce((sum, count) => sum + count, 0) / total;
}

/** Coefficients of a polynomial times 1 + q + … + q^(k − 1). */
function timesOnes(counts: readonly number[], k: number): number[] {
  return Array.from({ length: counts.length + k - 1 }, (_, i) => {
    return counts.slice(Math.max(0, i - k + 1), i + 1).reduce((sum, count) => sum + count, 0);
  });
}

/** The same divided, where it divides without a rest. */
function byOnes(counts: readonly number[], k: number): number[] {
  const quotient: number[] = [];
  for (let i = 0; i <= counts.length - k; i++) {
    const carried = quotient.slice(Math.max(0, i - k + 1)).reduce((sum, each) => sum + each, 0);
    quotient.push((counts[i] ?? 0) - carried);
  }
  return quotient;
}
