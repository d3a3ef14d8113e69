import { requireNumber } from "../../input/index.ts";

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
