import graduateData from "../../../data/solutions/graduates.json" with { type: "json" };
import { closestWord, InputError, requireNumber } from "../../input/index.ts";

/** A vessel for measuring volume. */
export interface Graduate {
  readonly id: string;
  readonly name: string;
  readonly capacityMl: number;
  /** Smallest division of the scale, mL; the capacity itself for a one-mark flask. */
  readonly divisionMl: number;
  /** Largest permissible error at any mark, ± mL. */
  readonly toleranceMl: number;
  /** Class in its standard, `"A"` or `"B"`; empty if it has none. */
  readonly grade: string;
  readonly source: string;
  readonly howObtained: string;
}

/** Cylinders, flasks, syringes, beakers and jugs, each with where its tolerance comes from. */
export const graduates: readonly Graduate[] = graduateData.graduates;

/**
 * The graduate with a name.
 *
 * @param id as in the list `graduates`: `"cylinder-100-b"`, `"syringe-10"`, `"jug-1000"`
 * @returns capacity, division and tolerance in mL
 * @throws InputError for a name that is not in the list
 *
 * @example
 * graduate("cylinder-100-b").toleranceMl // => 1
 */
export function graduate(id: string): Graduate {
  return graduateFor("graduate", id);
}

/** A graduate by name, or one given as an object, checked. */
export function graduateFor(where: string, given: string | Graduate): Graduate {
  if (typeof given === "object" && given !== null) {
    requireNumber(where, "graduate.capacityMl", given.capacityMl, { above: 0, unit: "mL" });
    const bounds = { above: 0, max: given.capacityMl, unit: "mL" };
    requireNumber(where, "graduate.divisionMl", given.divisionMl, bounds);
    requireNumber(where, "graduate.toleranceMl", given.toleranceMl, { min: 0, unit: "mL" });
    return given;
  }
  const found = graduates.find((each) => each.id === given);
  if (found) return found;
  const ids = graduates.map((each) => each.id);
  const near = typeof given === "string" ? closestWord(given, ids) : undefined;
  const meant = near === undefined ? "" : ` (did you mean "${near}"?)`;
  throw new InputError(where, "graduate", given, `write one of ${ids.join(", ")}${meant}`);
}
