import { InputError, requireNumber } from "../../input/index.ts";
import { requireVolumeMl } from "../dilution/require-volume.ts";
import type { BathFormula } from "./bath-formula.ts";
import { resolveIngredient } from "./resolve-ingredient.ts";

/** One ingredient, for a batch. */
export interface BatchIngredient {
  /** Name and form, as on the label. */
  readonly what: string;
  readonly chemical: string;
  readonly form: string;
  /** False where the formula leaves the form open and the first of the registry was taken. */
  readonly formNamed: boolean;
  readonly amount: number;
  readonly unit: "g" | "mL";
  /** Mass of what is weighed or poured, g. */
  readonly massG: number;
  /** Water of crystallisation that it brings, g. */
  readonly crystalWaterG: number;
  /** Moles of the compound in it. */
  readonly molesMol: number;
  readonly note: string;
}

/** A formula scaled to a batch; amounts are exact, not yet rounded to an instrument. */
export interface FormulaBatch {
  readonly name: string;
  readonly volumeMl: number;
  readonly startingWaterMl: number;
  readonly startingTemperatureC: number;
  readonly ingredients: readonly BatchIngredient[];
}

/**
 * A formula scaled to a batch.
 *
 * amount = amount per litre · V / 1000; moles = mass · mass fraction / molar mass
 *
 * @param formula from `bathFormula`, `parseBathFormula` or your own object
 * @param volumeMl of the finished bath, above 0
 * @returns grams and millilitres in the order of mixing, with moles
 * @throws InputError for a volume not above 0, or an ingredient that the registry cannot resolve
 *
 * @example
 * scaleFormula(bathFormula("metol-sulfite-developer"), 500).ingredients.map((each) => each.amount) // => [3.75, 50]
 *
 * Source: the formula's own; molar masses from IUPAC 2021 weights.
 */
export function scaleFormula(formula: BathFormula, volumeMl: number): FormulaBatch {
  const where = "scaleFormula";
  const volume = requireVolumeMl(where, "volumeMl", volumeMl);
  if (!Array.isArray(formula?.ingredients) || formula.ingredients.length === 0) {
    const advice = "write a formula with at least one ingredient";
    throw new InputError(where, "ingredients", formula?.ingredients, advice);
  }
  const bounds = { above: 0, max: 1000, unit: "mL per litre" };
  const start = formula.startingWaterMlPerL;
  requireNumber(where, "startingWaterMlPerL", start, bounds);
  const water = { min: 0, max: 100, unit: "°C" };
  requireNumber(where, "startingTemperatureC", formula.startingTemperatureC, water);
  const scale = volume / 1000;
  const ingredients = formula.ingredients.map((ingredient): BatchIngredient => {
    const found = resolveIngredient(where, ingredient);
    const { chemical, form, label, massFraction, molarMassGPerMol } = found;
    const unit = ingredient.gPerL === undefined ? "mL" : "g";
    const amount = (ingredient.gPerL ?? ingredient.mlPerL ?? 0) * scale;
    const massG = unit === "g" ? amount : amount * (form.densityGPerMl ?? 1);
    return {
      what: label,
      chemical: chemical.name,
      form: form.id,
      formNamed: found.formNamed,
      amount,
      unit,
      massG,
      crystalWaterG: massG * (massFraction - found.anhydrousFraction),
      molesMol: (massG * massFraction) / molarMassGPerMol,
      note: ingredient.note ?? "",
    };
  });
  return {
    name: formula.name,
    volumeMl: volume,
    startingWaterMl: start * scale,
    startingTemperatureC: formula.startingTemperatureC,
    ingredients,
  };
}
