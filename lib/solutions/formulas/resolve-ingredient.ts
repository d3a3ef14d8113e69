import { InputError, requireNumber } from "../../input/index.ts";
import type { Chemical } from "../chemistry/chemical.ts";
import {
  anhydrousFraction,
  type ChemicalInForm,
  chemicalInForm,
} from "../chemistry/find-chemical.ts";
import { molarMass } from "../chemistry/molar-mass.ts";
import type { FormulaIngredient } from "./bath-formula.ts";

/** More than a litre of any solution holds; a larger number is a slip of units. */
const MOST_PER_LITRE = 5000;

/** The chemical of an ingredient, from the registry or from the user's own formula. */
export function resolveIngredient(where: string, ingredient: FormulaIngredient): ChemicalInForm {
  const { chemical, form, ownFormula, gPerL, mlPerL } = ingredient;
  if ((gPerL === undefined) === (mlPerL === undefined)) {
    const advice = "write either gPerL (a solid) or mlPerL (a liquid)";
    throw new InputError(where, `amount of ${chemical}`, { gPerL, mlPerL }, advice);
  }
  const unit = gPerL === undefined ? "mL per litre" : "g per litre";
  const bounds = { above: 0, max: MOST_PER_LITRE, unit };
  requireNumber(where, `amount of ${chemical}`, gPerL ?? mlPerL, bounds);
  const found =
    ownFormula === undefined ? chemicalInForm(chemical, form) : ownForm(chemical, ownFormula);
  requireOneStrength(where, found, mlPerL);
  if (mlPerL !== undefined && found.form.densityGPerMl === undefined) {
    const advice = "its density is not in the registry; write it in grams, gPerL";
    throw new InputError(where, `amount of ${chemical}`, `${mlPerL} mL/L`, advice);
  }
  return found;
}

/** Glacial or 28 %: where a bottle's strength is left open, nothing may be guessed. */
export function requireOneStrength(
  where: string,
  found: ChemicalInForm,
  mlPerL: number | undefined,
): void {
  const { chemical, formNamed } = found;
  const liquids = chemical.forms.filter((form) => form.densityGPerMl !== undefined);
  const open = mlPerL === undefined ? liquids.length === chemical.forms.length : liquids.length > 0;
  if (formNamed || !open) return;
  const names = liquids.map(({ id }) => `"${chemical.name} ${id}"`).join(" or ");
  throw new InputError(where, `strength of ${chemical.name}`, undefined, `write ${names}`);
}

/** Another hydrate of a chemical of the registry, or else a chemical that the registry lacks. */
function ownForm(name: string, formula: string): ChemicalInForm {
  molarMass(formula); // a formula that does not parse is an error, not an unknown chemical
  try {
    return chemicalInForm(name, formula);
  } catch {
    return ownChemical(name, formula);
  }
}

/** A chemical known by its name and formula only. */
function ownChemical(name: string, formula: string): ChemicalInForm {
  const { molarMassGPerMol } = molarMass(formula);
  const form = { id: "as given", formula };
  const chemical: Chemical = {
    id: name.toLowerCase().replace(/[^a-z0-9]+/g, "-"),
    name,
    synonyms: [],
    role: "not in the registry",
    tags: [],
    forms: [form],
    hazards: {
      signalWord: "none",
      statements: [],
      note: "not in the registry; read its data sheet",
    },
  };
  return {
    chemical,
    form,
    label: name,
    molarMassGPerMol,
    massFraction: 1,
    anhydrousFraction: anhydrousFraction(formula),
    formNamed: true,
  };
}
