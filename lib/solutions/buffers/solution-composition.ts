import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import type { BathFormula, FormulaIngredient } from "../formulas/bath-formula.ts";
import { resolveIngredient } from "../formulas/resolve-ingredient.ts";

/**
 * What a solution holds, as far as its pH goes: strong ions, and weak acids by their total whatever
 * their state. Protons are not listed; they follow from electroneutrality.
 */
export interface SolutionComposition {
  /** mol/L by ion; the charge stands in the name: `"Na+"`, `"Br-"`, `"S2O3--"`. */
  readonly ions: Readonly<Record<string, number>>;
  /** mol/L by id of `weakAcids`. */
  readonly acids: Readonly<Record<string, number>>;
  /** Chemicals that were in the recipe but whose effect on pH is not known. */
  readonly notCounted: readonly string[];
}

/** Water with nothing in it. */
export const pureWater: SolutionComposition = { ions: {}, acids: {}, notCounted: [] };

/** A formula, a list of its ingredients, or a composition already worked out. */
export type SolutionSource = BathFormula | readonly FormulaIngredient[] | SolutionComposition;

/**
 * What a recipe puts into solution.
 *
 * c = Σ n · (grams per litre · mass fraction / molar mass) over the ingredients
 *
 * @param source a formula, a list of `{ chemical, form?, gPerL | mlPerL }`, or a composition
 * @returns mol/L of ions and of weak acids
 * @throws InputError for an ingredient that the registry cannot resolve
 *
 * @example
 * solutionComposition([{ chemical: "borax", gPerL: 3.813625 }]).acids.boric // => 0.04
 *
 * Source: data/chemicals.json; molar masses from IUPAC 2021 weights.
 */
export function solutionComposition(source: SolutionSource): SolutionComposition {
  const where = "solutionComposition";
  if (typeof source !== "object" || source === null) {
    const advice = "write a formula, a list of ingredients, or a composition";
    throw new InputError(where, "source", source, advice);
  }
  if ("ions" in source) return checked(where, source);
  const list = "ingredients" in source ? source.ingredients : source;
  const ions: Record<string, number> = {};
  const acids: Record<string, number> = {};
  const notCounted: string[] = [];
  for (const ingredient of list) {
    const { chemical, form, label, massFraction, molarMassGPerMol } = resolveIngredient(
      where,
      ingredient,
    );
    const gPerL = ingredient.gPerL ?? (ingredient.mlPerL ?? 0) * (form.densityGPerMl ?? 1);
    const molPerL = (gPerL * massFraction) / molarMassGPerMol;
    const dissolves = form.dissolves ?? chemical.dissolves;
    if (!dissolves) notCounted.push(label);
    for (const [ion, count] of Object.entries(dissolves?.ions ?? {})) {
      ions[ion] = (ions[ion] ?? 0) + count * molPerL;
    }
    for (const [acid, count] of Object.entries(dissolves?.acids ?? {})) {
      acids[acid] = (acids[acid] ?? 0) + count * molPerL;
    }
  }
  return { ions, acids, notCounted };
}

/**
 * Two solutions mixed.
 *
 * c = (1 − x) c₁ + x c₂
 *
 * @param first the one that is there
 * @param second the one that comes in
 * @param share of the second in the mixture by volume, from 0 to 1
 * @returns the composition of the mixture; volumes are taken as additive
 * @throws InputError for a share outside 0 to 1
 *
 * @example
 * mixSolutions(pureWater, { ions: { "Na+": 0.1 }, acids: {}, notCounted: [] }, 0.5).ions // => { "Na+": 0.05 }
 */
export function mixSolutions(
  first: SolutionComposition,
  second: SolutionComposition,
  share: number,
): SolutionComposition {
  requireObject("mixSolutions", "first", first, "an object with ions, acids and notCounted");
  requireEntries("mixSolutions", "notCounted", first.notCounted, "a list of texts");
  requireObject("mixSolutions", "acids", first.acids, "an object");
  requireObject("mixSolutions", "ions", first.ions, "an object");
  requireObject("mixSolutions", "second", second, "an object with ions, acids and notCounted");
  requireEntries("mixSolutions", "notCounted", second.notCounted, "a list of texts");
  requireObject("mixSolutions", "acids", second.acids, "an object");
  requireObject("mixSolutions", "ions", second.ions, "an object");
  const x = requireNumber("mixSolutions", "share", share, { min: 0, max: 1 });
  const mixed = (a: Readonly<Record<string, number>>, b: Readonly<Record<string, number>>) => {
    const names = new Set([...Object.keys(a), ...Object.keys(b)]);
    return Object.fromEntries(
      [...names].map((name) => [name, (1 - x) * (a[name] ?? 0) + x * (b[name] ?? 0)]),
    );
  };
  return {
    ions: mixed(first.ions, second.ions),
    acids: mixed(first.acids, second.acids),
    notCounted: [...new Set([...first.notCounted, ...second.notCounted])],
  };
}

function checked(where: string, composition: SolutionComposition): SolutionComposition {
  for (const kind of ["ions", "acids"] as const) {
    for (const [name, value] of Object.entries(composition[kind])) {
      requireNumber(where, `${kind}["${name}"]`, value, { min: 0, max: 100, unit: "mol/L" });
    }
  }
  return composition;
}

/** Charge of an ion from the signs at the end of its name. */
export function ionCharge(where: string, ion: string): number {
  const signs = /(\++|[-−]+)$/.exec(ion)?.[1] ?? "";
  if (signs === "") {
    const advice = 'write the charge at the end of the name, as in "Na+" or "SO4--"';
    throw new InputError(where, "ions", ion, advice);
  }
  return signs.startsWith("+") ? signs.length : -signs.length;
}
