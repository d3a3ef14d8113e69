import recipeData from "../../../data/session/recipes.json" with { type: "json" };
import { requireOneOf } from "../../input/index.ts";
import { checkedRecipe } from "./checked-recipe.ts";

/** The kinds of processing that have a recipe of their own here. */
export type SessionProcess =
  | "black-and-white negative"
  | "colour negative"
  | "colour negative, bleach-fix"
  | "colour reversal";

/** One bath of a process, with where its figures come from. */
export interface RecipeStep {
  readonly bath: string;
  /** Minutes, or null where the plan works them out. */
  readonly minutes: number | null;
  readonly temperatureC: number | null;
  readonly toleranceC: number | null;
  readonly agitation: string;
  readonly optional: boolean;
  /** Films of the trade's size that a litre takes, where a source gives it. */
  readonly capacityFilmsPerL?: number;
  readonly capacitySource?: string;
  readonly source: string;
  readonly howObtained: string;
}

/** The steps of a process run by hand in a closed tank. */
export interface ProcessRecipe {
  /** One of `SessionProcess`, or a name of your own. */
  readonly id: string;
  /** The lid may come off so many seconds into this bath. */
  readonly lightsOn: { readonly bath: string; readonly afterS: number };
  /** Colour: developer minutes by push, 0 among them; null where the films bring their own time. */
  readonly pushTimesMin: readonly { readonly stops: number; readonly minutes: number }[] | null;
  readonly push: string;
  /** A developer hotter than this is refused, °C. */
  readonly emulsionLimitC: number;
  readonly usualRangeC: readonly number[];
  readonly usualSource: string;
  readonly usualHowObtained: string;
  readonly steps: readonly RecipeStep[];
}

/**
 * Recipes of the processes that a home session knows, each figure with its source. A kit's leaflet
 * goes before them: copy a recipe, write the leaflet's steps into it, and give that to `planSession`.
 *
 * @example
 * processRecipes.length // => 4
 *
 * Source: data/session/recipes.json, by step.
 */
export const processRecipes: readonly ProcessRecipe[] =
  recipeData.processes as readonly ProcessRecipe[];

/**
 * The recipe of a process by name, or one of your own, checked.
 *
 * A bath named `"wash"`, `"pre-wash"`, `"second wash"` … or `"rinse"` is water and needs no bottle.
 *
 * @param process name of one of `processRecipes`, or a recipe: steps with minutes, °C and agitation,
 *   no bath twice, a `developer` among them
 * @returns steps in order with minutes, temperature, tolerance and source
 * @throws InputError for another word, or a step that cannot be
 *
 * @example
 * const kit = processRecipe("colour negative, bleach-fix")
 * const steps = kit.steps.map((step) => (step.bath === "bleach-fix" ? { ...step, minutes: 8 } : step))
 * processRecipe({ ...kit, id: "my kit", steps }).steps.find((step) => step.bath === "bleach-fix")?.minutes // => 8
 *
 * Source: data/session/recipes.json, by step.
 */
export function processRecipe(process: SessionProcess | ProcessRecipe): ProcessRecipe {
  const where = "processRecipe";
  if (typeof process === "object" && process !== null) return checkedRecipe(where, process);
  const ids = processRecipes.map((recipe) => recipe.id);
  const id = requireOneOf(where, "process", process, ids);
  return processRecipes.find((recipe) => recipe.id === id) as ProcessRecipe;
}

/** The developer as the sink should hear it: the first one where a second follows. */
export function developerName({ steps }: ProcessRecipe): string {
  const second = steps.some(({ bath }) => bath !== "developer" && bath.endsWith("developer"));
  return second ? "first developer" : "developer";
}

/** Whether a bath of a recipe is plain water. */
export function isWaterBath(bath: string): boolean {
  return /(?:^|[ -])wash$/.test(bath) || bath === "rinse";
}
