import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { findRoot } from "../../numerics/index.ts";
import { type ContrastCurve, exponentialApproach } from "./contrast-curve.ts";

/** One reading of contrast. */
export interface ContrastReading {
  readonly timeMin: number;
  readonly contrastIndex: number;
}

/** A curve through two readings. */
export interface TwoTimeContrast {
  /** CI∞, the contrast that no time exceeds. */
  readonly ceiling: number;
  readonly ratePerMin: number;
  readonly curve: ContrastCurve;
  readonly warnings: readonly string[];
}

/**
 * The exponential approach through two readings of contrast.
 *
 * CI2/CI1 = (1 − e^(−k·t2))/(1 − e^(−k·t1)), solved for k; for t2 = 2·t1 that is
 * k = −ln(CI2/CI1 − 1)/t1
 *
 * @param input.first @param input.second readings: minutes and contrast index, the second longer
 * @returns ceiling, rate per minute and the curve
 * @throws InputError if the contrast does not grow, or grows faster than in proportion to time
 * (no curve that starts at zero and bends down does that)
 *
 * @example
 * contrastFromTwoTimes({
 *   first: { timeMin: 4, contrastIndex: 0.7 },
 *   second: { timeMin: 8, contrastIndex: 1.05 },
 * }).ceiling // => 1.4
 *
 * Source: F. Hurter and V. C. Driffield; S. E. Sheppard and C. E. K. Mees (formula from memory).
 */
export function contrastFromTwoTimes(input: {
  readonly first: ContrastReading;
  readonly second: ContrastReading;
}): TwoTimeContrast {
  const where = "contrastFromTwoTimes";
  requireObject(where, "input", input, "an object with first and second");
  requireObject(where, "second", input.second, "an object with timeMin and contrastIndex");
  requireObject(where, "first", input.first, "an object with timeMin and contrastIndex");
  const { first, second } = input;
  const t1 = requireNumber(where, "first.timeMin", first.timeMin, { above: 0, unit: "min" });
  const t2 = requireNumber(where, "second.timeMin", second.timeMin, {
    above: t1,
    unit: "min",
    hint: "the second time is the longer one",
  });
  const c1 = requireNumber(where, "first.contrastIndex", first.contrastIndex, { above: 0 });
  const c2 = requireNumber(where, "second.contrastIndex", second.contrastIndex, { above: 0 });
  const ratio = c2 / c1;
  if (ratio <= 1 || ratio >= t2 / t1) {
    const advice = `write a contrast above ${c1} and below ${(c1 * t2) / t1}: it must grow, but less than in proportion to time; a delay at the start needs four readings (fitContrastTime)`;
    throw new InputError(where, "second.contrastIndex", c2, advice);
  }
  // Excess falls from ln(t2/t1) − ln ratio > 0 at k → 0 to −ln ratio < 0 for large k.
  const excess = (k: number) => Math.log(Math.expm1(-k * t2) / Math.expm1(-k * t1) / ratio);
  const ratePerMin = findRoot(excess, { lower: 1e-12 / t2, upper: 40 / t1 });
  const ceiling = -c1 / Math.expm1(-ratePerMin * t1);
  const curve = exponentialApproach({ ceiling, ratePerMin, range: { minMin: t1, maxMin: t2 } });
  const warnings = [
    "two readings give a curve but no error: a third, and a fourth, would show how far to trust it",
  ];
  return { ceiling, ratePerMin, curve, warnings };
}
