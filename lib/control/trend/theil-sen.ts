import { requireEntries, requireNumber } from "../../input/index.ts";
import { normalQuantile } from "../../numerics/index.ts";
import { mannKendall } from "./mann-kendall.ts";
import { requireSeries } from "./require-series.ts";

/** A line through the middle of all pairs. */
export interface TheilSenTrend {
  /** Median of the slopes of all pairs, per unit of time. */
  readonly slope: number;
  readonly slopeInterval: readonly [number, number];
  /** Median of value − slope·time. */
  readonly intercept: number;
  readonly confidence: number;
}

/** So many pairs need 100 MB; beyond, thin the readings (one a day) first. */
const MOST_READINGS = 5000;

/**
 * Theil–Sen slope with Sen's interval: the median of the slopes of all pairs, which a contaminated day
 * hardly moves.
 *
 * The interval's ends are the slopes of rank (N ∓ z·√Var S)/2 among the N pairs, interpolated.
 *
 * @param times in order, in any unit (days)
 * @param values as many readings, 4 to 5,000
 * @param options `confidence`, 0.5 to 0.999, default 0.95
 * @returns slope with interval, and intercept
 * @throws InputError if times are not in order or there are too few or too many readings
 *
 * @example
 * theilSen([0, 1, 2, 3, 4], [1, 3, 5, 90, 9]).slope // => 2
 *
 * Source: P. K. Sen, Journal of the American Statistical Association 63 (1968) 1379–1389; US EPA,
 * Unified Guidance (2009), ch. 17.
 */
export function theilSen(
  times: readonly number[],
  values: readonly number[],
  options: { readonly confidence?: number } = {},
): TheilSenTrend {
  requireEntries("theilSen", "times", times, "a list of numbers");
  requireEntries("theilSen", "values", values, "a list of numbers");
  const confidence = requireNumber("theilSen", "confidence", options.confidence ?? 0.95, {
    min: 0.5,
    max: 0.999,
  });
  requireSeries("theilSen", times, values, 4);
  requireNumber("theilSen", "number of readings", values.length, {
    max: MOST_READINGS,
    hint: "use one reading a day",
  });
  const n = values.length;
  const slopes = new Float64Array((n * (n - 1)) / 2);
  let k = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      slopes[k++] = ((values[j] ?? 0) - (values[i] ?? 0)) / ((times[j] ?? 0) - (times[i] ?? 0));
    }
  }
  slopes.sort();
  const reach = normalQuantile((1 + confidence) / 2) * Math.sqrt(mannKendall(values).varianceOfS);
  const slope = atRank(slopes, (slopes.length + 1) / 2);
  const rests = Float64Array.from(values, (v, i) => v - slope * (times[i] ?? 0)).sort();
  return {
    slope,
    slopeInterval: [
      atRank(slopes, (slopes.length - reach) / 2),
      atRank(slopes, (slopes.length + reach) / 2 + 1),
    ],
    intercept: atRank(rests, (n + 1) / 2),
    confidence,
  };
}

/** The value of rank 1 … n, between two of them by interpolation. */
function atRank(sorted: Float64Array, rank: number): number {
  const inside = Math.min(sorted.length, Math.max(1, rank));
  const below = sorted[Math.floor(inside) - 1] ?? Number.NaN;
  const above = sorted[Math.ceil(inside) - 1] ?? Number.NaN;
  return below + (inside - Math.floor(inside)) * (above - below);
}
