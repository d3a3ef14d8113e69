import { InputError, requireFunction, requireNumber, requireObject } from "../input/index.ts";

/** Where to look for a root, and how closely. */
export interface RootSearch {
  /** One end of the interval. */
  readonly lower: number;
  /** The other end; `f` must have the other sign here. */
  readonly upper: number;
  /** Absolute tolerance on x; the default 0 asks for full double precision. */
  readonly tolerance?: number;
}

// Bisection alone, from the widest interval of doubles down to the finest, takes some 2,100.
const MAX_STEPS = 3000;

/**
 * A root of a continuous function between two points where its signs differ, by Brent's method:
 * inverse quadratic interpolation guarded by bisection, so it always converges.
 *
 * @param f continuous on the interval
 * @param search the interval and the tolerance on x
 * @returns x with f(x) = 0 to the tolerance
 * @throws InputError if `f` has the same sign at both ends or is not finite there
 *
 * @example
 * findRoot((x) => x * x - 2, { lower: 0, upper: 2 }) // => 1.414213562373
 *
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives, Prentice-Hall 1973, ch. 4.
 */
export function findRoot(f: (x: number) => number, search: RootSearch): number {
  requireFunction("findRoot", "f", f, "a function of x");
  requireObject("findRoot", "search", search, "an object with lower and upper");
  let a = requireNumber("findRoot", "lower", search.lower);
  let b = requireNumber("findRoot", "upper", search.upper);
  const tolerance = requireNumber("findRoot", "tolerance", search.tolerance ?? 0, { min: 0 });
  let fa = requireNumber("findRoot", `f(${a})`, f(a));
  let fb = requireNumber("findRoot", `f(${b})`, f(b));
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (fa > 0 === fb > 0) {
    throw new InputError(
      "findRoot",
      "interval",
      [a, b],
      `the function is ${fa} and ${fb} at its ends; choose ends where the signs differ`,
    );
  }
  let c = a;
  let fc = fa;
  let step = requireNumber("findRoot", "upper − lower", b - a);
  let previousStep = step;
  for (let i = 0; i < MAX_STEPS; i++) {
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      previousStep = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const near = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= near || fb === 0) return b;
    const trial =
      Math.abs(previousStep) >= near && Math.abs(fa) > Math.abs(fb)
        ? interpolatedStep(a, b, c, fa, fb, fc)
        : 0;
    // An interpolated step must point into the bracket and shrink fast enough; else bisect.
    const interpolate =
      trial * half > 0 &&
      2 * Math.abs(trial) < Math.min(3 * Math.abs(half) - near, Math.abs(previousStep));
    previousStep = interpolate ? step : half;
    step = interpolate ? trial : half;
    a = b;
    fa = fb;
    b += Math.abs(step) > near ? step : Math.sign(half) * near;
    fb = requireNumber("findRoot", `f(${b})`, f(b));
  }
  const advice = `no root is pinned down in ${MAX_STEPS} steps; write a tolerance or closer ends`;
  throw new InputError("findRoot", "interval", [search.lower, search.upper], advice);
}

/** Step from `b` by the secant (two points) or inverse quadratic interpolation (three). */
function interpolatedStep(
  a: number,
  b: number,
  c: number,
  fa: number,
  fb: number,
  fc: number,
): number {
  const s = fb / fa;
  if (a === c) return ((c - b) * s) / (s - 1);
  const q = fa / fc;
  const r = fb / fc;
  const p = s * ((c - b) * q * (q - r) - (b - a) * (r - 1));
  return -p / ((q - 1) * (r - 1) * (s - 1));
}
