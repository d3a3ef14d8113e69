import { closestWord, InputError } from "../../input/index.ts";
import { type Chemical, type ChemicalForm, chemicals } from "./chemical.ts";
import { parseChemicalFormula } from "./chemical-formula.ts";
import { molarMass } from "./molar-mass.ts";

/** A chemical in one form, with what a calculation needs of it. */
export interface ChemicalInForm {
  readonly chemical: Chemical;
  readonly form: ChemicalForm;
  /** `"sodium carbonate, monohydrate"`; the name alone where there is only one form. */
  readonly label: string;
  readonly molarMassGPerMol: number;
  /** Mass fraction of the formula in what is sold. */
  readonly massFraction: number;
  /** Grams of the substance without its water, per gram of what is sold. */
  readonly anhydrousFraction: number;
}

/**
 * A chemical of the registry in one of its forms.
 *
 * @param name name or synonym, with the form in it or not: `"sodium carbonate monohydrate"`,
 *   `"borax"`, `"acetic acid 28 %"`, `"sodium-sulfite"`
 * @param form a form of the registry, or a formula of the same salt with other water
 *   (`"Na2CO3.7H2O"`); left out, the form in the name, or else the first of the registry
 * @returns the chemical, the form, its molar mass in g/mol and its fractions
 * @throws InputError for a name or form that is not in the registry, saying which there are
 *
 * @example
 * chemicalInForm("sodium carbonate monohydrate").molarMassGPerMol // => 124.0025
 *
 * Source: data/chemicals.json.
 */
export function chemicalInForm(name: string, form?: string): ChemicalInForm {
  const { chemical, rest } = findByName(name);
  const wanted = form ?? (rest === "" ? undefined : rest);
  const found = wanted === undefined ? chemical.forms[0] : findForm(chemical, wanted);
  if (!found) throw new InputError("chemicalInForm", "name", name, "this chemical has no form");
  const massFraction = found.massFraction ?? 1;
  const mass = molarMass(found.formula).molarMassGPerMol;
  const label = chemical.forms.length === 1 && found === chemical.forms[0];
  return {
    chemical,
    form: found,
    label: label ? chemical.name : `${chemical.name}, ${found.id}`,
    molarMassGPerMol: mass,
    massFraction,
    anhydrousFraction: massFraction * anhydrousFraction(found.formula),
  };
}

/** Grams of a substance without its water of crystallisation, per gram with it. */
export function anhydrousFraction(formula: string): number {
  const water = parseChemicalFormula(formula)
    .parts.filter((part) => part.formula === "H2O")
    .reduce((sum, part) => sum + part.multiplier, 0);
  return 1 - (water * molarMass("H2O").molarMassGPerMol) / molarMass(formula).molarMassGPerMol;
}

const plain = (text: string) =>
  text
    .toLowerCase()
    .replace(/[,()_-]+/g, " ")
    .replace(/\s*%/g, " %")
    .replace(/\s+/g, " ")
    .trim();

function findByName(name: string): { readonly chemical: Chemical; readonly rest: string } {
  const where = "chemicalInForm";
  if (typeof name !== "string" || name.trim() === "") {
    throw new InputError(where, "name", name, 'write a name such as "sodium sulfite"');
  }
  const text = plain(name);
  let best: { chemical: Chemical; rest: string; length: number } | undefined;
  for (const chemical of chemicals) {
    for (const known of [chemical.name, chemical.id, ...chemical.synonyms].map(plain)) {
      if (text !== known && !text.startsWith(`${known} `)) continue;
      if (best && best.length >= known.length) continue;
      best = { chemical, rest: text.slice(known.length).trim(), length: known.length };
    }
  }
  if (best) return best;
  const words = chemicals.flatMap((each) => [each.name, ...each.synonyms]);
  const near = closestWord(text, words);
  const meant = near === undefined ? "" : `did you mean "${near}"? `;
  const advice = `${meant}write a chemical of the registry (the list is \`chemicals\`)`;
  throw new InputError(where, "name", name, advice);
}

function findForm(chemical: Chemical, wanted: string): ChemicalForm {
  const text = plain(wanted);
  const listed = chemical.forms.find((form) =>
    [form.id, form.formula, ...(form.synonyms ?? [])].some((word) => plain(word) === text),
  );
  if (listed) return listed;
  const own = otherHydrate(chemical, wanted);
  if (own) return own;
  const ids = chemical.forms.map((form) => `"${form.id}"`);
  const near = closestWord(
    text,
    chemical.forms.flatMap((form) => [form.id, ...(form.synonyms ?? [])]),
  );
  const meant = near === undefined ? "" : ` (did you mean "${near}"?)`;
  const base = (chemical.forms[0]?.formula ?? "").split(".")[0];
  const advice = `write one of ${ids.join(", ")}${meant}, or the formula of another hydrate, such as "${base}.3H2O"`;
  throw new InputError("chemicalInForm", `form of ${chemical.name}`, wanted, advice);
}

/** The same salt with water that the registry does not list, given by its formula. */
function otherHydrate(chemical: Chemical, wanted: string): ChemicalForm | undefined {
  if (!/^[A-Z(]/.test(wanted.trim())) return undefined;
  const dry = (formula: string) =>
    parseChemicalFormula(formula)
      .parts.filter((part) => part.formula !== "H2O")
      .map((part) => `${part.multiplier}${part.formula}`)
      .join(".");
  const solid = chemical.forms.find((form) => form.massFraction === undefined);
  if (!solid || dry(solid.formula) !== dry(wanted)) return undefined;
  return { id: wanted.trim(), formula: wanted.trim() };
}
