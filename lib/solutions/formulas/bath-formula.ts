import formulaData from "../../../data/formulas/bath-formulas.json" with { type: "json" };
import { closestWord, InputError } from "../../input/index.ts";

/** One line of a formula, per litre of the finished bath. */
export interface FormulaIngredient {
  /** Name of a chemical of the registry. */
  readonly chemical: string;
  /** Its form; the registry's first if left out. */
  readonly form?: string;
  /** Formula of a chemical that the registry lacks; `chemical` is then any name. */
  readonly ownFormula?: string;
  /** Grams per litre, for a solid; one of the two is given. */
  readonly gPerL?: number;
  /** Millilitres per litre, for a liquid. */
  readonly mlPerL?: number;
  /** What to mind with this one. */
  readonly note?: string;
}

/** A published or user's formula. Ingredients stand in the order of mixing. */
export interface BathFormula {
  readonly id: string;
  readonly name: string;
  /** `"developer"`, `"stop bath"`, `"fixer"`, `"wash aid"`, `"bleach"`; any word for a user's. */
  readonly purpose: string;
  readonly ingredients: readonly FormulaIngredient[];
  /** Water to start with, mL per litre of bath. */
  readonly startingWaterMlPerL: number;
  readonly startingTemperatureC: number;
  /** How it is used: `"stock"`, `"1+2 for paper"`; empty if nothing is said. */
  readonly use: string;
  readonly source: string;
  readonly howObtained: string;
  readonly notes: readonly string[];
}

/** The formulas that come with the library. */
export const bathFormulas: readonly BathFormula[] = formulaData.formulas;

/**
 * A formula that comes with the library.
 *
 * @param id such as `"metol-sulfite-developer"`; the list is `bathFormulas`
 * @returns the formula, per litre, with its source
 * @throws InputError for an id that is not in the list
 *
 * @example
 * bathFormula("metol-sulfite-developer").ingredients.length // => 2
 *
 * Source: data/formulas/bath-formulas.json, each formula with its own.
 */
export function bathFormula(id: string): BathFormula {
  const found = bathFormulas.find((formula) => formula.id === id);
  if (found) return found;
  const ids = bathFormulas.map((formula) => formula.id);
  const near = typeof id === "string" ? closestWord(id, ids) : undefined;
  const meant = near === undefined ? "" : ` (did you mean "${near}"?)`;
  throw new InputError("bathFormula", "id", id, `write one of ${ids.join(", ")}${meant}`);
}
