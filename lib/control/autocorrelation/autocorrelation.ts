import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { chiSquareCdf, normalQuantile } from "../../numerics/index.ts";
import { type Readings, requireReadings } from "../charts/readings.ts";

/** The correlation of readings with the one so many before. */
export interface LagCorrelation {
  readonly lag: number;
  readonly correlation: number;
  /** Half-width within which it lies, with the asked probability, if readings are independent. */
  readonly independentHalfWidth: number;
  /** Interval of the true correlation (Fisher's z; approximate). */
  readonly lower: number;
  readonly upper: number;
}

/** How readings hang together with those before. */
export interface Autocorrelation {
  readonly readings: number;
  readonly lags: readonly LagCorrelation[];
  /** Test that all these correlations are zero. */
  readonly ljungBox: {
    readonly statistic: number;
    readonly degreesOfFreedom: number;
    /** Probability of a statistic so large for independent readings. */
    readonly probability: number;
  };
  /** True if lag 1 lies outside its independent interval or the Ljung–Box test is below its level. */
  readonly correlated: boolean;
  readonly sentence: string;
  readonly warnings: readonly string[];
}

/** Options of `autocorrelation`. */
export interface AutocorrelationOptions {
  /** Lags to compute, 1 to a third of the readings. Default min(10, n/5). */
  readonly lags?: number;
  /** Probability of the intervals, above 0.5 and below 1. Default 0.95. */
  readonly confidence?: number;
}

/**
 * Autocorrelation of readings with intervals, and the Ljung–Box test.
 *
 * `r_k = Σ(x_t − x̄)(x_{t+k} − x̄)/Σ(x_t − x̄)²`; for independent readings r_k lies within
 * `± z/√n`; `Q = n(n+2) Σ r_k²/(n − k)` is then about chi-square with as many degrees of freedom as
 * lags. The interval of the true correlation is by Fisher's transformation, `tanh(atanh r ± z/√(n−3))`.
 *
 * @param values readings in the order of time, in any unit, at least 10; equally spaced in time for
 * the lags to mean anything
 * @param options number of lags, probability of the intervals
 * @returns correlation at every lag, the test, and whether charts for independent readings will mislead
 * @throws InputError for fewer than 10 readings, readings that are all equal, or too many lags
 *
 * @example
 * const wave = [1, 2, 3, 2, 1, 0, 1, 2, 3, 2, 1, 0];
 * autocorrelation(wave, { lags: 2 }).lags[0]?.correlation // => 0.386
 *
 * Source: G. M. Ljung and G. E. P. Box, Biometrika 65 (1978) 297–303; NIST/SEMATECH e-Handbook of
 * Statistical Methods, 1.3.5.12 and 6.4.4.8.
 */
export function autocorrelation(
  values: Readings,
  options: AutocorrelationOptions = {},
): Autocorrelation {
  const where = "autocorrelation";
  requireObject(where, "options", options, "an object of options, or leave it out");
  requireReadings(where, "values", values, 10);
  const n = values.length;
  const count = requireNumber(where, "lags", options.lags ?? Math.min(10, Math.floor(n / 5)), {
    min: 1,
    max: Math.floor(n / 3),
    whole: true,
    hint: "a third of the readings at most",
  });
  const confidence = requireNumber(where, "confidence", options.confidence ?? 0.95, {
    above: 0.5,
    below: 1,
  });
  const x = Array.from(values);
  const mean = x.reduce((sum, v) => sum + v, 0) / n;
  const d = x.map((v) => v - mean);
  const squares = d.reduce((sum, v) => sum + v * v, 0);
  if (!(squares > 1e-24 * n * Math.max(1, mean * mean))) {
    const advice = "its readings are all equal; there is nothing to correlate";
    throw new InputError(where, "variance of values", 0, advice);
  }
  const z = normalQuantile((1 + confidence) / 2);
  const lags = Array.from({ length: count }, (_, i) => {
    const lag = i + 1;
    let products = 0;
    for (let t = lag; t < n; t++) products += (d[t] ?? 0) * (d[t - lag] ?? 0);
    const correlation = products / squares;
    const centre = Math.atanh(Math.max(-0.999999, Math.min(0.999999, correlation)));
    const half = z / Math.sqrt(n - lag - 2);
    return {
      lag,
      correlation,
      independentHalfWidth: z / Math.sqrt(n),
      lower: Math.tanh(centre - half),
      upper: Math.tanh(centre + half),
    };
  });
  const statistic =
    n * (n + 2) * lags.reduce((sum, { lag, correlation: r }) => sum + (r * r) / (n - lag), 0);
  const probability = 1 - chiSquareCdf(statistic, count);
  const first = lags[0]?.correlation ?? 0;
  const correlated = Math.abs(first) > z / Math.sqrt(n) || probability < 1 - confidence;
  return {
    readings: n,
    lags,
    ljungBox: { statistic, degreesOfFreedom: count, probability },
    correlated,
    sentence: correlated
      ? `Neighbouring readings are correlated (lag 1: ${first.toFixed(2)}; Ljung–Box over ${count} lags: p ${told(probability)}): a chart for independent readings will ${first > 0 ? "signal falsely more" : "signal less"} often than its tables say.`
      : `No correlation to speak of (lag 1: ${first.toFixed(2)}; Ljung–Box over ${count} lags: p ${told(probability)}).`,
    warnings: [
      ...(n < 50 ? [`${n} readings tell correlation only roughly; 50 or more are wanted`] : []),
      ...(correlated && first > 0
        ? ["a trend or a step also looks like correlation: judge a period in which nothing changed"]
        : []),
    ],
  };
}

function told(probability: number): string {
  return probability < 0.001 ? "< 0.001" : probability.toFixed(3);
}
