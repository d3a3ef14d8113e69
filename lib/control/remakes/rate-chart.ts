import { requireEntries, requireNumber } from "../../input/index.ts";
import { requireCounts, sum } from "./attribute-counts.ts";

/** A chart of faults per unit, day by day. */
export interface RateChart {
  readonly mean: number;
  readonly rates: readonly number[];
  readonly lower: readonly number[];
  readonly upper: readonly number[];
  readonly beyond: readonly number[];
}

/**
 * Chart of faults per unit of production (u-chart), where one print or roll may have several.
 * Limits ū ± 3·√(ū/nᵢ), cut at 0.
 *
 * @param counts faults a day
 * @param sizes units a day (prints, rolls, m²), greater than 0
 * @param options `sigmas`, default 3
 * @returns rates with their limits and the days strictly beyond them
 * @throws InputError if a size is 0 or a count negative
 *
 * @example
 * faultRateChart([14, 12, 20], [10, 8, 13]).mean // => 1.48387
 *
 * Source: NIST/SEMATECH e-Handbook 6.3.3.1; D. C. Montgomery, Introduction to Statistical Quality
 * Control, 2nd ed., dyed cloth example.
 */
export function faultRateChart(
  counts: readonly number[],
  sizes: readonly number[],
  options: { readonly sigmas?: number } = {},
): RateChart {
  requireEntries("faultRateChart", "counts", counts, "a list of numbers");
  requireEntries("faultRateChart", "sizes", sizes, "a list of numbers");
  requireCounts("faultRateChart", counts, sizes, "any");
  const sigmas = requireNumber("faultRateChart", "sigmas", options.sigmas ?? 3, {
    above: 0,
    max: 6,
  });
  const mean = sum(counts) / sum(sizes);
  const rates = counts.map((count, i) => count / (sizes[i] ?? 1));
  const reach = sizes.map((size) => sigmas * Math.sqrt(mean / size));
  const lower = reach.map((r) => Math.max(0, mean - r));
  const upper = reach.map((r) => mean + r);
  const beyond = rates.flatMap((u, i) => (u > (upper[i] ?? 0) || u < (lower[i] ?? 0) ? [i] : []));
  return { mean, rates, lower, upper, beyond };
}
