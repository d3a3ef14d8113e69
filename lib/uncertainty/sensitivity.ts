import { InputError, requireFunction } from "../input/index.ts";

/** A measurement model: the result from named inputs. */
export type MeasurementModel = (inputs: Readonly<Record<string, number>>) => number;

/** A derivative found numerically, with an estimate of its error. */
export interface NumericalDerivative {
  readonly derivative: number;
  /** Estimated absolute error of `derivative`. */
  readonly errorBound: number;
}

const SHRINK = 1.4;
const ROWS = 12;

/**
 * Derivative of a function of one variable by central differences, extrapolated to step zero.
 *
 * f′(x) ≈ (f(x + h) − f(x − h)) / 2h for a falling series of steps, with Richardson's extrapolation
 * (Ridders' method); the extrapolated value with the smallest estimated error is taken.
 *
 * @param f smooth near `x`
 * @param x where
 * @param step first step, above 0; of the order over which f changes noticeably. It is halved
 *   where f is not finite.
 * @returns the derivative and an estimate of its error
 * @throws InputError if f is not finite near x
 *
 * @example
 * numericalDerivative(Math.exp, 1, 0.5).derivative // => 2.7182818285
 *
 * Source: C. J. F. Ridders, Advances in Engineering Software 4 (1982) 75–76.
 */
export function numericalDerivative(
  f: (x: number) => number,
  x: number,
  step: number,
): NumericalDerivative {
  requireFunction("numericalDerivative", "f", f);
  let h = firstUsableStep(f, x, step);
  let previous = [centralDifference(f, x, h)];
  let best: NumericalDerivative = {
    derivative: previous[0] ?? 0,
    errorBound: Number.POSITIVE_INFINITY,
  };
  for (let row = 1; row < ROWS; row++) {
    h /= SHRINK;
    const current = [centralDifference(f, x, h)];
    let factor = SHRINK * SHRINK;
    for (let k = 1; k <= row; k++) {
      const finer = current[k - 1] ?? 0;
      const coarser = previous[k - 1] ?? 0;
      const value = (finer * factor - coarser) / (factor - 1);
      current.push(value);
      factor *= SHRINK * SHRINK;
      const errorBound = Math.max(Math.abs(value - finer), Math.abs(value - coarser));
      if (errorBound <= best.errorBound) best = { derivative: value, errorBound };
    }
    // The table has begun to diverge from rounding: smaller steps only add noise.
    const last = current[row] ?? 0;
    const before = previous[row - 1] ?? 0;
    if (Math.abs(last - before) >= 2 * best.errorBound) break;
    previous = current;
  }
  return best;
}

function centralDifference(f: (x: number) => number, x: number, h: number): number {
  const above = x + h;
  const below = x - h;
  return (f(above) - f(below)) / (above - below);
}

function firstUsableStep(f: (x: number) => number, x: number, step: number): number {
  // Below a ten-thousandth of x a difference is mostly rounding; below 1e-100 it may underflow.
  const least = Math.max(Math.abs(x) * 1e-4, 1e-100);
  let h = Number.isFinite(step) && step > 0 ? Math.max(step, least) : Math.max(least, 1e-6);
  for (let i = 0; i < 60; i++) {
    if (x + h === x) break;
    if (Number.isFinite(centralDifference(f, x, h))) return h;
    h /= 2;
  }
  const advice = "the model is not a finite number near the best estimate; check it or the inputs";
  throw new InputError("numericalDerivative", "f(x ± h)", f(x + h), advice);
}
