import { requireNumber } from "../../input/index.ts";
import { seededRandom } from "../../numerics/index.ts";
import { type ChangeTestOptions, changeTestOptions } from "./change-test-options.ts";
import { MOMENTS_PER_TURNOVER } from "./rate-change.ts";
import { momentGrid } from "./rate-surface.ts";
import { changeRatio, drawnQuantile } from "./simulated-ratios.ts";
import { fillNoise } from "./slow-noise.ts";
import { type TuningSeries, weightedSeries } from "./strip-series.ts";

/** When strips read one after the other would first have told. */
export interface RateAlarm {
  /** Index of the strip on which the alarm falls; null if it never does. */
  readonly strip: number | null;
  readonly turnovers: number | null;
  /** The test's statistic after each strip that was looked at, in residual variances. */
  readonly ratios: readonly { readonly strip: number; readonly ratio: number }[];
  /** What it has to exceed. */
  readonly threshold: number;
  readonly falseAlarms: number;
}

/**
 * The strip on which a change of rate would first have been called, had every strip been tested on
 * its day. Looking again and again finds something sooner or later, so the threshold is the one that
 * the largest of all these looks exceeds in the stated share of simulated unchanged lines.
 *
 * @param series turnovers, deviations, sensitivity and noise
 * @param options.firstLook index of the first strip that is looked at, at least 9; default 20
 * @param options.falseAlarms share of unchanged lines with any alarm at all, 0.001 to 0.5; default 0.05
 * @param options.draws simulated lines, 200 to 20,000, default 500; options.seed default 1;
 *   options.slowShare of the noise, 0 to 0.9, default 0 (see `slowShareOfNoise`)
 * @returns the strip of the alarm, the statistic after each strip, the threshold
 * @throws InputError if the series is too short or a number out of range
 *
 * @example
 * const turnovers = Array.from({ length: 40 }, (_, i) => i * 0.1);
 * const deviations = turnovers.map((n, i) => [(n > 2 ? -0.2 * (1 - Math.exp(2 - n)) : 0) + 0.004 * Math.sin(7 * i)]);
 * rateAlarm({ turnovers, deviations, sensitivity: [0.4], noise: [[0.0001]] }).strip // => 21
 *
 * Source: D. Siegmund, Sequential Analysis, 1985, ch. 3 (repeated significance tests; from memory);
 * thresholds simulated.
 */
export function rateAlarm(
  series: TuningSeries,
  options: ChangeTestOptions & { readonly firstLook?: number } = {},
): RateAlarm {
  const where = "rateAlarm";
  const { turnovers, z } = weightedSeries(where, series);
  const n = z.length;
  const firstLook = requireNumber(where, "firstLook", options.firstLook ?? 20, {
    min: 9,
    max: n - 1,
    whole: true,
    hint: "the index of a strip",
  });
  const { falseAlarms, draws, seed, slowShare } = changeTestOptions(where, options);
  const moments = momentGrid(turnovers[0] ?? 0, turnovers[n - 1] ?? 0, 1 / MOMENTS_PER_TURNOVER);
  const looks = Array.from({ length: n - firstLook }, (_, i) => {
    const strip = firstLook + i;
    const now = turnovers[strip] ?? 0;
    const possible = moments.filter((at) => at < now);
    return { strip, reached: turnovers.slice(0, strip + 1), possible };
  });
  const ratiosOf = (readings: readonly number[]) =>
    looks.map(({ strip, reached, possible }) =>
      changeRatio(reached, possible, readings.slice(0, strip + 1)),
    );
  const { normal } = seededRandom(seed);
  const noise = new Float64Array(n);
  const largest = Array.from({ length: draws }, () => {
    fillNoise(noise, turnovers, slowShare, normal);
    return ratiosOf(Array.from(noise)).reduce((a, b) => Math.max(a, b), 0);
  }).toSorted((a, b) => a - b);
  const threshold = drawnQuantile(largest, 1 - falseAlarms);
  const ratios = ratiosOf(z).map((ratio, i) => ({ strip: firstLook + i, ratio }));
  const strip = ratios.find(({ ratio }) => ratio > threshold)?.strip ?? null;
  return {
    strip,
    turnovers: strip === null ? null : (turnovers[strip] ?? null),
    ratios,
    threshold,
    falseAlarms,
  };
}
