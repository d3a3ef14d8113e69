import { InputError } from "../../input/index.ts";
import type { BathFormula, FormulaIngredient } from "./bath-formula.ts";
import { scaleFormula } from "./scale-formula.ts";

/**
 * A formula from JSON that a user wrote, checked field by field.
 *
 * @param value what `JSON.parse` gave: at least `name` and `ingredients`, each with `chemical` and
 *   `gPerL` or `mlPerL`; `form`, `ownFormula`, `note`, and the formula's other fields may follow
 * @returns the formula with defaults for what was left out (750 mL of water at 20 °C to start)
 * @throws InputError that says which field is wrong and what to write
 *
 * @example
 * requireBathFormula({ name: "test", ingredients: [{ chemical: "borax", gPerL: 2 }] }).startingWaterMlPerL // => 750
 *
 * Source: the formula's own.
 */
export function requireBathFormula(value: unknown): BathFormula {
  const where = "requireBathFormula";
  const record = asRecord(where, "formula", value);
  const name = text(where, record, "name", undefined);
  const list = record.ingredients;
  if (!Array.isArray(list) || list.length === 0) {
    throw new InputError(where, "ingredients", list, "write a list with at least one ingredient");
  }
  const ingredients = list.map((each, i): FormulaIngredient => {
    const ingredient = asRecord(where, `ingredients[${i}]`, each);
    const allowed = ["chemical", "form", "ownFormula", "gPerL", "mlPerL", "note"];
    const odd = Object.keys(ingredient).find((key) => !allowed.includes(key));
    if (odd !== undefined) {
      const advice = `this field is not known; write ${allowed.join(", ")}`;
      throw new InputError(where, `ingredients[${i}].${odd}`, ingredient[odd], advice);
    }
    text(where, ingredient, "chemical", undefined);
    for (const key of ["form", "ownFormula", "note"]) text(where, ingredient, key, "");
    return ingredient as unknown as FormulaIngredient;
  });
  const notes = record.notes ?? [];
  if (!Array.isArray(notes) || notes.some((note) => typeof note !== "string")) {
    throw new InputError(where, "notes", notes, "write a list of sentences");
  }
  const formula: BathFormula = {
    id: text(where, record, "id", name.toLowerCase().replace(/[^a-z0-9]+/g, "-")),
    name,
    purpose: text(where, record, "purpose", ""),
    ingredients,
    startingWaterMlPerL: (record.startingWaterMlPerL ?? 750) as number,
    startingTemperatureC: (record.startingTemperatureC ?? 20) as number,
    use: text(where, record, "use", ""),
    source: text(where, record, "source", "the user's own"),
    howObtained: text(where, record, "howObtained", "given by the user"),
    notes,
  };
  scaleFormula(formula, 1000); // checks numbers and chemicals
  return formula;
}

function asRecord(where: string, argument: string, value: unknown): Record<string, unknown> {
  if (typeof value === "object" && value !== null && !Array.isArray(value)) {
    return value as Record<string, unknown>;
  }
  throw new InputError(where, argument, value, "write an object, { … }");
}

function text(
  where: string,
  record: Record<string, unknown>,
  key: string,
  fallback: string | undefined,
): string {
  const value = record[key] ?? fallback;
  if (typeof value === "string" && (value !== "" || fallback === "")) return value;
  throw new InputError(where, key, value, "write a word or sentence in quotes");
}
