import { InputError, requireEntries, requireNumber } from "../../input/index.ts";
import { studentTQuantile } from "../../numerics/index.ts";
import type { DeliveredInterval } from "./delivered-rates.ts";

/** Measured against set volume over a number of days. */
export interface DeliveredError {
  /** delivered ÷ set − 1 */
  readonly error: number;
  readonly errorInterval: readonly [number, number];
  readonly setMl: number;
  readonly deliveredMl: number;
  readonly readings: number;
  readonly confidence: number;
}

/**
 * What a pump delivered against what it was set to, over the days from one date to another, from the
 * level of its replenisher tank.
 *
 * R = Σ delivered ÷ Σ set; u² = m·Σ(d − R·s)² / ((m − 1)·(Σs)²); interval R − 1 ± t(m − 1)·u
 *
 * A level that was read too high one evening takes back the next evening what it gave, so the true
 * interval is, if anything, narrower.
 *
 * @param intervals from `deliveredRates`
 * @param options.from first day, options.to last day, `YYYY-MM-DD`; default all; confidence 0.5 to
 *   0.999, default 0.95
 * @returns the error as a fraction with its interval
 * @throws InputError if fewer than 3 intervals between the days have both volumes
 *
 * @example
 * const readings = [0, 1, 2, 3].map((i) => ({ readAt: `2026-03-0${i + 1}T18:00`, counterStrokes: 300 * i, settingMlPerStroke: 5, deliveredMl: 1260 }));
 * const days = [2, 3, 4].map((d) => ({ date: `2026-03-0${d}`, areaM2: 2.5 }));
 * deliveredError(deliveredRates({ readings, days }).intervals).error // => -0.16
 *
 * Source: W. G. Cochran, Sampling Techniques, 3rd edition 1977, section 2.11 (ratio estimate; from
 * memory).
 */
export function deliveredError(
  intervals: readonly DeliveredInterval[],
  options: { readonly from?: string; readonly to?: string; readonly confidence?: number } = {},
): DeliveredError {
  const where = "deliveredError";
  requireEntries(where, "intervals", intervals);
  const confidence = requireNumber(where, "confidence", options.confidence ?? 0.95, {
    min: 0.5,
    max: 0.999,
  });
  const { from = "", to = "9999" } = options;
  const pairs = intervals.flatMap((each, i) => {
    const { setMl, deliveredMl } = each;
    if (setMl === null || deliveredMl === null || each.from < from || each.to > to) return [];
    requireNumber(where, `intervals[${i}].setMl`, setMl, { min: 0, unit: "mL" });
    requireNumber(where, `intervals[${i}].deliveredMl`, deliveredMl, { unit: "mL" });
    return [{ setMl, deliveredMl }];
  });
  const setMl = pairs.reduce((sum, each) => sum + each.setMl, 0);
  const m = pairs.length;
  if (m < 3 || setMl <= 0) {
    const advice = "write a longer span; measure what leaves the replenisher tank each evening";
    throw new InputError(where, "intervals with both volumes", m, advice);
  }
  const deliveredMl = pairs.reduce((sum, each) => sum + each.deliveredMl, 0);
  const ratio = deliveredMl / setMl;
  const squares = pairs.reduce((sum, p) => sum + (p.deliveredMl - ratio * p.setMl) ** 2, 0);
  const u = Math.sqrt((m * squares) / (m - 1)) / setMl;
  const half = u * studentTQuantile((1 + confidence) / 2, m - 1);
  return {
    error: ratio - 1,
    errorInterval: [ratio - 1 - half, ratio - 1 + half],
    setMl,
    deliveredMl,
    readings: m,
    confidence,
  };
}
