import { InputError } from "../../input/index.ts";
import type { ProcessRecipe } from "./process-recipe.ts";
import type { SessionRequest } from "./session-request.ts";

/** Refuses what a process has no use for, so that nothing given is left out in silence. */
export function refuseUnused(where: string, request: SessionRequest, recipe: ProcessRecipe): void {
  const { stop, fixer, wash } = request;
  const kit = "write your kit's steps into a copy of its recipe and give that as process";
  if (stop !== undefined && !recipe.steps.some((step) => step.bath === "stop")) {
    throw new InputError(
      where,
      "stop",
      stop,
      `leave it out: "${recipe.id}" has no stop bath; ${kit}`,
    );
  }
  if (recipe.pushTimesMin === null) return;
  if (fixer !== undefined) {
    const advice = `leave it out: "${recipe.id}" has a fixing time of its own; ${kit}`;
    throw new InputError(where, "fixer", fixer, advice);
  }
  for (const [key, value] of Object.entries(wash ?? {})) {
    if (key === "by" || value === undefined) continue;
    const advice = `leave it out: "${recipe.id}" has washes of its own, write only by ("changes" or "flow"); ${kit}`;
    throw new InputError(where, `wash.${key}`, value, advice);
  }
}
