import { requireNumber, requireObject, requireOneOf } from "../../input/index.ts";
import type { EwmaChart } from "./chart-results.ts";
import { strictlyBeyond } from "./on-the-line.ts";
import { type Readings, requireReadings, restartLookup } from "./readings.ts";

/** Options of `ewmaChart`. */
export interface EwmaOptions {
  /** Centre line and default starting value, in the unit of the readings. */
  readonly centre: number;
  /** Standard deviation of one reading, above 0. */
  readonly sigma: number;
  /** Weight of the newest reading, above 0 and at most 1. Default 0.2. */
  readonly lambda?: number;
  /** Limits stand this many standard deviations of the average from the centre. Default 2.86. */
  readonly widthSigma?: number;
  /** Average before the first reading. Default: the centre. */
  readonly start?: number;
  /** Limits that widen from the start (`"exact"`, default) or constant ones (`"asymptotic"`). */
  readonly limitForm?: "exact" | "asymptotic";
  /** Positions at which the average starts afresh. */
  readonly restartAt?: readonly number[];
}

/**
 * Exponentially weighted moving average: finds small lasting shifts sooner than single readings do.
 *
 * `z(i) = λ x(i) + (1 − λ) z(i−1)`, limits
 * `centre ± L σ √(λ/(2 − λ) · [1 − (1 − λ)^(2i)])`; asymptotic limits leave the bracket out.
 *
 * @param values readings in the order of time, at least one
 * @param options centre and sigma; λ (default 0.2) and L (default 2.86: with λ = 0.2 and asymptotic
 * limits an in-control process then signals falsely once in 371 readings, by the integral equation)
 * @returns averages and limits, one of each for every reading, and the positions strictly beyond
 * @throws InputError if an option is out of range or a reading is not finite
 *
 * @example
 * const options = { centre: 50, sigma: 2.0539, lambda: 0.3, widthSigma: 3 };
 * ewmaChart([52, 47, 53, 49.3], options).values // => [50.6, 49.52, 50.564, 50.1848]
 *
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4; S. W. Roberts, Technometrics 1
 * (1959) 239–250.
 */
export function ewmaChart(values: Readings, options: EwmaOptions): EwmaChart {
  const where = "ewmaChart";
  requireObject(where, "options", options, "an object with centre and sigma");
  requireReadings(where, "values", values, 1);
  const centre = requireNumber(where, "centre", options.centre);
  const sigma = requireNumber(where, "sigma", options.sigma, { above: 0 });
  const lambda = requireNumber(where, "lambda", options.lambda ?? 0.2, { above: 0, max: 1 });
  const width = requireNumber(where, "widthSigma", options.widthSigma ?? 2.86, { above: 0 });
  const start = requireNumber(where, "start", options.start ?? centre);
  const forms = ["exact", "asymptotic"] as const;
  const limitForm = requireOneOf(where, "limitForm", options.limitForm ?? "exact", forms);
  const restart = restartLookup(where, options.restartAt, values.length);

  const n = values.length;
  const averages = new Array<number>(n);
  const upperLimits = new Array<number>(n);
  const lowerLimits = new Array<number>(n);
  const beyond: number[] = [];
  const farWidth = width * sigma * Math.sqrt(lambda / (2 - lambda));
  const keep = (1 - lambda) ** 2;
  let average = start;
  let forgotten = 1;
  for (let i = 0; i < n; i++) {
    if (restart !== undefined && restart[i] === 1) {
      average = start;
      forgotten = 1;
    }
    average = lambda * (values[i] ?? 0) + (1 - lambda) * average;
    forgotten *= keep;
    const half = limitForm === "exact" ? farWidth * Math.sqrt(1 - forgotten) : farWidth;
    averages[i] = average;
    upperLimits[i] = centre + half;
    lowerLimits[i] = centre - half;
    if (strictlyBeyond(Math.abs(average - centre) / sigma, half / sigma)) beyond.push(i);
  }
  return {
    kind: "EWMA chart",
    lambda,
    widthSigma: width,
    centre,
    sigma,
    start,
    limitForm,
    values: averages,
    upperLimits,
    lowerLimits,
    beyond,
    assumptions: ["readings vary independently about the centre while the process is in control"],
  };
}
