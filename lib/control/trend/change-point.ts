import { requireEntries, requireNumber } from "../../input/index.ts";
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
  /** Readings that may be the first after the change (95 %): the moments about as likely as the likeliest, and those between. */
  readonly firstAfterInterval: readonly [number, number];
}

/** Of the interval of the moment. */
const CONFIDENCE = 0.95;

/**
 * Change of level in a series: Pettitt's rank test for the moment, the confidence that there was one
 * at all from shuffled cumulative sums, and an interval of the moment by likelihood.
 *
 * U(t) = Σ sgn(xᵢ − xⱼ) over i ≤ t < j; K = max |U|; p ≈ 2·exp(−6K²/(n³ + n²)). With RSS(t) what two
 * levels leave over, the interval holds all t with (n/2)·ln(RSS(t)/min RSS) ≤ c, 1 − (1 − e^−c)² = 0.05.
 *
 * @param values readings in order of time, 8 to 5,000
 * @param options `draws` of shuffled series, 200 to 20,000 (default 1,000), and `seed`
 * @returns the moment, levels before and after, probability, confidence and interval
 * @throws InputError if there are too few readings or one is not finite
 *
 * @example
 * changePoint([1, 2, 1, 2, 1, 2, 5, 6, 5, 6, 5, 6]).firstAfter // => 6
 *
 * Source: A. N. Pettitt, Applied Statistics 28 (1979) 126–135; W. A. Taylor, Change-Point Analysis
 * (2000) for the shuffled cumulative sums; D. Siegmund, International Statistical Review 56 (1988)
 * 31–48 (from memory) for the interval.
 */
export function changePoint(
  values: readonly number[],
  options: { readonly draws?: number; readonly seed?: number } = {},
): ChangePoint {
  const where = "changePoint";
  requireEntries(where, "values", values, "a list of numbers");
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
  // As wide but for rounding is not less wide.
  const width = cumulativeWidth(values) * (1 - 1e-9);
  let narrower = 0;
  const series = [...values];
  for (let draw = 0; draw < draws; draw++) {
    shuffle(series, random.integer);
    if (cumulativeWidth(series) < width) narrower++;
  }
  const moments = [firstAfter, ...likelyMoments(values)];
  return {
    firstAfter,
    k,
    pValue: Math.min(1, 2 * Math.exp((-6 * k * k) / (n ** 3 + n ** 2))),
    meanBefore,
    meanAfter,
    confidence: narrower / draws,
    firstAfterInterval: [Math.min(...moments), Math.max(...moments)],
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

/**
 * Moments whose two levels leave hardly more over than the best. On either side of the true moment the
 * log likelihood falls like a random walk, whose highest point is exponential with mean 1: the better
 * of two is above c with probability 1 − (1 − e^−c)².
 */
function likelyMoments(values: readonly number[]): number[] {
  const n = values.length;
  const first = values[0] ?? 0;
  // From the first reading on, so that equal readings leave nothing over and not a rounding error.
  const x = values.map((v) => v - first);
  const mean = average(x);
  const total = x.reduce((sum, v) => sum + (v - mean) ** 2, 0);
  let sum = 0;
  const left = x.slice(0, -1).map((v, i) => {
    sum += v - mean;
    return Math.max(0, total - (n * sum ** 2) / ((i + 1) * (n - i - 1)));
  });
  const farthest = -Math.log(1 - Math.sqrt(CONFIDENCE));
  const most = Math.min(...left) * Math.exp((2 * farthest) / n) + 1e-12 * total;
  return left.flatMap((each, i) => (each <= most ? [i + 1] : []));
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
