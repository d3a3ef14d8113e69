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
  /** False where the name leaves the form open and the first of the registry was taken. */
  readonly formNamed: boolean;
}

/**
 * A chemical of the registry in one of its forms.
 *
 * @param name name or synonym, with the form before or after it or not: `"sodium carbonate
 *   monohydrate"`, `"glacial acetic acid"`, `"borax"`, `"acetic acid 28 %"`, `"washing soda"`
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
  if (form !== undefined && typeof form !== "string") {
    const advice = 'write a form such as "monohydrate", or leave it out';
    throw new InputError("chemicalInForm", "form", form, advice);
  }
  const { chemical, rest } = findByName(name);
  // "washing soda" is a form's own name, not soda of a form "washing".
  const ownName = rest === "" ? undefined : (listedForm(chemical, name)?.id ?? rest);
  const wanted = form ?? ownName;
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
    formNamed: chemical.forms.length === 1 || wanted !== undefined,
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
      const before = text === known || text.startsWith(`${known} `);
      if (!before && !text.endsWith(` ${known}`)) continue;
      if (best && best.length >= known.length) continue;
      const rest = before ? text.slice(known.length) : text.slice(0, -known.length);
      best = { chemical, rest: rest.trim(), length: known.length };
    }
  }
  if (best) return best;
  const words = chemicals.flatMap((each) => [each.name, ...each.synonyms]);
  const near = closestWord(text, words);
  const meant = near === undefined ? "" : `did you mean "${near}"? `;
  const advice = `${meant}write a chemical of the registry (the list is \`chemicals\`)`;
  throw new InputError(where, "name", name, advice);
}

function listedForm(chemical: Chemical, wanted: string): ChemicalForm | undefined {
  const text = plain(wanted);
  return chemical.forms.find((form) =>
    [form.id, form.formula, ...(form.synonyms ?? [])].some((word) => plain(word) === text),
  );
}

function findForm(chemical: Chemical, wanted: string): ChemicalForm {
  const text = plain(wanted);
  const listed = listedForm(chemical, wanted);
  if (listed) return listed;
  const own = otherHydrate(chemical, wanted);
  if (own) return own;
  const ids = chemical.forms.map((form) => `"${form.id}"`);
  const near = closestWord(
    text,
    chemical.forms.flatMap((form) => [form.id, ...(form.synonyms ?? [])]),
  );
  const meant = near === undefined ? "" : ` (did you mean "${near}"?)`;
  const [salt] = chemical.forms.filter((form) => form.massFraction === undefined);
  const other = salt
    ? `the formula of another hydrate, such as "${salt.formula.split(".")[0]}.3H2O"`
    : "bring another strength to one of these first (acidToStrength)";
  const advice = `write one of ${ids.join(", ")}${meant}, or ${other}`;
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
