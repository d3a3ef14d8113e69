import { InputError, requireEntries, requireNumber } from "../input/index.ts";

/** A curve through points that never overshoots them. */
export interface Pchip {
  /** The curve at `x`; outside the points an InputError. */
  readonly evaluate: (x: number) => number;
  /** Slope of the curve at each point. */
  readonly slopes: readonly number[];
}

/**
 * Monotone piecewise cubic through points: where the data rise the curve rises, and it never
 * overshoots. Slopes by Fritsch and Butland (weighted harmonic means).
 *
 * @param x strictly increasing, at least two
 * @param y as many values
 * @returns `evaluate(x)` within the range of `x`, and the `slopes` at the points
 * @throws InputError if the points are too few, out of order or not finite; `evaluate` throws one
 *   outside the range
 *
 * @example
 * pchip([0, 1, 2], [0, 0, 1]).evaluate(1.5) // => 0.3125
 *
 * Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300–304.
 */
export function pchip(x: readonly number[], y: readonly number[]): Pchip {
  const n = requireEntries("pchip", "x", x, "a list of numbers").length;
  requireEntries("pchip", "y", y, "a list of numbers");
  requireNumber("pchip", "number of points", n, { min: 2 });
  if (y.length !== n) {
    throw new InputError("pchip", "y", `${y.length} values`, `write ${n}, one for each x`);
  }
  x.forEach((value, i) => {
    const previous = x[i - 1];
    const bounds = previous === undefined ? {} : { above: previous };
    requireNumber("pchip", `x[${i}]`, value, bounds);
  });
  y.forEach((value, i) => {
    requireNumber("pchip", `y[${i}]`, value);
  });
  const at = (list: readonly number[], i: number) => list[i] ?? Number.NaN;
  const h = Array.from({ length: n - 1 }, (_, i) => at(x, i + 1) - at(x, i));
  const secant = h.map((width, i) =>
    requireNumber("pchip", `slope after x[${i}]`, (at(y, i + 1) - at(y, i)) / width),
  );
  const slopes = Array.from({ length: n }, (_, i) => {
    if (n === 2) return at(secant, 0);
    if (i === 0) return endSlope(at(h, 0), at(h, 1), at(secant, 0), at(secant, 1));
    if (i === n - 1) {
      return endSlope(at(h, n - 2), at(h, n - 3), at(secant, n - 2), at(secant, n - 3));
    }
    const [before, after] = [at(secant, i - 1), at(secant, i)];
    if (Math.sign(before) * Math.sign(after) <= 0) return 0;
    const w1 = 2 * at(h, i) + at(h, i - 1);
    const w2 = at(h, i) + 2 * at(h, i - 1);
    return (w1 + w2) / (w1 / before + w2 / after);
  });
  const evaluate = (at0: number): number => {
    const value = requireNumber("pchip", "x", at0, { min: at(x, 0), max: at(x, n - 1) });
    let [low, high] = [0, n - 1];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (at(x, middle) <= value) low = middle;
      else high = middle;
    }
    const width = at(h, low);
    const t = (value - at(x, low)) / width;
    const [t2, t3] = [t * t, t * t * t];
    return (
      (2 * t3 - 3 * t2 + 1) * at(y, low) +
      (t3 - 2 * t2 + t) * width * at(slopes, low) +
      (3 * t2 - 2 * t3) * at(y, low + 1) +
      (t3 - t2) * width * at(slopes, low + 1)
    );
  };
  return { evaluate, slopes };
}

/** Three-point end slope, limited so that the curve stays monotone. */
function endSlope(h0: number, h1: number, secant0: number, secant1: number): number {
  const slope = ((2 * h0 + h1) * secant0 - h0 * secant1) / (h0 + h1);
  if (Math.sign(slope) * Math.sign(secant0) <= 0) return 0;
  return Math.sign(secant0) * Math.sign(secant1) <= 0 && Math.abs(slope) > 3 * Math.abs(secant0)
    ? 3 * secant0
    : slope;
}
