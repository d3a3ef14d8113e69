import { requireNumber } from "../../input/index.ts";
import { COARSE_ERRORS } from "./rate-fit.ts";
import { STEP_PARAMETERS } from "./rate-intervals.ts";
import { evenlySpaced, momentGrid, rateSurface } from "./rate-surface.ts";
import { type TuningSeries, weightedSeries } from "./strip-series.ts";

/** How much worse than the best every error and moment fits, in residual variances. */
export interface RateProfile {
  /** Best of its moments for each error. */
  readonly byError: readonly { readonly error: number; readonly ratio: number }[];
  /** Best of its errors for each moment. */
  readonly byMoment: readonly { readonly turnovers: number; readonly ratio: number }[];
  readonly errors: readonly number[];
  readonly moments: readonly number[];
  /** All pairs, one row an error. */
  readonly surface: readonly (readonly number[])[];
}

const MOMENTS = 121;

/**
 * The likelihood of an error and a moment of change, as `rateChange` sees it: how much the sum of
 * squares grows over its least, in residual variances. An interval of some 95 % is where it stays
 * below 3.8 or what `rateChange` simulated.
 *
 * @param series turnovers, deviations, sensitivity and noise; at least 10 strips
 * @param options.errors lowest and highest error, within −0.98 and 1; default the whole range;
 *   options.moments first and last moment in turnovers, default those of the strips
 * @returns profiles over errors and moments, and the surface they are cut from
 * @throws InputError if the series is too short, or errors are out of range
 *
 * @example
 * const turnovers = Array.from({ length: 40 }, (_, i) => i * 0.1);
 * const deviations = turnovers.map((n, i) => [(n > 2 ? -0.06 * (1 - Math.exp(2 - n)) : 0) + 0.004 * Math.sin(7 * i)]);
 * const { byError } = rateProfile({ turnovers, deviations, sensitivity: [0.4], noise: [[0.0001]] });
 * byError.find(({ ratio }) => ratio === 0).error.toFixed(2) // => "-0.14"
 *
 * Source: as `rateChange`.
 */
export function rateProfile(
  series: TuningSeries,
  options: {
    readonly errors?: readonly [number, number];
    readonly moments?: readonly [number, number];
  } = {},
): RateProfile {
  const where = "rateProfile";
  const { turnovers, z } = weightedSeries(where, series);
  requireNumber(where, "number of strips", z.length, { min: 10 });
  const [low, high] = options.errors ?? [-0.98, 1];
  requireNumber(where, "lowest error", low, { min: -0.98, max: 0.99 });
  requireNumber(where, "highest error", high, { above: low, max: 1 });
  const errors = options.errors === undefined ? COARSE_ERRORS : evenlySpaced(low, high, 100);
  const [first, last] = [turnovers[0] ?? 0, turnovers.at(-1) ?? 0];
  const [from, to] = options.moments ?? [first, last];
  requireNumber(where, "first moment", from, {
    min: first,
    below: last,
    hint: "within the strips",
  });
  requireNumber(where, "last moment", to, { above: from, max: last, hint: "within the strips" });
  const moments = momentGrid(from, to, (to - from) / MOMENTS);
  const { rest } = rateSurface({ errors, moments }, turnovers, z);
  let least = Number.POSITIVE_INFINITY;
  for (const each of rest) least = Math.min(least, each);
  const variance = least / Math.max(1, z.length - STEP_PARAMETERS);
  const worse = (each: number) => (variance > 0 ? (each - least) / variance : 0);
  const surface = errors.map((_, e) =>
    Array.from(rest.subarray(e * moments.length, (e + 1) * moments.length), worse),
  );
  const lowest = (list: readonly number[]) => list.reduce((a, b) => Math.min(a, b));
  return {
    byError: errors.map((error, e) => ({ error, ratio: lowest(surface[e] ?? [0]) })),
    byMoment: moments.map((at, m) => ({
      turnovers: at,
      ratio: lowest(surface.map((row) => row[m] ?? Number.POSITIVE_INFINITY)),
    })),
    errors,
    moments,
    surface,
  };
}
