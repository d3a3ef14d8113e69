import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import type { MixingPriceList, MixingSheet, MixingStep } from "../mixing-sheet.ts";
import { priceMixingSheet } from "../mixing-sheet-price.ts";
import type { BathFormula } from "./bath-formula.ts";
import { type BatchIngredient, type FormulaBatch, scaleFormula } from "./scale-formula.ts";
import { sheetCautions, sheetWarnings } from "./sheet-remarks.ts";
import { weighToDivision } from "./weigh-to-division.ts";

/** What a mixing sheet of a formula needs besides the formula. */
export interface FormulaSheetOptions {
  /** Volume of the finished bath, mL, above 0. */
  readonly volumeMl: number;
  /** Step of the balance, g, above 0; 0.1 if left out. */
  readonly balanceDivisionG?: number;
  /** Step of the graduate for liquids, mL, above 0; 1 if left out. */
  readonly graduateDivisionMl?: number;
  readonly prices?: MixingPriceList;
}

/**
 * Volume that a gram of dissolved dry salt takes, mL; its water of crystallisation takes 1 mL a gram.
 * From the densities of sulfite, carbonate and thiosulfate (0 to 0.2); only for the last water.
 */
const ML_PER_DRY_G = 0.2;

/**
 * The mixing sheet of a formula: starting water and temperature, what to weigh in which order, the
 * top-up, cautions, and the cost where a price list is given.
 *
 * Amounts are rounded to the balance and the graduate; the error that this makes stands beside them.
 *
 * @param formula from `bathFormula`, `parseBathFormula` or your own
 * @param options.volumeMl of the finished bath, mL, above 0
 * @param options.balanceDivisionG step of the balance, g; 0.1 if left out
 * @param options.graduateDivisionMl step of the graduate, mL; 1 if left out
 * @param options.prices per g, kg, mL or L; names as for `chemicalInForm`, or as the steps are spelled
 * @returns a mixing sheet; `mixingSheetText` prints it
 * @throws InputError for a volume or step not above 0, an amount below half a step of its tool, an
 *   ingredient that cannot be resolved, or a bad price
 *
 * @example
 * formulaMixingSheet(bathFormula("metol-sulfite-developer"), { volumeMl: 1000 }).steps[1].amount // => 7.5
 *
 * Source: the formula's own; the rules in `mixingRules`.
 */
export function formulaMixingSheet(
  formula: BathFormula,
  options: FormulaSheetOptions,
): MixingSheet {
  const where = "formulaMixingSheet";
  requireObject(where, "options", options, "an object with volumeMl");
  const batch = scaleFormula(formula, options.volumeMl);
  requireEntries(where, "formula.notes", formula.notes, "a list of texts");
  const balance = options.balanceDivisionG ?? 0.1;
  const graduate = requireNumber(where, "graduateDivisionMl", options.graduateDivisionMl ?? 1, {
    above: 0,
    unit: "mL",
  });
  const rounded = batch.ingredients.map(({ what, amount, unit }) => {
    const [tool, step] = unit === "g" ? ["balance", balance] : ["graduate", graduate];
    const measured = weighToDivision(amount, step);
    if (measured.errorPercent <= 100 + 1e-6) return measured;
    const advice = `less than half a step of this ${tool} (${step} ${unit}): write a finer one or a larger batch, or mix a stock of it and measure a part`;
    throw new InputError(where, `amount of ${what}`, `${tidy(amount)} ${unit}`, advice);
  });
  const lines = batch.ingredients.map((each, i) => ({
    what: each.what,
    amount: rounded[i]?.massG ?? each.amount,
    unit: each.unit,
    note: [pinch(each, batch), each.note, errorNote(rounded[i]?.errorPercent ?? 0)]
      .filter((text) => text !== "")
      .join("; "),
  }));
  const start = {
    what: "water to start with",
    amount: batch.startingWaterMl,
    unit: "mL" as const,
    note: `at ${batch.startingTemperatureC} °C`,
  };
  const added = batch.ingredients.reduce((sum, each, i) => {
    const amount = lines[i]?.amount ?? 0;
    const dry = each.massG - each.crystalWaterG;
    return sum + (each.unit === "mL" ? amount : ML_PER_DRY_G * dry + each.crystalWaterG);
  }, start.amount);
  const topUp = {
    what: "water to make the final volume",
    amount: Math.max(0, Math.round(batch.volumeMl - added)),
    unit: "mL" as const,
    note: `cold, to the mark of ${batch.volumeMl} mL at 20 °C`,
  };
  const steps = [start, ...lines, topUp].map((line, i): MixingStep => ({ order: i + 1, ...line }));
  const sheet: MixingSheet = {
    title: formula.name,
    volumeMl: batch.volumeMl,
    steps,
    cost: null,
    assumptions: [
      "each chemical is dissolved before the next goes in",
      "the last water is about so much: the mark decides",
      "weights are for chemicals as pure as their label says",
      ...batch.ingredients.flatMap(({ chemical, form, formNamed }) =>
        formNamed ? [] : [`${chemical} taken as ${form}: the formula does not say which form`],
      ),
      `formula: ${formula.source} (${formula.howObtained})`,
      ...formula.notes,
    ],
    warnings: [
      ...sheetWarnings(batch, rounded),
      ...(added > batch.volumeMl ? ["the starting water leaves no room; start with less"] : []),
    ],
    cautions: sheetCautions(batch),
  };
  return options.prices === undefined ? sheet : priceMixingSheet(sheet, options.prices);
}

function pinch(each: BatchIngredient, batch: FormulaBatch): string {
  const sulfite = batch.ingredients.find(({ chemical }) => /sulfite$/.test(chemical));
  return each.chemical === "metol" && sulfite ? "after a pinch of the weighed sulfite" : "";
}

function tidy(value: number): string {
  return String(Number(value.toPrecision(3)));
}

function errorNote(errorPercent: number): string {
  if (Math.abs(errorPercent) < 0.05) return "";
  const sign = errorPercent > 0 ? "+" : "−";
  return `rounded ${sign}${Math.abs(errorPercent).toFixed(1)} %`;
}
