import { requireNumber } from "../../input/index.ts";
import { linearTrend } from "../trend/linear-trend.ts";

/** How much of the control limits is only the densitometer. */
export interface GaugeShare {
  /** Standard deviation of the bath and the strips alone, the gauge taken out. */
  readonly processSd: number;
  /** Share of the variance between strips that is the densitometer's, 0 to 1. */
  readonly shareOfVariance: number;
  /** How much narrower the limits would be with a perfect densitometer, 0 to 1. */
  readonly limitsNarrowerBy: number;
  readonly warnings: readonly string[];
}

/**
 * What share of the statistical control limits is only the densitometer.
 *
 * @param gaugeSd standard deviation of the gauge, density, at least 0
 * @param stripSd standard deviation between strips in control (from the moving range), density
 * @returns the process's own standard deviation and the shares
 * @throws InputError if a number is out of range
 *
 * @example
 * gaugeShareOfLimits(0.006, 0.010).shareOfVariance // => 0.36
 *
 * Source: AIAG, Measurement Systems Analysis, 4th ed. 2010, ch. II (gauge against process variation).
 */
export function gaugeShareOfLimits(gaugeSd: number, stripSd: number): GaugeShare {
  requireNumber("gaugeShareOfLimits", "gaugeSd", gaugeSd, { min: 0, unit: "density" });
  requireNumber("gaugeShareOfLimits", "stripSd", stripSd, { above: 0, unit: "density" });
  const shareOfVariance = Math.min(1, (gaugeSd / stripSd) ** 2);
  const processSd = stripSd * Math.sqrt(1 - shareOfVariance);
  return {
    processSd,
    shareOfVariance,
    limitsNarrowerBy: 1 - processSd / stripSd,
    warnings:
      gaugeSd > stripSd
        ? [
            "The densitometer alone scatters more than the strips do: study and chart do not belong together.",
          ]
        : shareOfVariance > 0.3
          ? [
              "More than 30 % of the variance is the densitometer's: read each patch twice and take the mean.",
            ]
          : [],
  };
}

/** Drift of a densitometer's zero. */
export interface ZeroDrift {
  readonly perDay: number;
  readonly perDayInterval: readonly [number, number];
  readonly finding: "drifts" | "no drift to speak of";
  /** Days until the zero is off by the tolerance, from the last reading, if it drifts. */
  readonly daysToTolerance?: number;
}

/**
 * Drift of the densitometer's zero from readings of its calibration patch.
 *
 * @param days in order
 * @param readings of the same patch, density, at least 5
 * @param tolerance how far the zero may wander, density, greater than 0; default 0.02 (common practice,
 *   no source)
 * @returns drift a day with interval, and when the tolerance is used up
 * @throws InputError if days are not in order or there are too few readings
 *
 * @example
 * zeroDrift([0, 7, 14, 21, 28], [0.000, 0.003, 0.003, 0.006, 0.008]).finding // => "drifts"
 *
 * Source: US EPA, Unified Guidance (2009), 17.3.1 (trend of a calibration reading).
 */
export function zeroDrift(
  days: readonly number[],
  readings: readonly number[],
  tolerance = 0.02,
): ZeroDrift {
  requireNumber("zeroDrift", "number of readings", readings.length, { min: 5 });
  requireNumber("zeroDrift", "tolerance", tolerance, { above: 0, unit: "density" });
  const { slope, slopeInterval, pValue, intercept } = linearTrend(days, readings);
  const drifts = pValue <= 0.05 && slope !== 0;
  const now = intercept + slope * (days.at(-1) ?? 0) - (readings[0] ?? 0);
  const left = Math.max(0, tolerance - Math.sign(slope) * now);
  return {
    perDay: slope,
    perDayInterval: slopeInterval,
    finding: drifts ? "drifts" : "no drift to speak of",
    ...(drifts ? { daysToTolerance: left / Math.abs(slope) } : {}),
  };
}
