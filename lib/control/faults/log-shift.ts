import { normalCdf } from "../../numerics/index.ts";

/**
 * ln of how much likelier a mean change is if there was a shift upwards than if there was none:
 * `∫₀^∞ N(δ; x, v) p(x) dx / N(δ; 0, v)` with p a Rayleigh density of mode τ. In closed form
 * `(1 + z·√(2π)·e^{z²/2}·Φ(z)) / (τ²c)`, c = 1/τ² + 1/v, z = δ/(v·√c).
 *
 * @param change mean change δ; negative for a shift downwards
 * @param variance v of that mean, above 0
 * @param scale τ, above 0
 */
export function logShift(change: number, variance: number, scale: number): number {
  const c = 1 / (scale * scale) + 1 / variance;
  const z = change / (variance * Math.sqrt(c));
  return -Math.log(scale * scale * c) + logMills(z);
}

/** ln(1 + z·√(2π)·e^{z²/2}·Φ(z)), without overflow for large z and without cancellation for z ≪ 0. */
function logMills(z: number): number {
  if (z < -8) return -2 * Math.log(-z) + Math.log1p(-3 / (z * z) + 15 / z ** 4);
  const tail = z * Math.sqrt(2 * Math.PI) * normalCdf(z);
  if (z < 8) return Math.log1p(tail * Math.exp((z * z) / 2));
  return (z * z) / 2 + Math.log(tail + Math.exp((-z * z) / 2));
}
