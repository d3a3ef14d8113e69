import { requireEntries, requireNumber, requireObject, requireOneOf } from "../../input/index.ts";
import { meanRangeOfTwo } from "../charts/chart-constants.ts";
import { requireCounts, sum } from "./attribute-counts.ts";

/** A chart of the share of remakes, day by day. */
export interface ProportionChart {
  /** Share over all days. */
  readonly mean: number;
  readonly shares: readonly number[];
  readonly lower: readonly number[];
  readonly upper: readonly number[];
  /** (share − mean) in standard deviations of that day's binomial count. */
  readonly scores: readonly number[];
  /** How many times wider than binomial the days scatter, by moving range of the scores; about 1 without over-dispersion. */
  readonly dispersion: number;
  readonly limits: "binomial" | "Laney";
  /** Days strictly beyond their own limits. */
  readonly beyond: readonly number[];
  readonly warnings: readonly string[];
}

/**
 * Chart of the share of remakes with limits that follow each day's number of prints (p-chart), or
 * Laney's chart where the days differ by more than counting makes them.
 *
 * Limits p̄ ± 3·√(p̄(1 − p̄)/nᵢ), times σz for Laney, where σz is the mean moving range of the scores
 * over 2/√π. Limits are cut at 0 and 1; a share exactly on a limit is not beyond it.
 *
 * @param counts remakes a day, whole or not, not above `sizes`
 * @param sizes prints a day, greater than 0
 * @param options `limits`: `"binomial"`, `"Laney"`, or `"by dispersion"` (default: Laney where σz is
 *   above 1.2); `sigmas`, default 3
 * @returns shares with their limits, scores, dispersion and the days beyond
 * @throws InputError if a size is 0 or there are more remakes than prints
 *
 * @example
 * proportionChart([3, 5, 4, 30, 4], [300, 400, 350, 380, 360], { limits: "binomial" }).beyond // => [3]
 *
 * Source: W. A. Shewhart; NIST/SEMATECH e-Handbook 6.3.3.2; D. B. Laney, Quality Engineering 14
 * (2002) 531–537.
 */
export function proportionChart(
  counts: readonly number[],
  sizes: readonly number[],
  options: {
    readonly limits?: "binomial" | "Laney" | "by dispersion";
    readonly sigmas?: number;
  } = {},
): ProportionChart {
  const where = "proportionChart";
  requireEntries(where, "counts", counts, "a list of numbers");
  requireEntries(where, "sizes", sizes, "a list of numbers");
  requireObject(where, "options", options, "an object of options, or leave it out");
  requireCounts(where, counts, sizes, "size");
  const wanted = requireOneOf(where, "limits", options.limits ?? "by dispersion", [
    "binomial",
    "Laney",
    "by dispersion",
  ]);
  const sigmas = requireNumber(where, "sigmas", options.sigmas ?? 3, { above: 0, max: 6 });
  const mean = sum(counts) / sum(sizes);
  const shares = counts.map((count, i) => count / (sizes[i] ?? 1));
  const sds = sizes.map((size) => Math.sqrt((mean * (1 - mean)) / size));
  const scores = shares.map((share, i) => (sds[i] === 0 ? 0 : (share - mean) / (sds[i] ?? 1)));
  const ranges = scores.slice(1).map((score, i) => Math.abs(score - (scores[i] ?? 0)));
  const dispersion = sum(ranges) / ranges.length / meanRangeOfTwo;
  const laney = wanted === "Laney" || (wanted === "by dispersion" && dispersion > 1.2);
  const factor = sigmas * (laney ? dispersion : 1);
  const lower = sds.map((sd) => Math.max(0, mean - factor * sd));
  const upper = sds.map((sd) => Math.min(1, mean + factor * sd));
  return {
    mean,
    shares,
    lower,
    upper,
    scores,
    dispersion,
    limits: laney ? "Laney" : "binomial",
    beyond: shares.flatMap((p, i) => (p > (upper[i] ?? 1) || p < (lower[i] ?? 0) ? [i] : [])),
    warnings: warnings(mean, sizes),
  };
}

function warnings(mean: number, sizes: readonly number[]): string[] {
  if (mean === 0 || mean === 1) return ["All days are alike: there is nothing to chart."];
  const small = sizes.filter((size) => size * mean < 5).length;
  return small > 0
    ? [
        `On ${small} ${small === 1 ? "day" : "days"} fewer than 5 remakes are expected: the limits are rough; put days together.`,
      ]
    : [];
}
