import { requireNumber } from "../../input/index.ts";
import { balanceCharges, chargeProblem } from "./charge-balance.ts";
import { DAVIES_LIMIT } from "./davies.ts";
import { type SolutionSource, solutionComposition } from "./solution-composition.ts";

/** pH of a solution and the state behind it. */
export interface SolutionPh {
  readonly pH: number;
  readonly temperatureC: number;
  readonly ionicStrengthMolPerL: number;
  /** Charge left over by the solver, mol/L; rounding only. */
  readonly chargeResidualMolPerL: number;
  readonly acids: readonly {
    readonly acid: string;
    readonly molPerL: number;
    /** Fraction that has lost 0, 1, 2 … protons. */
    readonly fractions: readonly number[];
  }[];
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

const POLYBORATE_MOL_PER_L = 0.1;
/** With Henry's constant near 1.2 mol/(L atm) this much stands in balance with 8 ppm of gas. */
const SULFUR_DIOXIDE_MOL_PER_L = 1e-5;

/**
 * pH of a solution of strong ions and weak acids, by charge balance with Davies activities.
 *
 * Σ z c(ions) + Σ z c(acid forms) + [H⁺] − [OH⁻] = 0; a(base)·a(H⁺)/a(acid) = K; a = γ c;
 * pH = −log a(H⁺); I = ½ Σ z² c, iterated.
 *
 * @param source a formula, a list of ingredients per litre, or a composition in mol/L
 * @param options.temperatureC from 0 to 75 °C; 25 if left out
 * @returns pH, ionic strength, and how far each acid is dissociated. Within 0.03 of standard buffers
 *   up to an ionic strength of 0.1 mol/L and 0 to 50 °C; rougher above, and told so above 0.5.
 * @throws InputError for an unknown chemical, acid or ion, or a temperature outside the range
 *
 * @example
 * solutionPh([{ chemical: "borax", gPerL: 3.813625 }]).pH // => 9.18
 *
 * Source: charge balance; C. W. Davies, Ion Association (1962); constants as in `weakAcids`.
 */
export function solutionPh(
  source: SolutionSource,
  options: { readonly temperatureC?: number } = {},
): SolutionPh {
  const where = "solutionPh";
  const composition = solutionComposition(source);
  const t = requireNumber(where, "temperatureC", options.temperatureC ?? 25, {
    min: 0,
    max: 75,
    unit: "°C",
  });
  const problem = chargeProblem(where, composition, t);
  const { pH, net, ionicStrength, fractions } = balanceCharges(problem);
  const acids = problem.acids.map(({ id, molPerL }, i) => ({
    acid: id,
    molPerL,
    fractions: fractions[i] ?? [],
  }));
  return {
    pH,
    temperatureC: t,
    ionicStrengthMolPerL: ionicStrength,
    chargeResidualMolPerL: net,
    acids,
    assumptions: [
      "nothing escapes, precipitates, oxidises or forms complexes beyond those listed",
      "moles per litre stand for moles per kilogram of water",
    ],
    warnings: phWarnings(ionicStrength, acids, composition.notCounted),
  };
}

function phWarnings(
  ionicStrength: number,
  acids: SolutionPh["acids"],
  notCounted: readonly string[],
): readonly string[] {
  const warnings: string[] = [];
  const amount = (id: string) => acids.find((each) => each.acid === id)?.molPerL ?? 0;
  if (ionicStrength > DAVIES_LIMIT) {
    warnings.push(
      `the ionic strength, ${ionicStrength.toFixed(2)} mol/L, is above ${DAVIES_LIMIT}, where the Davies equation ends; coefficients are held there and the pH may be off by 0.3`,
    );
  }
  if (amount("boric") > POLYBORATE_MOL_PER_L) {
    warnings.push("so much borate forms polyborates, which are not modelled");
  }
  if (amount("aluminium") > 0) {
    warnings.push("aluminium is counted by its first hydrolysis only; take the pH as rough");
  }
  const sulfurous = acids.find((each) => each.acid === "sulfurous");
  if ((sulfurous?.molPerL ?? 0) * (sulfurous?.fractions[0] ?? 0) > SULFUR_DIOXIDE_MOL_PER_L) {
    warnings.push("sulfite is here in acid: sulfur dioxide escapes; ventilate");
  }
  if (notCounted.length > 0) {
    warnings.push(`not counted, for want of constants: ${notCounted.join(", ")}`);
  }
  return warnings;
}
