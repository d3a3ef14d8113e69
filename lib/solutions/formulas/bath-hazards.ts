import { requireEntries, requireObject } from "../../input/index.ts";
import { chemicalInForm } from "../chemistry/find-chemical.ts";
import {
  type DissolvedSubstance,
  type SolutionHazards,
  solutionHazards,
} from "../chemistry/solution-hazards.ts";
import type { FormulaBatch } from "./scale-formula.ts";

/**
 * Signal word and hazard statements of a finished bath, by calculation from its formula.
 *
 * c = 100 · m / max(V · 1 g/mL, Σ m): a bath is no lighter than water, so c is on the safe side
 *
 * @param batch from `scaleFormula`
 * @returns as `solutionHazards`; chemicals that the registry lacks are named in `cautions`
 * @throws InputError if no chemical of the bath is in the registry
 *
 * @example
 * bathHazards(scaleFormula(bathFormula("acetic-stop-bath"), 1000)).signalWord // => "none"
 *
 * Source: UN GHS; limits as noted in data/hazard-limits.json.
 */
export function bathHazards(batch: FormulaBatch): SolutionHazards {
  requireObject("bathHazards", "batch", batch, "what scaleFormula gives");
  requireEntries("bathHazards", "batch.ingredients", batch.ingredients);
  const whole = Math.max(
    batch.volumeMl,
    batch.ingredients.reduce((sum, { massG }) => sum + massG, 0),
  );
  const unknown: string[] = [];
  const dissolved = batch.ingredients.flatMap(({ chemical, form, massG }): DissolvedSubstance[] => {
    try {
      const { massFraction } = chemicalInForm(chemical, form);
      return [{ chemical, form, massPercent: (100 * massG * massFraction) / whole }];
    } catch {
      unknown.push(chemical);
      return [];
    }
  });
  const found = solutionHazards(dissolved);
  if (unknown.length === 0) return found;
  const caution = `Not in the registry, so not counted: ${unknown.join(", ")}. Read the data sheet.`;
  return { ...found, cautions: [...found.cautions, caution] };
}

/** One sentence for a label: the signal word, each statement with its code and what brings it. */
export function hazardSentence(what: string, hazards: SolutionHazards): string {
  if (hazards.statements.length === 0) {
    return `${what}: no hazard class by calculation, which is not a proof of safety.`;
  }
  const statements = hazards.statements.map(
    ({ code, text, from }) => `${text} (${code}, from ${from.join(" and ")})`,
  );
  const word = hazards.signalWord === "none" ? "" : `${hazards.signalWord}. `;
  return `${what}, by calculation: ${word}${statements.join(". ")}.`;
}
