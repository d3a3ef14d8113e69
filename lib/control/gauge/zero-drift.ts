import { requireEntries, requireNumber } from "../../input/index.ts";
import { limitCrossing } from "../trend/limit-crossing.ts";
import { linearTrend } from "../trend/linear-trend.ts";

/** Drift of a densitometer's zero. */
export interface ZeroDrift {
  readonly perDay: number;
  readonly perDayInterval: readonly [number, number];
  readonly finding: "drifts" | "no drift to speak of";
  /** How far the line stands off the patch's value on the day of the last reading, density. */
  readonly offNow: number;
  /** Days until the line is off by the tolerance, from the last reading, if it drifts; 0 if it is. */
  readonly daysToTolerance?: number;
  /** 95 % interval of that day (Fieller), where it is bounded and ahead. */
  readonly daysToToleranceInterval?: readonly [number, number];
}

/**
 * Drift of the densitometer's zero from readings of its calibration patch.
 *
 * A line through the readings, r = a + b·day; the tolerance is used up where it reaches
 * nominal ± tolerance. The patch's own value counts, not the first reading: that one has the noise of
 * any other, and may have been off already.
 *
 * @param days in order
 * @param readings of the same patch, density, at least 5
 * @param tolerance how far the zero may be off, density, greater than 0; default 0.02 (common practice,
 *   no source)
 * @param nominal value of the patch, density; default 0, the zero itself
 * @returns drift a day with interval, how far it is off, and when the tolerance is used up
 * @throws InputError if days are not in order or there are too few readings
 *
 * @example
 * zeroDrift([0, 7, 14, 21, 28], [0.000, 0.003, 0.003, 0.006, 0.008]).daysToTolerance // => 44.947
 *
 * Source: US EPA, Unified Guidance (2009), 17.3.1 (trend of a calibration reading).
 */
export function zeroDrift(
  days: readonly number[],
  readings: readonly number[],
  tolerance = 0.02,
  nominal = 0,
): ZeroDrift {
  const where = "zeroDrift";
  requireEntries(where, "days", days, "a list of numbers");
  requireEntries(where, "readings", readings, "a list of numbers");
  requireNumber(where, "number of readings", readings.length, { min: 5 });
  requireNumber(where, "tolerance", tolerance, { above: 0, unit: "density" });
  requireNumber(where, "nominal", nominal, { unit: "density" });
  const trend = linearTrend(days, readings);
  const { slope, slopeInterval, pValue, intercept } = trend;
  const last = days.at(-1) ?? 0;
  const offNow = intercept + slope * last - nominal;
  const drifts = pValue <= 0.05 && slope !== 0;
  const finding = drifts ? "drifts" : "no drift to speak of";
  const result = { perDay: slope, perDayInterval: slopeInterval, finding, offNow } as const;
  if (!drifts) return result;
  if (Math.abs(offNow) >= tolerance) return { ...result, daysToTolerance: 0 };
  const crossing = limitCrossing(trend, nominal + Math.sign(slope) * tolerance);
  const [from, to] = crossing.interval ?? [];
  return {
    ...result,
    daysToTolerance: (crossing.time ?? last) - last,
    ...(from === undefined || to === undefined
      ? {}
      : { daysToToleranceInterval: [Math.max(0, from - last), to - last] }),
  };
}
