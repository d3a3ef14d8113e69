import { requireNumber } from "../input/index.ts";
import { normalQuantile, studentTQuantile } from "../numerics/index.ts";
import type { DegreesOfFreedom } from "./distribution.ts";

/**
 * Coverage factor k by which a standard uncertainty is multiplied for a wanted probability.
 *
 * k = t_p(ν): the (1 + p)/2 quantile of Student's t, of the normal distribution for ν infinite.
 *
 * @param probability of the interval ± k·u, above 0 and below 1
 * @param degreesOfFreedom of the standard uncertainty, at least 1, or `"infinite"`; a fraction is
 *   used as it stands
 * @returns k, a pure number
 * @throws InputError if the probability is outside (0, 1) or the degrees of freedom below 1
 *
 * @example
 * coverageFactor(0.95, "infinite") // => 1.96
 *
 * Source: JCGM 100:2008, G.3 and table G.2.
 */
export function coverageFactor(probability: number, degreesOfFreedom: DegreesOfFreedom): number {
  const where = "coverageFactor";
  const hint = "write 0.95 for 95 %";
  const p = requireNumber(where, "probability", probability, { above: 0, below: 1, hint });
  if (degreesOfFreedom === "infinite") return normalQuantile((1 + p) / 2);
  const nu = requireNumber(where, "degreesOfFreedom", degreesOfFreedom, {
    min: 1,
    hint: 'or "infinite"',
  });
  return studentTQuantile((1 + p) / 2, nu);
}
