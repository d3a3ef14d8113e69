import { requireNumber } from "../../input/index.ts";

/** A mass as a balance can show it. */
export interface WeighedMass {
  readonly wantedG: number;
  /** Nearest step of the display; at least one step. */
  readonly massG: number;
  readonly errorG: number;
  /** Error in per cent of what was wanted. */
  readonly errorPercent: number;
  /** Half a step in per cent of what is weighed: how far the display alone can be off. */
  readonly resolutionPercent: number;
}

/**
 * A mass rounded to what a balance shows, with the error that this makes.
 *
 * m = d · max(1, round(m₀/d)); error = (m − m₀)/m₀
 *
 * @param massG wanted, above 0
 * @param divisionG step of the balance's display, above 0
 * @returns the mass to weigh and its errors
 * @throws InputError for a mass or a step not above 0
 *
 * @example
 * weighToDivision(3.75, 0.1).errorPercent // => 1.333
 */
export function weighToDivision(massG: number, divisionG: number): WeighedMass {
  const where = "weighToDivision";
  const wanted = requireNumber(where, "massG", massG, { above: 0, unit: "g" });
  const step = requireNumber(where, "divisionG", divisionG, { above: 0, unit: "g" });
  const steps = Math.max(1, Math.round(wanted / step + 1e-9));
  const mass = Number((steps * step).toPrecision(12));
  return {
    wantedG: wanted,
    massG: mass,
    errorG: mass - wanted,
    errorPercent: (100 * (mass - wanted)) / wanted,
    resolutionPercent: (50 * step) / mass,
  };
}
