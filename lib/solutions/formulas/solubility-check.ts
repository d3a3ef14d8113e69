import { requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { chemicalInForm } from "../chemistry/find-chemical.ts";
import { percentAt } from "../chemistry/solubility.ts";
import type { BatchIngredient, FormulaBatch } from "./scale-formula.ts";

/** Whether one ingredient will dissolve. */
export interface IngredientSolubility {
  readonly what: string;
  readonly temperatureC: number;
  /** Grams of anhydrous substance per 100 g of the water that is there. */
  readonly neededGPer100gWater: number;
  readonly takenGPer100gWater: number;
  readonly dissolves: boolean;
}

/** Room temperature at which a finished bath must stay clear, °C. */
const ROOM_C = 20;
/** Volume that a gram of dissolved salt takes, mL; 0.3 to 0.45 for the salts of these baths. */
const ML_PER_G = 0.4;

/**
 * Whether each solid of a batch dissolves in the starting water, and stays dissolved at 20 °C.
 *
 * needed = 100 · m · f / (water + m · (1 − f)), with f the fraction that is not water of
 * crystallisation; compared with the tabulated solubility at the starting temperature, and at 20 °C
 * with the water of the finished bath.
 *
 * @param batch from `scaleFormula`
 * @returns one row per solid that has a tabulated solubility, the worse of the two conditions; each
 *   salt by itself, so that salts with a common ion may fail where this says they dissolve
 *
 * @example
 * solubilityCheck(scaleFormula(bathFormula("metol-sulfite-developer"), 1000)).every((row) => row.dissolves) // => true
 *
 * Source: solubilities of the registry (CRC Handbook, 98th ed., unless marked).
 */
export function solubilityCheck(batch: FormulaBatch): readonly IngredientSolubility[] {
  requireObject(
    "solubilityCheck",
    "batch",
    batch,
    "an object with name, volumeMl, startingWaterMl, …",
  );
  const where = "solubilityCheck";
  requireNumber(where, "volumeMl", batch.volumeMl, { above: 0, unit: "mL" });
  requireNumber(where, "startingWaterMl", batch.startingWaterMl, { above: 0, unit: "mL" });
  requireEntries(where, "ingredients", batch.ingredients, "the ingredients of scaleFormula");
  batch.ingredients.forEach(({ massG, unit }, i) => {
    if (unit !== "g") return;
    requireNumber(where, `ingredients[${i}].massG`, massG, { min: 0, unit: "g" });
  });
  const dry = batch.ingredients.reduce((sum, each) => sum + ML_PER_G * each.massG, 0);
  const conditions = [
    { temperatureC: batch.startingTemperatureC, waterG: batch.startingWaterMl },
    { temperatureC: ROOM_C, waterG: Math.max(batch.startingWaterMl, batch.volumeMl - dry) },
  ];
  return batch.ingredients.flatMap((each): readonly IngredientSolubility[] => {
    if (each.unit !== "g") return [];
    const known = lookUp(each);
    const table = known?.chemical.solubility;
    if (!known || !table) return [];
    const substance = each.massG * known.anhydrousFraction;
    const rows = conditions.flatMap(({ temperatureC, waterG }) => {
      const percent = percentAt(table.values, temperatureC);
      if (percent === undefined) return [];
      const needed = (100 * substance) / (waterG + each.massG - substance);
      const taken = (100 * percent) / (100 - percent);
      return [
        {
          what: each.what,
          temperatureC,
          neededGPer100gWater: needed,
          takenGPer100gWater: taken,
          dissolves: needed <= taken,
        },
      ];
    });
    const use = (row: IngredientSolubility) => row.neededGPer100gWater / row.takenGPer100gWater;
    const worst = rows.toSorted((a, b) => use(b) - use(a))[0];
    return worst ? [worst] : [];
  });
}

function lookUp({ chemical, form }: BatchIngredient) {
  try {
    return chemicalInForm(chemical, form);
  } catch {
    return undefined; // a chemical of the user's own has no table
  }
}
