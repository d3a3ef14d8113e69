import { requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { leastSquares, studentTCdf, studentTQuantile } from "../../numerics/index.ts";
import { requireSeries } from "./require-series.ts";

/** A least-squares line through readings in time. */
export interface LinearTrend {
  readonly slope: number;
  readonly slopeInterval: readonly [number, number];
  readonly slopeStandardError: number;
  /** Value of the line at time 0. */
  readonly intercept: number;
  readonly interceptStandardError: number;
  /** Two-sided probability of so steep a line without a trend. */
  readonly pValue: number;
  readonly residualSd: number;
  readonly readings: number;
  readonly meanTime: number;
  /** Σ(t − t̄)². */
  readonly timeSpread: number;
  readonly confidence: number;
}

/**
 * Least-squares trend of a series.
 *
 * @param times in order, in any unit (days)
 * @param values as many readings, at least 3
 * @param options `confidence` of the intervals, 0.5 to 0.999, default 0.95
 * @returns slope and intercept with their errors, and what `predictedAt` and `limitCrossing` need
 * @throws InputError if times are not in order or there are too few readings
 *
 * @example
 * linearTrend([0, 1, 2, 3], [1, 3, 4, 6]).slope // => 1.6
 *
 * Source: US EPA, Unified Guidance (2009), 17.3.1.
 */
export function linearTrend(
  times: readonly number[],
  values: readonly number[],
  options: { readonly confidence?: number } = {},
): LinearTrend {
  requireEntries("linearTrend", "times", times, "a list of numbers");
  requireEntries("linearTrend", "values", values, "a list of numbers");
  const confidence = requireNumber("linearTrend", "confidence", options.confidence ?? 0.95, {
    min: 0.5,
    max: 0.999,
  });
  requireSeries("linearTrend", times, values, 3);
  const n = times.length;
  const meanTime = times.reduce((sum, t) => sum + t / n, 0);
  const centred = times.map((t) => t - meanTime);
  // Equal readings have no slope at all, not one of rounding errors.
  const level = values.every((v) => v === values[0]) ? (values[0] ?? 0) : 0;
  const fit = leastSquares({ rows: centred.map((t) => [1, t]), y: values.map((v) => v - level) });
  const [aboveLevel = Number.NaN, slope = Number.NaN] = fit.coefficients;
  const mean = level + aboveLevel;
  const timeSpread = centred.reduce((sum, t) => sum + t * t, 0);
  const slopeStandardError = fit.standardErrors[1] ?? Number.NaN;
  const reach = slopeStandardError * studentTQuantile((1 + confidence) / 2, n - 2);
  const score = slopeStandardError === 0 ? Number.MAX_VALUE : Math.abs(slope) / slopeStandardError;
  return {
    slope,
    slopeInterval: [slope - reach, slope + reach],
    slopeStandardError,
    intercept: mean - slope * meanTime,
    interceptStandardError: fit.residualSd * Math.sqrt(1 / n + meanTime ** 2 / timeSpread),
    pValue: slope === 0 ? 1 : 2 * studentTCdf(-score, n - 2),
    residualSd: fit.residualSd,
    readings: n,
    meanTime,
    timeSpread,
    confidence,
  };
}

/** A value of the trend line with an interval. */
export interface TrendPrediction {
  readonly value: number;
  readonly interval: readonly [number, number];
}

/**
 * Value of a trend line at a time, with the interval of the line or of one new reading.
 *
 * @param trend from `linearTrend`
 * @param time in the trend's unit
 * @param of `"reading"` (default): where one new reading will lie; `"line"`: where the mean lies
 * @returns value and interval at the trend's confidence
 * @throws InputError if `time` is not finite
 *
 * @example
 * predictedAt(linearTrend([0, 1, 2, 3], [1, 3, 4, 6]), 4).value // => 7.5
 *
 * Source: N. R. Draper and H. Smith, Applied Regression Analysis, 3rd ed. 1998, 3.1.
 */
export function predictedAt(
  trend: LinearTrend,
  time: number,
  of: "reading" | "line" = "reading",
): TrendPrediction {
  requireObject(
    "predictedAt",
    "trend",
    trend,
    "an object with slope, slopeInterval, slopeStandardError, …",
  );
  requireTrend("predictedAt", trend);
  requireNumber("predictedAt", "time", time);
  const value = trend.intercept + trend.slope * time;
  const line = 1 / trend.readings + (time - trend.meanTime) ** 2 / trend.timeSpread;
  const sd = trend.residualSd * Math.sqrt(line + (of === "reading" ? 1 : 0));
  const reach = sd * studentTQuantile((1 + trend.confidence) / 2, trend.readings - 2);
  return { value, interval: [value - reach, value + reach] };
}

/** Lets a fitted line in. */
export function requireTrend(where: string, trend: LinearTrend): void {
  for (const key of ["slope", "intercept", "meanTime"] as const) {
    requireNumber(where, `trend.${key}`, trend[key]);
  }
  requireNumber(where, "trend.residualSd", trend.residualSd, { min: 0 });
  requireNumber(where, "trend.timeSpread", trend.timeSpread, { above: 0 });
}
