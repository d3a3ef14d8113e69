import { InputError, requireFunction, requireNumber, requireObject } from "../input/index.ts";
import { gaussLegendre } from "./gauss-legendre.ts";

/** An integral with a bound on its error. */
export interface Integral {
  readonly value: number;
  /** Estimated bound on |value − true value|. */
  readonly errorBound: number;
  /** How often the function was evaluated. */
  readonly evaluations: number;
}

const COARSE = gaussLegendre(10);
const FINE = gaussLegendre(21);
const MAX_PIECES = 2000;

/**
 * Definite integral of a function over a finite interval, by adaptive Gauss–Legendre quadrature:
 * each piece is integrated with 10 and with 21 points, the piece with the largest difference is
 * halved until the sum of differences is within tolerance.
 *
 * @param f finite on the closed interval; kinks are fine, poles are not
 * @param lower one end
 * @param upper the other end (if below `lower`, the sign changes)
 * @param options `relativeTolerance` (default 1e-10) and `absoluteTolerance` (default 0)
 * @returns value, error bound and number of evaluations
 * @throws InputError if f is not finite somewhere, or the tolerance is not reached in 2,000 pieces
 *
 * @example
 * integrate((x) => Math.exp(-x), 0, 1).value // => 0.632120558829
 *
 * Source: P. J. Davis and P. Rabinowitz, Methods of Numerical Integration, 2nd ed. 1984, 6.2.
 */
export function integrate(
  f: (x: number) => number,
  lower: number,
  upper: number,
  options: { readonly relativeTolerance?: number; readonly absoluteTolerance?: number } = {},
): Integral {
  requireFunction("integrate", "f", f, "a function of x");
  requireObject("integrate", "options", options, "{ relativeTolerance } or leave it out");
  requireNumber("integrate", "lower", lower);
  requireNumber("integrate", "upper", upper);
  const relative = tolerance("relativeTolerance", options.relativeTolerance ?? 1e-10);
  const absolute = tolerance("absoluteTolerance", options.absoluteTolerance ?? 0);
  const pieces = [piece(f, lower, upper)];
  for (;;) {
    const sum = pieces.reduce((all, each) => all + each.value, 0);
    const value = requireNumber("integrate", `the integral from ${lower} to ${upper}`, sum);
    const error = pieces.reduce((sum, each) => sum + each.error, 0);
    const rounding = 50 * Number.EPSILON * pieces.reduce((sum, p) => sum + Math.abs(p.value), 0);
    if (error <= Math.max(absolute, relative * Math.abs(value), rounding)) {
      const evaluations = (2 * pieces.length - 1) * (COARSE.nodes.length + FINE.nodes.length);
      return { value, errorBound: error + rounding, evaluations };
    }
    if (pieces.length >= MAX_PIECES) {
      throw new InputError(
        "integrate",
        "f",
        `${lower} to ${upper}`,
        `the error is still ${error} after ${MAX_PIECES} pieces; split at poles or loosen the tolerance`,
      );
    }
    const worst = pieces.reduce((w, p, i) => (p.error > (pieces[w]?.error ?? 0) ? i : w), 0);
    const { from, to } = pieces[worst] ?? piece(f, lower, upper);
    const middle = (from + to) / 2;
    pieces.splice(worst, 1, piece(f, from, middle), piece(f, middle, to));
  }
}

function tolerance(argument: string, value: number): number {
  return requireNumber("integrate", argument, value, { min: 0 });
}

function piece(f: (x: number) => number, from: number, to: number) {
  const coarse = rule(f, from, to, COARSE);
  const value = rule(f, from, to, FINE);
  return { from, to, value, error: Math.abs(value - coarse) };
}

function rule(
  f: (x: number) => number,
  from: number,
  to: number,
  { nodes, weights }: { readonly nodes: readonly number[]; readonly weights: readonly number[] },
): number {
  const half = (to - from) / 2;
  const middle = (from + to) / 2;
  let sum = 0;
  nodes.forEach((node, i) => {
    const x = middle + half * node;
    sum += (weights[i] ?? 0) * requireNumber("integrate", `f(${x})`, f(x));
  });
  return half * sum;
}
