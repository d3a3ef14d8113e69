import { InputError, requireNumber, requireObject, requireOneOf } from "../../input/index.ts";
import { requireBase } from "./base-period.ts";
import { meanRangeOfTwo, rangeSdOfTwo } from "./chart-constants.ts";
import { estimateSigma } from "./estimate-sigma.ts";
import { movingRanges } from "./moving-range.ts";
import { type Readings, requireReadings, restartLookup } from "./readings.ts";
import { baseWarnings } from "./statistical-limits-warnings.ts";

/** How sigma is estimated from the base period. */
export type SigmaSource = "mean moving range" | "median moving range" | "standard deviation";

/**
 * Limits computed from the lab's own readings in a stated base period: what the process does when
 * left alone. They know nothing of what pictures can bear: that is what `ProcessLimits` are for.
 */
export interface StatisticalLimits {
  readonly kind: "statistical limits";
  /** Centre line of the individuals chart. */
  readonly centre: number;
  /** Short-term standard deviation of one reading. */
  readonly sigma: number;
  /** Centre + width · sigma. */
  readonly upperLimit: number;
  /** Centre − width · sigma. */
  readonly lowerLimit: number;
  /** Mean of the moving ranges of two: d2 · sigma. */
  readonly movingRangeCentre: number;
  /** Upper limit of the moving range: (d2 + width · d3) · sigma. */
  readonly movingRangeUpperLimit: number;
  /** Limits stand this many sigma from the centre. */
  readonly widthSigma: number;
  /** Positions of the base period's first and last reading in the series. */
  readonly baseFirst: number;
  readonly baseLast: number;
  /** Number of readings used. */
  readonly baseReadings: number;
  readonly sigmaFrom: SigmaSource | "prespecified";
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/** Options of `statisticalLimits`. */
export interface StatisticalLimitsOptions {
  /** Positions of the base period's first and last reading, both included. Default: all. */
  readonly base?: { readonly first: number; readonly last: number };
  /** Positions left out of the base period because their cause is known. */
  readonly exclude?: readonly number[];
  /** Positions before which a moving range must not reach back (batch change, gap). */
  readonly restartAt?: readonly number[];
  /** Fewer readings than this are refused. Default 20 (common practice, no source); at least 2. */
  readonly minimumReadings?: number;
  /** Default `"mean moving range"`. */
  readonly sigmaFrom?: SigmaSource;
  /** Limits stand this many sigma from the centre. Default 3. */
  readonly widthSigma?: number;
  /** A centre line to use instead of the base period's mean, e.g. 0 for deviations from aim. */
  readonly centre?: number;
}

/**
 * Statistical limits for individual readings, from a stated base period.
 *
 * `centre = x̄`, `σ = MR̄/d2` with d2 = 2/√π exactly (printed tables round it to 1.128, which moves a
 * limit by 0.03 % of its distance from the centre), limits `centre ± 3σ`; moving range: centre
 * `d2 σ`, upper limit `(d2 + 3 d3) σ`. Or σ from the median moving range over 0.953873, or from the
 * sample standard deviation over c4.
 *
 * @param values readings in the order of time, in any unit
 * @param options base period, exclusions, how sigma is found, width
 * @returns limits in the unit of the readings
 * @throws InputError if the base period is too short or lies outside the series, or if all its
 * readings (or all but a few, for the median) are equal, so that there is no variation to judge by
 *
 * @example
 * const flow = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
 * statisticalLimits(flow, { minimumReadings: 10 }).upperLimit // => 55.8024
 *
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2; ISO 7870-2:2013, individuals.
 */
export function statisticalLimits(
  values: Readings,
  options: StatisticalLimitsOptions = {},
): StatisticalLimits {
  const where = "statisticalLimits";
  requireObject(where, "options", options, "an object of options, or leave it out");
  requireReadings(where, "values", values, 1);
  const sigmaFrom = requireOneOf(where, "sigmaFrom", options.sigmaFrom ?? "mean moving range", [
    "mean moving range",
    "median moving range",
    "standard deviation",
  ]);
  const width = requireNumber(where, "widthSigma", options.widthSigma ?? 3, { above: 0 });
  const base = requireBase(where, values, options);
  const restart = restartLookup(where, options.restartAt, values.length);
  const ranges = movingRanges(values, { ...base, skip: base.excluded, restart }).values;
  const mean = base.readings.reduce((sum, x) => sum + x, 0) / base.readings.length;
  const sigma = estimateSigma(base.readings, mean, ranges, sigmaFrom);
  if (sigma <= 1e-12 * Math.abs(mean) || sigma === 0) {
    const advice =
      sigmaFrom === "median moving range" && ranges.some((r) => r > 0)
        ? 'more than half the moving ranges are zero; use sigmaFrom "mean moving range" or read to three decimals'
        : "its readings are all equal; choose a base period in which they vary, or read to three decimals";
    throw new InputError(where, "sigma of the base period", 0, advice);
  }
  const centre =
    options.centre === undefined ? mean : requireNumber(where, "centre", options.centre);
  const limits = limitsAround(centre, sigma, width);
  return {
    ...limits,
    baseFirst: base.first,
    baseLast: base.last,
    baseReadings: base.readings.length,
    sigmaFrom,
    assumptions: [
      "readings vary independently and about normally in the base period",
      `sigma is the short-term variation (${sigmaFrom})`,
    ],
    warnings: baseWarnings(base, mean, limits, ranges),
  };
}

/** The limits that follow from a centre, a sigma and a width. */
export function limitsAround(centre: number, sigma: number, widthSigma: number) {
  return {
    kind: "statistical limits" as const,
    centre,
    sigma,
    upperLimit: centre + widthSigma * sigma,
    lowerLimit: centre - widthSigma * sigma,
    movingRangeCentre: meanRangeOfTwo * sigma,
    movingRangeUpperLimit: (meanRangeOfTwo + widthSigma * rangeSdOfTwo) * sigma,
    widthSigma,
  };
}
