import { requireNumber, requireObject, requireOneOf } from "../../input/index.ts";
import { studentTQuantile } from "../../numerics/index.ts";
import { type LinearTrend, requireTrend } from "./linear-trend.ts";

/** When a trend line reaches a limit. */
export interface LimitCrossing {
  /**
   * `"crossing"`: the interval is bounded. `"unbounded"`: a line that never reaches the limit fits the
   * readings too (Fieller's g ≥ 1), so no day can be named with confidence.
   */
  readonly state: "crossing" | "unbounded";
  /** Time at which the fitted line reaches the limit, in the trend's unit; absent for a flat line. */
  readonly time?: number;
  readonly interval?: readonly [number, number];
  /** t²·s²/(slope²·Σ(t − t̄)²): below 1 the slope is told apart from 0. */
  readonly g: number;
}

/**
 * The time at which a trend reaches a limit, with Fieller's interval: all times at which the line (or
 * one new reading) is compatible with the limit.
 *
 * @param trend from `linearTrend`
 * @param limit value of the limit, in the unit of the readings
 * @param of `"line"` (default): when the mean reaches it; `"reading"`: when a single reading may
 * @returns state, time and interval at the trend's confidence
 * @throws InputError if `limit` is not finite
 *
 * @example
 * limitCrossing(linearTrend([0, 1, 2, 3], [1, 3, 4, 6]), 10).time // => 5.5625
 *
 * Source: E. C. Fieller, Journal of the Royal Statistical Society B 16 (1954) 175–185.
 */
export function limitCrossing(
  trend: LinearTrend,
  limit: number,
  of: "line" | "reading" = "line",
): LimitCrossing {
  requireObject(
    "limitCrossing",
    "trend",
    trend,
    "an object with slope, slopeInterval, slopeStandardError, …",
  );
  requireTrend("limitCrossing", trend);
  requireNumber("limitCrossing", "limit", limit);
  requireOneOf("limitCrossing", "of", of, ["line", "reading"]);
  const { slope, meanTime, timeSpread, readings, residualSd, confidence } = trend;
  if (slope === 0) return { state: "unbounded", g: Number.MAX_VALUE };
  const t = studentTQuantile((1 + confidence) / 2, readings - 2);
  const g = (t * residualSd) ** 2 / (slope ** 2 * timeSpread);
  const height = limit - (trend.intercept + slope * meanTime);
  const time = meanTime + height / slope;
  if (g >= 1) return { state: "unbounded", time, g };
  const extra = 1 / readings + (of === "reading" ? 1 : 0);
  const centre = meanTime + height / slope / (1 - g);
  const reach =
    ((t * residualSd) / Math.abs(slope) / (1 - g)) *
    Math.sqrt((height / slope) ** 2 / timeSpread + extra * (1 - g));
  return { state: "crossing", time, interval: [centre - reach, centre + reach], g };
}
