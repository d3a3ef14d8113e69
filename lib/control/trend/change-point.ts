import { requireNumber } from "../../input/index.ts";
import { seededRandom } from "../../numerics/index.ts";

/** A moment at which the level of a series may have changed. */
export interface ChangePoint {
  /** Number of readings before the change: the reading with this index is the first after it. */
  readonly firstAfter: number;
  /** Pettitt's K, the largest |U|. */
  readonly k: number;
  /** Pettitt's approximate probability of so large a K without a change, at most 1. */
  readonly pValue: number;
  readonly meanBefore: number;
  readonly meanAfter: number;
  /** Share of shuffled series whose cumulative sum ranges less widely: how sure it is that there was a change. */
  readonly confidence: number;
  /** Readings that may be the first after the change (95 %): from the spread of the estimate over resampled series. */
  readonly firstAfterInterval: readonly [number, number];
}

/**
 * Change of level in a series: Pettitt's rank test for the moment, the confidence that there was one
 * at all from shuffled cumulative sums, and an interval of the moment from resampled residuals.
 *
 * U(t) = Σ sgn(xᵢ − xⱼ) over i ≤ t < j; K = max |U|; p ≈ 2·exp(−6K²/(n³ + n²)).
 *
 * @param values readings in order of time, 8 to 5,000
 * @param options `draws` of shuffled and resampled series, 200 to 20,000 (default 1,000), and `seed`
 * @returns the moment, levels before and after, probability, confidence and interval
 * @throws InputError if there are too few readings or one is not finite
 *
 * @example
 * changePoint([1, 2, 1, 2, 1, 2, 5, 6, 5, 6, 5, 6]).firstAfter // => 6
 *
 * Source: A. N. Pettitt, Applied Statistics 28 (1979) 126–135; W. A. Taylor, Change-Point Analysis
 * (2000) for the shuffled cumulative sums.
 */
export function changePoint(
  values: readonly number[],
  options: { readonly draws?: number; readonly seed?: number } = {},
): ChangePoint {
  const where = "changePoint";
  const n = requireNumber(where, "number of readings", values.length, { min: 8, max: 5000 });
  const draws = requireNumber(where, "draws", options.draws ?? 1000, {
    min: 200,
    max: 20_000,
    whole: true,
  });
  const random = seededRandom(options.seed ?? 1);
  values.forEach((v, i) => {
    requireNumber(where, `values[${i}]`, v);
  });
  const u = pettittSums(values);
  const at = u.reduce((best, each, i) => (Math.abs(each) > Math.abs(u[best] ?? 0) ? i : best), 0);
  const firstAfter = at + 1;
  const k = Math.abs(u[at] ?? 0);
  const [before, after] = [values.slice(0, firstAfter), values.slice(firstAfter)];
  const [meanBefore, meanAfter] = [average(before), average(after)];
  const width = cumulativeWidth(values);
  let narrower = 0;
  const moments: number[] = [];
  const series = [...values];
  for (let draw = 0; draw < draws; draw++) {
    shuffle(series, random.integer);
    if (cumulativeWidth(series) < width) narrower++;
    const resampled = values.map((_, i) => {
      const side = i < firstAfter ? before : after;
      return side[random.integer(0, side.length - 1)] ?? 0;
    });
    moments.push(leastSquaresMoment(resampled));
  }
  moments.sort((a, b) => a - b);
  return {
    firstAfter,
    k,
    pValue: Math.min(1, 2 * Math.exp((-6 * k * k) / (n ** 3 + n ** 2))),
    meanBefore,
    meanAfter,
    confidence: narrower / draws,
    firstAfterInterval: [
      moments[Math.floor(0.025 * draws)] ?? firstAfter,
      moments[Math.ceil(0.975 * draws) - 1] ?? firstAfter,
    ],
  };
}

/** U(t) for t = 1 … n − 1, from ranks: U(t) = 2·Σ rank − t·(n + 1). */
function pettittSums(values: readonly number[]): number[] {
  const sorted = [...values].sort((a, b) => a - b);
  const first = new Map<number, number>();
  const last = new Map<number, number>();
  sorted.forEach((v, i) => {
    if (!first.has(v)) first.set(v, i + 1);
    last.set(v, i + 1);
  });
  let sum = 0;
  return values.slice(0, -1).map((v) => {
    // Ties share the mean of their ranks.
    const rank = ((first.get(v) ?? 0) + (last.get(v) ?? 0)) / 2;
    sum += 2 * rank - (values.length + 1);
    return sum;
  });
}

/** Highest less lowest cumulative sum of the deviations from the mean. */
function cumulativeWidth(values: readonly number[]): number {
  const mean = average(values);
  let [sum, high, low] = [0, 0, 0];
  for (const v of values) {
    sum += v - mean;
    high = Math.max(high, sum);
    low = Math.min(low, sum);
  }
  return high - low;
}

/** First reading after the split that leaves the smallest sum of squares. */
function leastSquaresMoment(values: readonly number[]): number {
  const n = values.length;
  const total = values.reduce((sum, v) => sum + v, 0);
  let sum = 0;
  let [best, gain] = [1, Number.NEGATIVE_INFINITY];
  for (let t = 1; t < n; t++) {
    sum += values[t - 1] ?? 0;
    const between = (sum - (t * total) / n) ** 2 / (t * (n - t));
    if (between > gain) [best, gain] = [t, between];
  }
  return best;
}

function shuffle(list: number[], integer: (min: number, max: number) => number): void {
  for (let i = list.length - 1; i > 0; i--) {
    const j = integer(0, i);
    [list[i], list[j]] = [list[j] ?? 0, list[i] ?? 0];
  }
}

function average(values: readonly number[]): number {
  return values.reduce((sum, v) => sum + v, 0) / values.length;
}
