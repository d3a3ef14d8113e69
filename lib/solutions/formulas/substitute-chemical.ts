import { InputError, requireNumber } from "../../input/index.ts";
import { cautionsFor } from "../cautions/cautions-for.ts";
import { type ChemicalInForm, chemicalInForm } from "../chemistry/find-chemical.ts";
import { requireOneStrength } from "./resolve-ingredient.ts";
import { substitutionAdvice, substitutionWarnings } from "./substitution-warnings.ts";

/** How much of one chemical does the work of another. */
export interface Substitution {
  readonly from: string;
  readonly to: string;
  /** Amount of the second, in `unit`. */
  readonly amount: number;
  readonly unit: "g" | "mL";
  /** Grams of the second per gram of the first. */
  readonly massFactor: number;
  readonly molesOfActiveIon: number;
  readonly basis: string;
  readonly warnings: readonly string[];
  readonly cautions: readonly string[];
}

/**
 * The amount of one form or salt that replaces an amount of another.
 *
 * m₂ = m₁ · (w₁ n₁ / M₁) · (M₂ / w₂ n₂), with w the mass fraction in what is sold, n the active ions
 * per formula unit and M the molar mass: equal moles of the active ion.
 *
 * @param from chemical in the formula, as for `chemicalInForm`: `"borax"`, `"sodium sulfite"`
 * @param to chemical at hand, of the same active ion: `"borax pentahydrate"`, `"potassium carbonate"`
 * @param amount of the first, at least 0: g, or mL if it is a liquid of the registry
 * @returns the amount of the second in g (mL for a liquid), the factor by mass, and what to mind
 * @throws InputError for a chemical that is unknown, not of the same active ion, or a liquid of which the
 *   name leaves the strength open
 *
 * @example
 * substituteChemical("sodium sulfite", "sodium sulfite heptahydrate", 100).amount // => 200.0543
 *
 * Source: equal moles; molar masses from IUPAC 2021 weights.
 */
export function substituteChemical(from: string, to: string, amount: number): Substitution {
  const where = "substituteChemical";
  const first = chemicalInForm(from);
  const second = chemicalInForm(to);
  requireOneStrength(where, first, undefined);
  requireOneStrength(where, second, undefined);
  const given = requireNumber(where, "amount", amount, { min: 0 });
  const [ion, otherIon] = [first.chemical.active?.ion, second.chemical.active?.ion];
  if (first.chemical !== second.chemical && (ion === undefined || ion !== otherIon)) {
    const advice = substitutionAdvice(first, second);
    throw new InputError(where, "to", to, advice);
  }
  const massG = given * (first.form.densityGPerMl ?? 1);
  const moles = massG * activePerGram(first);
  const outG = moles / activePerGram(second);
  const liquid = second.form.densityGPerMl;
  const warnings = substitutionWarnings(first, second, moles);
  const alkali = warnings.some((each) => each.includes("add") && each.includes("hydroxide"));
  return {
    from: first.label,
    to: second.label,
    amount: liquid === undefined ? outG : outG / liquid,
    unit: liquid === undefined ? "g" : "mL",
    massFactor: activePerGram(first) / activePerGram(second),
    molesOfActiveIon: moles,
    basis:
      first.chemical === second.chemical
        ? "the same substance in another form"
        : `equal moles of ${ion}`,
    warnings,
    cautions: cautionsFor([first.label, second.label, ...(alkali ? ["sodium hydroxide"] : [])]),
  };
}

/** Moles of active ion per gram of what is sold. */
function activePerGram({ chemical, form, massFraction, molarMassGPerMol }: ChemicalInForm): number {
  const count = form.perFormulaUnit ?? chemical.active?.perFormulaUnit ?? 1;
  return (massFraction * count) / molarMassGPerMol;
}
