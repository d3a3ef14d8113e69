import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { chemicalHazards } from "../chemistry/chemical-hazards.ts";
import { chemicalInForm } from "../chemistry/find-chemical.ts";
import { solutionHazards } from "../chemistry/solution-hazards.ts";
import { hazardSentence } from "../formulas/bath-hazards.ts";
import { weighToDivision } from "../formulas/weigh-to-division.ts";
import type { MixingSheet, MixingStep } from "../mixing-sheet.ts";
import { acidToStrength } from "./acid-to-strength.ts";

/** Rounding beyond this part of the acid is worth a warning. */
const ROUNDING_PERCENT = 2;

/**
 * The mixing sheet of an acid (or alkali) thinned by mass: most of the water first, the strong one
 * slowly into it, water to the mark when it has cooled.
 *
 * Masses as `acidToStrength`; nine tenths of the water go in first. The amounts add up to more than the
 * sheet's volume by the contraction, which the last step allows for.
 *
 * @param wanted.title heading of the sheet
 * @param wanted.substance as in `solutionDensity`: `"acetic acid"`, `"sulfuric acid"` …
 * @param wanted.strongPercent per cent by mass of the strong one, at most 100
 * @param wanted.targetPercent per cent by mass wanted, above 0 and below the strong one
 * @param wanted.totalMl volume wanted, mL, above 0
 * @param wanted.strongName name of the strong one, as on the bottle and in the price list
 * @param wanted.graduateDivisionMl step of the graduate, mL; 1 if left out
 * @param wanted.temperatureC of all parts, °C; 20 if left out
 * @returns a mixing sheet, not yet priced, with the label of what is poured and of what is made
 * @throws InputError as `acidToStrength`, and for a step of the graduate not above 0 or too coarse
 *
 * @example
 * acidSheet({ title: "28 % acid", substance: "acetic acid", strongPercent: 99.5, targetPercent: 28, totalMl: 2000 }).steps.map((step) => step.amount) // => [1341, 555, 149]
 *
 * Source: conservation of mass; densities as `solutionDensity`. Acid into water: common practice.
 */
export function acidSheet(wanted: {
  readonly title: string;
  readonly substance: string;
  readonly strongPercent: number;
  readonly targetPercent: number;
  readonly totalMl: number;
  readonly strongName?: string;
  readonly graduateDivisionMl?: number;
  readonly temperatureC?: number;
}): MixingSheet {
  const like = "an object with title, substance, strongPercent, targetPercent, totalMl";
  requireObject("acidSheet", "wanted", wanted, like);
  const { title, substance, strongName = substance, ...rest } = wanted;
  const { strongPercent, targetPercent } = rest;
  const step = requireNumber("acidSheet", "graduateDivisionMl", rest.graduateDivisionMl ?? 1, {
    above: 0,
    unit: "mL",
  });
  const mix = acidToStrength({ ...rest, substance });
  const strong = weighToDivision(mix.strongMl, step);
  if (strong.errorPercent > 100 + 1e-6) {
    const advice = `${mix.strongMl.toPrecision(3)} mL of ${strongName} is less than half a step; write a finer graduate or a larger volume`;
    throw new InputError("acidSheet", "graduateDivisionMl", step, advice);
  }
  const firstMl = Math.round(0.9 * mix.weakMl);
  const error = strong.errorPercent;
  const rounded = Math.abs(error) < 0.05 ? "" : `; rounded ${signed(error)} %`;
  const lines = [
    { what: "water, cold", amount: firstMl, note: "in a vessel that stands heat" },
    {
      what: strongName,
      amount: strong.massG,
      note: `slowly; never the other way round${rounded}`,
    },
    {
      what: "water to make the final volume",
      amount: Math.max(0, Math.round(mix.weakMl) - firstMl),
      note: `when cool, to the mark of ${mix.totalMl} mL`,
    },
  ];
  const small = Math.max(Math.abs(error), strong.resolutionPercent) > ROUNDING_PERCENT;
  return {
    title,
    volumeMl: mix.totalMl,
    steps: lines.map((line, i): MixingStep => ({ order: i + 1, unit: "mL", ...line })),
    cost: null,
    assumptions: [
      ...mix.assumptions,
      `by mass: ${mix.strongG.toFixed(1)} g of ${strongPercent} % and ${mix.weakG.toFixed(1)} g of water`,
      `the volumes shrink by ${mix.contractionMl.toFixed(0)} mL as they meet`,
    ],
    warnings: [
      ...mix.warnings,
      ...(small ? [`${strongName}: ${mix.strongMl.toFixed(2)} mL is small for this graduate`] : []),
    ],
    cautions: [
      ...mix.cautions,
      ...labels(`${strongName}, as poured`, substance, strongPercent),
      ...labels(`${title}, as made`, substance, targetPercent),
    ],
  };
}

/** The label of a strength, where the registry knows the substance: its own, or by calculation. */
function labels(what: string, substance: string, massPercent: number): readonly string[] {
  try {
    const { chemical } = chemicalInForm(substance);
    const form = chemical.forms.find(
      ({ massFraction = 0 }) => Math.abs(100 * massFraction - massPercent) <= 1,
    );
    if (!form) {
      return [hazardSentence(what, solutionHazards([{ chemical: chemical.name, massPercent }]))];
    }
    const { signalWord, statements } = chemicalHazards(chemical.name, form.id);
    const texts = statements.map(({ code, text }) => `${text} (${code})`).join(". ");
    return [`${what}: ${signalWord}. ${texts}.`];
  } catch {
    return []; // a substance with densities and no label: its data sheet says
  }
}

function signed(percent: number): string {
  return `${percent > 0 ? "+" : "−"}${Math.abs(percent).toFixed(1)}`;
}
