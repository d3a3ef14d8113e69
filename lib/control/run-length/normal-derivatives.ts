import { normalDensity } from "./chart-kernel.ts";

/**
 * Derivatives 0 … count − 1 of the standard normal density at each point, all of one order together:
 * `[order · points + point]`. φ⁽ᵏ⁾ = (−1)ᵏ·Heₖ·φ, with Heₖ₊₁ = x·Heₖ − k·Heₖ₋₁.
 *
 * Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 22.7.14, 26.2.31.
 */
export function normalDerivatives(points: ArrayLike<number>, count: number): Float64Array {
  const table = new Float64Array(points.length * count);
  for (let i = 0; i < points.length; i++) {
    const x = points[i] ?? 0;
    let [previous, value] = [0, normalDensity(x)];
    for (let k = 0; k < count; k++) {
      table[k * points.length + i] = value;
      [previous, value] = [value, -x * value - k * previous];
    }
  }
  return table;
}
