import recipeData from "../../../data/session/recipes.json" with { type: "json" };
import { requireOneOf } from "../../input/index.ts";
import type { SessionProcess } from "./session-request.ts";

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
  readonly id: SessionProcess;
  /** The lid may come off so many seconds into this bath. */
  readonly lightsOn: { readonly bath: string; readonly afterS: number };
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
 * Recipes of the three processes that a home session knows, each figure with its source.
 *
 * @example
 * processRecipes.length // => 3
 *
 * Source: data/session/recipes.json, by step.
 */
export const processRecipes: readonly ProcessRecipe[] =
  recipeData.processes as readonly ProcessRecipe[];

/**
 * The recipe of a process.
 *
 * @param process `"black-and-white negative"`, `"colour negative"` or `"colour reversal"`
 * @returns steps in order with minutes, temperature, tolerance and source
 * @throws InputError for another word
 *
 * @example
 * processRecipe("colour negative").steps.find((step) => step.bath === "developer")?.minutes // => 3.25
 *
 * Source: data/session/recipes.json, by step.
 */
export function processRecipe(process: SessionProcess): ProcessRecipe {
  const ids = processRecipes.map((recipe) => recipe.id);
  const id = requireOneOf("processRecipe", "process", process, ids);
  return processRecipes.find((recipe) => recipe.id === id) as ProcessRecipe;
}
