import { requireNumber, requireObject } from "../../input/index.ts";
import { molarMass } from "../../solutions/index.ts";

/** Silver found by titration. */
export interface SilverTitration {
  readonly silverGPerL: number;
  /** mg of silver that a millilitre of the titrant stands for. */
  readonly mgPerMl: number;
  readonly cautions: readonly string[];
}

/**
 * Silver in fixer by titration with thioacetamide.
 *
 * c = N · V_titrant · M_Ag / V_sample
 *
 * @param titration.sampleMl fixer taken, mL, above 0
 * @param titration.titrantMl titrant used, mL, at least 0
 * @param titration.normality of the titrant, equivalents/L, above 0, at most 1
 * @returns g/L and the titrant's mg/mL
 * @throws InputError for a number out of range
 *
 * @example
 * silverByTitration({ sampleMl: 10, titrantMl: 20, normality: 0.00926 }).silverGPerL // => 1.9977
 *
 * Source: Kodak publication H-24, Module 3, procedure A (its heading prints 0.0926 N, the text
 * 0.00926 N).
 */
export function silverByTitration(titration: {
  readonly sampleMl: number;
  readonly titrantMl: number;
  readonly normality: number;
}): SilverTitration {
  const where = "silverByTitration";
  requireObject(where, "titration", titration, "an object with sampleMl, titrantMl and normality");
  const sample = requireNumber(where, "sampleMl", titration.sampleMl, {
    min: 1e-3,
    max: 1e6,
    unit: "mL",
  });
  const titrant = requireNumber(where, "titrantMl", titration.titrantMl, {
    min: 0,
    max: 1e6,
    unit: "mL",
  });
  const normality = requireNumber(where, "normality", titration.normality, { above: 0, max: 1 });
  const mgPerMl = normality * molarMass("Ag").molarMassGPerMol;
  return {
    silverGPerL: (mgPerMl * titrant) / sample,
    mgPerMl,
    cautions: [
      "Thioacetamide is poisonous and suspected to cause cancer: gloves, goggles, fume hood, and its safety data sheet first.",
    ],
  };
}
