import { cautionsFor } from "../cautions/cautions-for.ts";
import { chemicalHazards } from "../chemistry/chemical-hazards.ts";
import { chemicalInForm } from "../chemistry/find-chemical.ts";
import { NO_CLASS } from "../chemistry/solution-hazards.ts";
import { bathHazards, hazardSentence } from "./bath-hazards.ts";
import { checkMixingOrder } from "./mixing-order.ts";
import type { BatchIngredient, FormulaBatch } from "./scale-formula.ts";
import { solubilityCheck } from "./solubility-check.ts";

/** Rounding beyond this part of an amount is worth a warning. */
const ROUNDING_PERCENT = 2;

/** Water for hydroxide and strong acid is no warmer, °C (common practice, no source). */
const COLD_ENOUGH_C = 30;

type Rounded = readonly {
  readonly errorPercent: number;
  readonly resolutionPercent: number;
}[];

/** What to think about before mixing: rounding, order, solubility. */
export function sheetWarnings(batch: FormulaBatch, rounded: Rounded): readonly string[] {
  return [
    ...roundingWarnings(batch, rounded),
    ...orderWarnings(batch),
    ...hotWaterWarnings(batch),
    ...solubilityWarnings(batch),
  ];
}

function roundingWarnings(batch: FormulaBatch, rounded: Rounded): readonly string[] {
  return batch.ingredients.flatMap(({ what, amount, unit }, i) => {
    const { errorPercent = 0, resolutionPercent = 0 } = rounded[i] ?? {};
    const worst = Math.max(Math.abs(errorPercent), resolutionPercent);
    if (worst <= ROUNDING_PERCENT) return [];
    const tool = unit === "g" ? "balance" : "graduate";
    const text = Number(amount.toPrecision(3));
    return [
      `${what}: ${text} ${unit} is small for this ${tool} (up to ${worst.toFixed(0)} % off); mix a larger batch, or a stock of it and measure a part`,
    ];
  });
}

function orderWarnings(batch: FormulaBatch): readonly string[] {
  const names = batch.ingredients.map(({ chemical }) => chemical);
  return checkMixingOrder(names).map(
    ({ before, after, why }) => `${before} should go in before ${after}: ${why}`,
  );
}

/** What heats its water by itself goes into cold water. */
function hotWaterWarnings(batch: FormulaBatch): readonly string[] {
  const { startingTemperatureC } = batch;
  if (startingTemperatureC <= COLD_ENOUGH_C) return [];
  return batch.ingredients
    .filter(({ chemical }) => /hydroxide|sulfuric acid/.test(chemical))
    .map(
      ({ what }) =>
        `${what} heats the water: let it cool from ${startingTemperatureC} °C to below ${COLD_ENOUGH_C} °C first`,
    );
}

function solubilityWarnings(batch: FormulaBatch): readonly string[] {
  return solubilityCheck(batch)
    .filter(({ dissolves }) => !dissolves)
    .map(
      ({ what, temperatureC, neededGPer100gWater: needed, takenGPer100gWater: taken }) =>
        `${what} will not dissolve: ${needed.toFixed(1)} g per 100 g of water, which takes ${taken.toFixed(1)} g at ${temperatureC} °C`,
    );
}

/** Cautions for what is in the batch, the hazard statements of each label, and those of the bath. */
export function sheetCautions(batch: FormulaBatch): readonly string[] {
  const names = batch.ingredients.map(({ what }) => what);
  const labels = batch.ingredients.flatMap((each) => {
    const known = hazardsOf(each);
    if (!known) return [];
    const statements = known.statements.map(({ code, text }) => `${text} (${code}).`);
    const word = known.signalWord === "none" ? [] : [`${known.signalWord}.`];
    const label = [...word, ...statements, ...known.notes].join(" ");
    return label === "" ? [] : [`${known.name}: ${label}`];
  });
  return [...cautionsFor(names), ...labels, ...finishedBath(batch)];
}

function finishedBath(batch: FormulaBatch): readonly string[] {
  try {
    const hazards = bathHazards(batch);
    const more = hazards.cautions.filter((caution) => caution !== NO_CLASS);
    return [hazardSentence("the finished bath", hazards), ...more];
  } catch {
    return []; // nothing in it is in the registry
  }
}

function hazardsOf({ chemical, form }: BatchIngredient) {
  try {
    const found = chemicalInForm(chemical, form);
    const { note } = found.form.hazards ?? found.chemical.hazards;
    return { ...chemicalHazards(chemical, form), notes: note === undefined ? [] : [note] };
  } catch {
    return undefined; // a chemical of the user's own: cautionsFor still reads its name
  }
}
