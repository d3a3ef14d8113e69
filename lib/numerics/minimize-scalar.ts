import { InputError, requireFunction, requireNumber, requireObject } from "../input/index.ts";

/** A minimum: where it is and how low. */
export interface ScalarMinimum {
  readonly x: number;
  readonly value: number;
}

const GOLDEN = (3 - Math.sqrt(5)) / 2;
const MAX_STEPS = 200;

/**
 * A local minimum of a function on an interval, by Brent's method (parabolas guarded by golden
 * section). With one minimum in the interval it is the global one.
 *
 * @param f continuous on the interval
 * @param search `lower` < `upper`; `tolerance` on x, relative to |x| (and 1e-11 beside it, for a
 *   minimum at 0), at least 1e-8 (default), the square root of machine precision: a minimum cannot
 *   be placed more finely from values of f
 * @returns `x` and `value` = f(x)
 * @throws InputError if the interval is empty or f is not finite in it
 *
 * @example
 * minimizeScalar((x) => (x - 1) ** 2, { lower: -3, upper: 4 }).x // => 1
 *
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives, Prentice-Hall 1973, ch. 5.
 */
export function minimizeScalar(
  f: (x: number) => number,
  search: { readonly lower: number; readonly upper: number; readonly tolerance?: number },
): ScalarMinimum {
  requireFunction("minimizeScalar", "f", f, "a function of x");
  requireObject("minimizeScalar", "search", search, "an object with lower and upper");
  let low = requireNumber("minimizeScalar", "lower", search.lower);
  let high = requireNumber("minimizeScalar", "upper", search.upper);
  const wanted = requireNumber("minimizeScalar", "tolerance", search.tolerance ?? 0, { min: 0 });
  const tolerance = Math.max(1e-8, wanted);
  if (low >= high) {
    throw new InputError("minimizeScalar", "interval", [low, high], "write lower < upper");
  }
  const at = (x: number) => requireNumber("minimizeScalar", `f(${x})`, f(x));
  let x = low + GOLDEN * (high - low);
  let [second, third] = [x, x];
  let fx = at(x);
  let [fSecond, fThird] = [fx, fx];
  let step = 0;
  let previousStep = 0;
  for (let i = 0; i < MAX_STEPS; i++) {
    const middle = (low + high) / 2;
    const near = tolerance * Math.abs(x) + 1e-11;
    if (Math.abs(x - middle) <= 2 * near - (high - low) / 2) break;
    const trial =
      Math.abs(previousStep) > near
        ? parabolicStep([x, second, third], [fx, fSecond, fThird])
        : Number.NaN;
    const inside = x + trial > low && x + trial < high;
    if (inside && Math.abs(trial) < Math.abs(previousStep) / 2) {
      previousStep = step;
      step = trial;
      const u = x + step;
      if (u - low < 2 * near || high - u < 2 * near) step = x < middle ? near : -near;
    } else {
      previousStep = x < middle ? high - x : low - x;
      step = GOLDEN * previousStep;
    }
    const u = x + (Math.abs(step) >= near ? step : Math.sign(step || 1) * near);
    const fu = at(u);
    if (fu <= fx) {
      if (u < x) high = x;
      else low = x;
      [third, second, x] = [second, x, u];
      [fThird, fSecond, fx] = [fSecond, fx, fu];
    } else {
      if (u < x) low = u;
      else high = u;
      if (fu <= fSecond || second === x) {
        [third, second] = [second, u];
        [fThird, fSecond] = [fSecond, fu];
      } else if (fu <= fThird || third === x || third === second) {
        third = u;
        fThird = fu;
      }
    }
  }
  return { x, value: fx };
}

type Triple = readonly [number, number, number];

/** Step from the best point to the vertex of the parabola through three points. */
function parabolicStep([x, w, v]: Triple, [fx, fw, fv]: Triple): number {
  const r = (x - w) * (fx - fv);
  const q = (x - v) * (fx - fw);
  return -((x - v) * q - (x - w) * r) / (2 * (q - r));
}
