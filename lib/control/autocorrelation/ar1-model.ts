import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { leastSquares } from "../../numerics/index.ts";
import { type Readings, requireReadings } from "../charts/readings.ts";

/** A process that remembers the reading before: x_t − μ = φ·(x_{t−1} − μ) + e_t. */
export interface Ar1Model {
  readonly kind: "AR(1)";
  readonly mean: number;
  /** φ, −1 to 1, corrected for the bias of short series. */
  readonly phi: number;
  readonly phiStandardError: number;
  /** φ as least squares gives it, too small by about (1 + 3φ)/n. */
  readonly phiUncorrected: number;
  /** Standard deviation of e, the part no earlier reading foretells. */
  readonly innovationSd: number;
  /** Standard deviation of the readings that follow: innovationSd/√(1 − φ²). */
  readonly processSd: number;
  readonly readings: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * Fits a first-order autoregressive model to readings.
 *
 * Least squares of x_t on x_{t−1}; φ is corrected by Marriott and Pope's `φ + (1 + 3φ)/n`, bounded to
 * ±0.99; σ_e from the residuals about the corrected line, `σ_x = σ_e/√(1 − φ²)`.
 *
 * @param values readings in the order of time, equally spaced, at least 20, in any unit; from a
 * period in which nothing changed
 * @returns mean, φ with standard error, standard deviations of the innovations and of the readings
 * @throws InputError for fewer than 20 readings or readings that are all equal
 *
 * @example
 * const { normal } = seededRandom(3);
 * let x = 0;
 * const values = Array.from({ length: 2000 }, () => (x = 0.6 * x + normal()));
 * fitAr1(values).phi.toFixed(1) // => "0.6"
 *
 * Source: G. E. P. Box and G. M. Jenkins, Time Series Analysis, rev. ed. 1976, 3.2; F. H. C. Marriott
 * and J. A. Pope, Biometrika 41 (1954) 390–402 (bias).
 */
export function fitAr1(values: Readings): Ar1Model {
  const where = "fitAr1";
  requireReadings(where, "values", values, 20);
  const x = Array.from(values);
  const n = x.length;
  const mean = x.reduce((sum, v) => sum + v, 0) / n;
  const squares = x.reduce((sum, v) => sum + (v - mean) ** 2, 0);
  if (!(squares > 1e-24 * n * Math.max(1, mean * mean))) {
    const advice = "its readings are all equal; there is nothing to fit";
    throw new InputError(where, "variance of values", 0, advice);
  }
  const rows = x.slice(1).map((_, i) => [1, (x[i] ?? 0) - mean]);
  const y = x.slice(1).map((v) => v - mean);
  const fit = leastSquares({ rows, y });
  const phiUncorrected = fit.coefficients[1] ?? 0;
  const phi = Math.max(-0.99, Math.min(0.99, phiUncorrected + (1 + 3 * phiUncorrected) / n));
  const residuals = y.map((v, i) => v - phi * (rows[i]?.[1] ?? 0));
  const average = residuals.reduce((sum, r) => sum + r, 0) / residuals.length;
  const sum = residuals.reduce((s, r) => s + (r - average) ** 2, 0);
  const innovationSd = Math.sqrt(sum / (residuals.length - 2));
  return {
    kind: "AR(1)",
    mean,
    phi,
    phiStandardError: fit.standardErrors[1] ?? 0,
    phiUncorrected,
    innovationSd,
    processSd: innovationSd / Math.sqrt(1 - phi * phi),
    readings: n,
    assumptions: [
      "readings are equally spaced, about normal, and remember only the one before",
      "nothing changed in the period they are from",
    ],
    warnings: [
      ...(n < 50 ? [`φ rests on ${n} readings; 50 or more are wanted`] : []),
      ...(Math.abs(phi) > 0.9
        ? ["φ is near 1: the process wanders, and a mean to return to is hardly there"]
        : []),
    ],
  };
}

/**
 * Innovations of readings under a fitted model: what each reading has that the one before did not
 * foretell. They are about independent, so they go on any chart for independent readings with centre
 * 0 and sigma `innovationSd`.
 *
 * `e_t = (x_t − μ) − φ·(x_{t−1} − μ)`; the first, which has none before it, is
 * `(x_1 − μ)·√(1 − φ²)`, of the same standard deviation. A lasting shift δ shows as δ once and as
 * δ·(1 − φ) from then on: φ is the price in sensitivity.
 *
 * @param values readings in the order of time, in the model's unit
 * @param model from `fitAr1`, or written by hand
 * @returns one innovation for each reading
 * @throws InputError for no reading, or |φ| of 1 or more
 *
 * @example
 * ar1Innovations([1, 1, 1], { mean: 0, phi: 0.6 }) // => [0.8, 0.4, 0.4]
 *
 * Source: L. C. Alwan and H. V. Roberts, Journal of Business and Economic Statistics 6 (1988) 87–95.
 */
export function ar1Innovations(
  values: Readings,
  model: Pick<Ar1Model, "mean" | "phi">,
): readonly number[] {
  const where = "ar1Innovations";
  requireObject(where, "model", model, "an object with mean and phi");
  requireReadings(where, "values", values, 1);
  const phi = requireNumber(where, "model.phi", model.phi, { above: -1, below: 1 });
  const mean = requireNumber(where, "model.mean", model.mean);
  const d = Array.from(values, (v) => v - mean);
  return d.map((v, t) => (t === 0 ? v * Math.sqrt(1 - phi * phi) : v - phi * (d[t - 1] ?? 0)));
}
