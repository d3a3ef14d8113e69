import { requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { studentTQuantile } from "../../numerics/index.ts";
import { requireCounts, sum } from "./attribute-counts.ts";

/** Counts of faults and of pieces made, one of each a day. */
export interface DailyShares {
  readonly counts: readonly number[];
  readonly sizes: readonly number[];
}

/** How much larger a share is in one period than in another. */
export interface ShareDifference {
  readonly before: number;
  readonly since: number;
  /** since − before, as a fraction of the pieces. */
  readonly difference: number;
  readonly interval: readonly [number, number];
  /** Whether the interval leaves out 0. */
  readonly plain: boolean;
  readonly days: readonly [number, number];
}

/**
 * Difference between the shares of faulty pieces in two periods of days. Days scatter more than
 * counting alone would have them, so each share's error comes from the days:
 * s² = Σ(y − p·n)² / (N²·(1 − 1/m)), and the interval from Student's t with Welch's degrees of freedom.
 *
 * @param before,since counts and sizes a day, at least 2 days each, days without pieces left out
 * @param options.confidence 0.5 to 0.999, default 0.95
 * @returns shares as fractions, their difference with its interval
 * @throws InputError for too few days, unequal lengths, or more faults than pieces
 *
 * @example
 * shareDifference({ counts: [10, 12], sizes: [1000, 1000] }, { counts: [21, 23], sizes: [1000, 1000] }).difference // => 0.011
 *
 * Source: W. G. Cochran, Sampling Techniques, 3rd edition 1977, section 2.11 (ratio estimate; from
 * memory); B. L. Welch, Biometrika 34 (1947) 28–35.
 */
export function shareDifference(
  before: DailyShares,
  since: DailyShares,
  options: { readonly confidence?: number } = {},
): ShareDifference {
  const where = "shareDifference";
  requireObject(where, "before", before, "an object with counts and sizes");
  requireEntries(where, "sizes", before.sizes, "a list of numbers");
  requireEntries(where, "counts", before.counts, "a list of numbers");
  requireObject(where, "since", since, "an object with counts and sizes");
  requireEntries(where, "sizes", since.sizes, "a list of numbers");
  requireEntries(where, "counts", since.counts, "a list of numbers");
  const confidence = requireNumber(where, "confidence", options.confidence ?? 0.95, {
    min: 0.5,
    max: 0.999,
  });
  const [a, b] = [shareOf(where, before), shareOf(where, since)];
  const difference = b.share - a.share;
  const variance = a.variance + b.variance;
  const degrees =
    variance > 0
      ? variance ** 2 / (a.variance ** 2 / (a.days - 1) + b.variance ** 2 / (b.days - 1))
      : a.days + b.days - 2;
  const half = Math.sqrt(variance) * studentTQuantile((1 + confidence) / 2, degrees);
  const interval = [difference - half, difference + half] as const;
  return {
    before: a.share,
    since: b.share,
    difference,
    interval,
    plain: interval[0] > 0 || interval[1] < 0,
    days: [a.days, b.days],
  };
}

function shareOf(where: string, { counts, sizes }: DailyShares) {
  requireCounts(where, counts, sizes, "size");
  const days = counts.length;
  const all = sum(sizes);
  const share = sum(counts) / all;
  const squares = sum(counts.map((count, i) => (count - share * (sizes[i] ?? 0)) ** 2));
  return { share, days, variance: squares / (all ** 2 * (1 - 1 / days)) };
}
