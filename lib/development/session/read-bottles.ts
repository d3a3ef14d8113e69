import { InputError, requireNumber, requireOneOf } from "../../input/index.ts";
import { isWaterBath, type ProcessRecipe } from "./process-recipe.ts";
import { requireDate } from "./read-developers.ts";
import { requireKnownKeys, requireYesNo } from "./require-shape.ts";
import type { SessionBottle } from "./session-request.ts";

const KEYS = [
  "bath",
  "volumeMl",
  "oneShot",
  "capacityFilmsPerL",
  "filmsDone",
  "timeIncreasePercentPerFilm",
  "expiresOn",
] satisfies readonly (keyof SessionBottle)[];

/** Baths of a process that come out of a bottle. */
export function bottledBaths(recipe: ProcessRecipe): readonly string[] {
  const baths = recipe.steps.map((step) => step.bath).filter((bath) => !isWaterBath(bath));
  // A black-and-white developer has a list of its own.
  return recipe.pushTimesMin === null ? baths.filter((bath) => bath !== "developer") : baths;
}

/** Checks the bottles of a session against the baths of its process. */
export function readBottles(
  where: string,
  bottles: readonly SessionBottle[],
  recipe: ProcessRecipe,
): readonly SessionBottle[] {
  const known = bottledBaths(recipe);
  const seen = new Set<string>();
  bottles.forEach((bottle, i) => {
    const at = `bottles[${i}]`;
    if (bottle?.bath === "developer" && !known.includes("developer")) {
      const advice = "write a black-and-white developer under developers, with its dilution";
      throw new InputError(where, `${at}.bath`, bottle.bath, advice);
    }
    const bath = requireOneOf(where, `${at}.bath`, bottle?.bath, known);
    if (seen.has(bath)) {
      throw new InputError(where, `${at}.bath`, bath, "write each bath once, its bottles together");
    }
    seen.add(bath);
    requireKnownKeys(where, at, bottle, KEYS);
    requireYesNo(where, `${at}.oneShot`, bottle.oneShot);
    requireNumber(where, `${at}.volumeMl`, bottle.volumeMl, { min: 0, unit: "mL" });
    const { capacityFilmsPerL, filmsDone, timeIncreasePercentPerFilm } = bottle;
    if (capacityFilmsPerL !== undefined) {
      requireNumber(where, `${at}.capacityFilmsPerL`, capacityFilmsPerL, { above: 0 });
    }
    if (filmsDone !== undefined) requireNumber(where, `${at}.filmsDone`, filmsDone, { min: 0 });
    if (timeIncreasePercentPerFilm !== undefined) {
      const bounds = { min: 0, max: 100, unit: "%" };
      requireNumber(where, `${at}.timeIncreasePercentPerFilm`, timeIncreasePercentPerFilm, bounds);
    }
    requireDate(where, `${at}.expiresOn`, bottle.expiresOn);
  });
  return bottles.map((bottle) => {
    const capacity =
      bottle.capacityFilmsPerL ??
      recipe.steps.find((step) => step.bath === bottle.bath)?.capacityFilmsPerL;
    return capacity === undefined ? bottle : { ...bottle, capacityFilmsPerL: capacity };
  });
}
