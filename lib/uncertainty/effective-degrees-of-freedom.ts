import { InputError, requireEntries, requireNumber } from "../input/index.ts";
import type { DegreesOfFreedom } from "./distribution.ts";

/**
 * Effective degrees of freedom of a combined standard uncertainty (Welch–Satterthwaite).
 *
 * ν_eff = u_c⁴ / Σ (u_i⁴ / ν_i), with u_c² = Σ u_i².
 *
 * @param contributions for each input the contribution c_i·u(x_i) to the result's uncertainty (any
 *   unit, the same for all) and its degrees of freedom (above 0, or `"infinite"`); uncorrelated
 * @returns degrees of freedom, not rounded; `"infinite"` if no contribution has finite ones
 * @throws InputError for a contribution that is not finite or degrees of freedom not above 0
 *
 * @example
 * effectiveDegreesOfFreedom([{ contribution: 0.57, degreesOfFreedom: 9 }, { contribution: 0.25, degreesOfFreedom: "infinite" }]) // => 12.7956
 *
 * Source: JCGM 100:2008, G.4.1, equation (G.2b).
 */
export function effectiveDegreesOfFreedom(
  contributions: readonly {
    readonly contribution: number;
    readonly degreesOfFreedom: DegreesOfFreedom;
  }[],
): DegreesOfFreedom {
  const where = "effectiveDegreesOfFreedom";
  requireEntries(where, "contributions", contributions);
  if (contributions.length === 0) {
    throw new InputError(where, "contributions", contributions, "write at least one contribution");
  }
  // Divided by the largest, so that neither a tiny nor a huge unit overflows the fourth power.
  const largest = contributions.reduce(
    (max, { contribution }, i) =>
      Math.max(
        max,
        Math.abs(requireNumber(where, `contributions[${i}].contribution`, contribution)),
      ),
    0,
  );
  if (largest === 0) return "infinite";
  let variance = 0;
  let spread = 0;
  contributions.forEach(({ contribution, degreesOfFreedom }, i) => {
    const square = (contribution / largest) ** 2;
    variance += square;
    if (degreesOfFreedom === "infinite") return;
    const name = `contributions[${i}].degreesOfFreedom`;
    spread += square ** 2 / requireNumber(where, name, degreesOfFreedom, { above: 0 });
  });
  return spread === 0 ? "infinite" : variance ** 2 / spread;
}

/**
 * Degrees of freedom that stand for how well a stated uncertainty is itself known.
 *
 * ν ≈ ½ (Δu/u)⁻²
 *
 * @param relativeUncertainty Δu/u, the part by which the stated uncertainty may be wrong; above 0
 * @returns degrees of freedom (25 % gives 8)
 * @throws InputError if the part is not above 0
 *
 * @example
 * degreesOfFreedomFromReliability(0.25) // => 8
 *
 * Source: JCGM 100:2008, G.4.2, equation (G.3).
 */
export function degreesOfFreedomFromReliability(relativeUncertainty: number): number {
  const where = "degreesOfFreedomFromReliability";
  const part = requireNumber(where, "relativeUncertainty", relativeUncertainty, { above: 0 });
  return 1 / (2 * part * part);
}
