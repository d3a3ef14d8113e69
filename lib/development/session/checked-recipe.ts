import { InputError, requireNumber, requireOneOf } from "../../input/index.ts";
import { bathTemperatureLimits, requireBathTemperature } from "../rate/bath-temperature.ts";
import { requireAgitation } from "./agitation.ts";
import type { ProcessRecipe, RecipeStep } from "./process-recipe.ts";
import { requireList } from "./require-shape.ts";

/** Checks a recipe that the user wrote, and returns it. */
export function checkedRecipe(where: string, recipe: ProcessRecipe): ProcessRecipe {
  if (typeof recipe.id !== "string" || recipe.id.trim() === "") {
    throw new InputError(where, "process.id", recipe.id, 'write a name such as "my kit"');
  }
  requireList(where, "process.steps", recipe.steps ?? null, '[{ bath: "developer", … }]');
  const colour = recipe.pushTimesMin !== null;
  const baths = recipe.steps.map((step, i) =>
    checkedStep(where, `process.steps[${i}]`, step, colour),
  );
  baths.forEach((bath, i) => {
    if (baths.indexOf(bath) === i) return;
    const advice = 'write each bath once; a second wash is a "second wash"';
    throw new InputError(where, `process.steps[${i}].bath`, bath, advice);
  });
  if (!baths.includes("developer")) {
    const advice = 'write one step whose bath is "developer" (in colour reversal the first one)';
    throw new InputError(where, "process.steps", baths, advice);
  }
  requireOneOf(where, "process.lightsOn.bath", recipe.lightsOn?.bath, baths);
  requireNumber(where, "process.lightsOn.afterS", recipe.lightsOn.afterS, { min: 0, unit: "s" });
  requireBathTemperature(where, "process.emulsionLimitC", recipe.emulsionLimitC);
  if (recipe.pushTimesMin !== null) checkedPushes(where, recipe.pushTimesMin);
  return recipe;
}

function checkedStep(where: string, at: string, step: RecipeStep, colour: boolean): string {
  if (typeof step?.bath !== "string" || step.bath.trim() === "") {
    throw new InputError(where, `${at}.bath`, step?.bath, 'write a bath such as "bleach-fix"');
  }
  // The plan works out a black-and-white session's development, fixing and wash, nothing else.
  const open = ["developer", ...(colour ? [] : ["fixer", "wash"])].includes(step.bath);
  if (!(open && step.minutes === null)) {
    requireNumber(where, `${at}.minutes`, step.minutes, { above: 0, max: 600, unit: "min" });
  }
  if (step.temperatureC !== null) {
    requireBathTemperature(where, `${at}.temperatureC`, step.temperatureC, bathTemperatureLimits);
  }
  if (step.toleranceC !== null) {
    requireNumber(where, `${at}.toleranceC`, step.toleranceC, { above: 0, max: 10, unit: "°C" });
  }
  requireAgitation(where, `${at}.agitation`, step.agitation);
  return step.bath;
}

function checkedPushes(where: string, pushes: NonNullable<ProcessRecipe["pushTimesMin"]>): void {
  requireList(where, "process.pushTimesMin", pushes, "[{ stops: 0, minutes: 3.25 }]");
  pushes.forEach(({ minutes, stops }, i) => {
    requireNumber(where, `process.pushTimesMin[${i}].stops`, stops, { min: -3, max: 3 });
    const bounds = { above: 0, max: 60, unit: "min" };
    requireNumber(where, `process.pushTimesMin[${i}].minutes`, minutes, bounds);
  });
  if (pushes.some((push) => push.stops === 0)) return;
  const advice = "write the normal time too: { stops: 0, minutes: 3.25 }";
  throw new InputError(where, "process.pushTimesMin", pushes, advice);
}
