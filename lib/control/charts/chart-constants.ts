import { requireNumber } from "../../input/index.ts";
import { findRoot, gammaLn } from "../../numerics/index.ts";
import { relativeRangeCdf, relativeRangeMoments } from "./range-distribution.ts";

/** Factors of Shewhart charts for subgroups of n, under the names the handbooks print. */
export interface ChartConstants {
  readonly n: number;
  /** Mean, standard deviation and median of the range of n standard normal readings. */
  readonly d2: number;
  readonly d3: number;
  readonly d4: number;
  /** Mean of the sample standard deviation over sigma. */
  readonly c4: number;
  /** Half-width of limits for means: from sigma (A), mean range (A2), mean sd (A3). */
  readonly A: number;
  readonly A2: number;
  readonly A3: number;
  /** Limits for standard deviations: from the mean sd (B3, B4), from sigma (B5, B6). */
  readonly B3: number;
  readonly B4: number;
  readonly B5: number;
  readonly B6: number;
  /** Limits for ranges: from sigma (D1, D2), from the mean range (D3, D4). */
  readonly D1: number;
  readonly D2: number;
  readonly D3: number;
  readonly D4: number;
  /** Half-width of limits for individuals: from the mean range (E2), from the mean sd (E3). */
  readonly E2: number;
  readonly E3: number;
}

const known = new Map<number, ChartConstants>();

/**
 * Factors of Shewhart control charts, computed from their definitions and not from a printed table.
 *
 * `d2 = ∫₀^∞ P(W > w) dw`, `d3² = ∫₀^∞ 2w P(W > w) dw − d2²` with W the range of n standard normal
 * readings, `c4 = √(2/(n−1)) Γ(n/2)/Γ((n−1)/2)`; the others follow with the usual 3 sigma and
 * lower limits never below 0. For n = 2, d2 is 2/√π = 1.128379…, printed as 1.128.
 *
 * @param n readings in a subgroup (2 for a moving range), a whole number from 2 to 100
 * @returns the constants by their printed names, right to about 1e-12
 * @throws InputError if `n` is not a whole number from 2 to 100
 *
 * @example
 * chartConstants(5).A2 // => 0.57681933408509
 *
 * Source: definitions as in NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2 and
 * ISO 7870-2:2013, table of factors.
 */
export function chartConstants(n: number): ChartConstants {
  requireNumber("chartConstants", "n", n, { min: 2, max: 100, whole: true });
  const found = known.get(n);
  if (found) return found;
  const computed = compute(n);
  known.set(n, computed);
  return computed;
}

function compute(n: number): ChartConstants {
  const { mean: d2, sd: d3 } = relativeRangeMoments(n);
  const d4 = findRoot((w) => relativeRangeCdf(w, n) - 0.5, { lower: 0.01, upper: 10 });
  const c4 = Math.sqrt(2 / (n - 1)) * Math.exp(gammaLn(n / 2) - gammaLn((n - 1) / 2));
  const root = Math.sqrt(n);
  const spread = 3 * Math.sqrt(1 - c4 * c4);
  const notBelowZero = (value: number) => Math.max(0, value);
  return {
    n,
    d2,
    d3,
    d4,
    c4,
    A: 3 / root,
    A2: 3 / (d2 * root),
    A3: 3 / (c4 * root),
    B3: notBelowZero(1 - spread / c4),
    B4: 1 + spread / c4,
    B5: notBelowZero(c4 - spread),
    B6: c4 + spread,
    D1: notBelowZero(d2 - 3 * d3),
    D2: d2 + 3 * d3,
    D3: notBelowZero(1 - (3 * d3) / d2),
    D4: 1 + (3 * d3) / d2,
    E2: 3 / d2,
    E3: 3 / c4,
  };
}

/** 2/√π: mean range of two standard normal readings, exactly. */
export const meanRangeOfTwo = 2 / Math.sqrt(Math.PI);

/** √(2 − 4/π): standard deviation of the range of two standard normal readings, exactly. */
export const rangeSdOfTwo = Math.sqrt(2 - 4 / Math.PI);
