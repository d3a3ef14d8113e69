import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import { chemicalInForm } from "../chemistry/find-chemical.ts";
import type { BathFormula, FormulaIngredient } from "./bath-formula.ts";
import { substituteChemical } from "./substitute-chemical.ts";

/**
 * A formula with one chemical put for another by moles of the active ion.
 *
 * @param formula is not changed
 * @param from an ingredient of it: `"sodium carbonate"`; its form is the formula's
 * @param to what is at hand: `"potassium carbonate"`, `"borax pentahydrate"`
 * @returns a new formula whose notes say what was done and what to mind
 * @throws InputError if the formula does not have the ingredient, or `to` is not of the same ion
 *
 * @example
 * substituteInFormula(bathFormula("print-developer"), "sodium carbonate", "potassium carbonate").ingredients[3].gPerL // => 89.1624
 *
 * Source: equal moles; molar masses from IUPAC 2021 weights.
 */
export function substituteInFormula(formula: BathFormula, from: string, to: string): BathFormula {
  requireObject("substituteInFormula", "formula", formula, "an object with id, name, purpose, …");
  requireEntries("substituteInFormula", "notes", formula.notes, "a list of texts");
  requireEntries("substituteInFormula", "ingredients", formula.ingredients);
  const wanted = chemicalInForm(from).chemical;
  const isWanted = (each: FormulaIngredient) =>
    each.ownFormula === undefined && chemicalInForm(each.chemical, each.form).chemical === wanted;
  const old = formula.ingredients.find(isWanted);
  if (!old) {
    const names = formula.ingredients.map((each) => each.chemical).join(", ");
    throw new InputError("substituteInFormula", "from", from, `write one of ${names}`);
  }
  const inForm = chemicalInForm(old.chemical, old.form);
  const amount = old.gPerL ?? old.mlPerL ?? 0;
  const { chemical, form } = chemicalInForm(to);
  const name = `${inForm.chemical.name} ${inForm.form.id}`;
  const result = substituteChemical(name, `${chemical.name} ${form.id}`, amount);
  const put: FormulaIngredient = {
    chemical: chemical.name,
    form: form.id,
    ...(result.unit === "g" ? { gPerL: result.amount } : { mlPerL: result.amount }),
    ...(old.note === undefined ? {} : { note: old.note }),
  };
  const old1 = `${amount} ${old.gPerL === undefined ? "mL/L" : "g/L"} of ${result.from}`;
  const note = `${result.to} put for ${old1} by ${result.basis}`;
  return {
    ...formula,
    ingredients: formula.ingredients.map((each) => (each === old ? put : each)),
    notes: [...formula.notes, note, ...result.warnings],
  };
}
