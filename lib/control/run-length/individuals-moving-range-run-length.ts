import { requireNumber } from "../../input/index.ts";
import { normalDensity } from "./chart-kernel.ts";
import { dot } from "./flat-vectors.ts";
import { type PolynomialBasis, polynomialBasis } from "./polynomial-basis.ts";
import { computable, expectedReadings, survivalOperator } from "./survival-operator.ts";

const NODES = 20;

/**
 * Average run length of an individuals chart and its moving-range chart used together: a signal is a
 * reading beyond ±M, or a step between neighbours beyond R, in standard deviations.
 *
 * Solves N(x) = 1 + ∫ N(y)·φ(y − shift) dy over |y| ≤ M, |y − x| ≤ R by collocation on the three
 * stretches between which N bends.
 *
 * @param design `limitWidth` M, 1 to 6 (default 3); `rangeLimit` R, from M to 2M (default
 *   3.68589…, the usual D4·d2 = 2/√π·(1 + 3·√(π/2 − 1)))
 * @param options `shift` of the mean in standard deviations, −10 to 10; default 0
 * @returns readings to the first signal, the shift there from the first reading on
 * @throws InputError if a number is out of range
 *
 * @example
 * individualsMovingRangeRunLength() // => 105.331
 *
 * Source: S. V. Crowder, Journal of Quality Technology 19 (1987) 98–102.
 */
export function individualsMovingRangeRunLength(
  design: { readonly limitWidth?: number; readonly rangeLimit?: number } = {},
  options: { readonly shift?: number } = {},
): number {
  const where = "individualsMovingRangeRunLength";
  const m = requireNumber(where, "limitWidth", design.limitWidth ?? 3, { min: 1, max: 6 });
  const usual = (2 / Math.sqrt(Math.PI)) * (1 + 3 * Math.sqrt(Math.PI / 2 - 1));
  const r = requireNumber(where, "rangeLimit", design.rangeLimit ?? usual, { min: m, max: 2 * m });
  const shift = requireNumber(where, "shift", options.shift ?? 0, { min: -10, max: 10 });
  const bend = r - m;
  const stretches = [
    [-m, -bend],
    [-bend, bend],
    [bend, m],
  ] as const;
  const bases = stretches
    .filter(([from, to]) => to > from)
    .map(([from, to]) => ({ from, to, basis: polynomialBasis(from, to, NODES) }));
  const density = (y: number) => normalDensity(y - shift);
  const row = (low: number, high: number) =>
    bases.flatMap(({ from, to, basis }) =>
      within(basis, Math.max(low, from), Math.min(high, to), density),
    );
  const nodes = bases.flatMap(({ basis }) => basis.nodes);
  const step = Float64Array.from(nodes.flatMap((x) => row(x - r, x + r)));
  const readings = expectedReadings(survivalOperator(where, step, nodes.length));
  return computable(where, 1 + dot(row(-m, m), readings));
}

function within(
  basis: PolynomialBasis,
  from: number,
  to: number,
  density: (y: number) => number,
): number[] {
  return to > from ? basis.integral(from, to, density) : basis.nodes.map(() => 0);
}
