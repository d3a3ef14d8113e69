import {
  InputError,
  requireEntries,
  requireNumber,
  requireObject,
  requireOneOf,
} from "../input/index.ts";
import { chemicalInForm } from "./chemistry/find-chemical.ts";
import type { MixingPrice, MixingPriceList, MixingSheet, MixingUnit } from "./mixing-sheet.ts";

/** Size of each unit in its base: millilitres or grams. */
const SIZES: Readonly<Record<MixingUnit, { readonly base: "mL" | "g"; readonly size: number }>> = {
  mL: { base: "mL", size: 1 },
  L: { base: "mL", size: 1000 },
  g: { base: "g", size: 1 },
  kg: { base: "g", size: 1000 },
};

const UNITS = ["mL", "L", "g", "kg"] as const;

/**
 * A mixing sheet with its cost from a price list.
 *
 * cost = Σ amount / bought amount · price, over the steps that the list has
 *
 * @param sheet any mixing sheet; it is not changed
 * @param list.currency a word or sign that is only repeated
 * @param list.prices what, price, and the amount and unit it buys; `what` as the steps are spelled, or
 *   as for `chemicalInForm`: `"metol"` for the step `"metol, sulfate"`
 * @returns the same sheet with `cost`: total, per litre, lines, and what the list lacks (water is free)
 * @throws InputError for a list without prices, one thing priced twice, a negative price, an amount
 *   that is not positive, or a price per volume for something weighed
 *
 * @example
 * const plain = { title: "t", volumeMl: 500, steps: [{ order: 1, what: "fixer", amount: 100, unit: "mL", note: "" }], cost: null, assumptions: [], warnings: [], cautions: [] }
 * priceMixingSheet(plain, { currency: "EUR", prices: [{ what: "fixer", price: 12, amount: 1, unit: "L" }] }).cost?.total // => 1.2
 */
export function priceMixingSheet(sheet: MixingSheet, list: MixingPriceList): MixingSheet {
  requireObject("priceMixingSheet", "sheet", sheet, "an object with title, volumeMl, steps, …");
  requireObject("priceMixingSheet", "list", list, "an object with currency and prices");
  requireNumber("priceMixingSheet", "sheet.volumeMl", sheet.volumeMl, { above: 0, unit: "mL" });
  requireEntries("priceMixingSheet", "sheet.steps", sheet.steps, "the steps of a mixing sheet");
  const prices = pricesByName(list);
  const lines: { what: string; cost: number }[] = [];
  const unpriced: string[] = [];
  for (const [i, step] of sheet.steps.entries()) {
    if (typeof step?.what !== "string") {
      const advice = "write the name of what is measured";
      throw new InputError("priceMixingSheet", `sheet.steps[${i}].what`, step?.what, advice);
    }
    requireOneOf("priceMixingSheet", `unit of ${step.what}`, step.unit, UNITS);
    if (isWater(step.what)) continue;
    const price = prices.get(plainName(step.what)) ?? prices.get(plainName(label(step.what)));
    if (price === undefined) {
      if (!unpriced.includes(step.what)) unpriced.push(step.what);
      continue;
    }
    const [have, buy] = [SIZES[step.unit], SIZES[price.unit]];
    if (have.base !== buy.base) {
      const advice = `write it per ${have.base === "mL" ? "mL or L" : "g or kg"}, as ${step.what} is measured`;
      throw new InputError("priceMixingSheet", `unit of ${price.what}`, price.unit, advice);
    }
    requireNumber("priceMixingSheet", `amount of ${step.what}`, step.amount, { min: 0 });
    const bought = price.amount * buy.size;
    lines.push({ what: step.what, cost: ((step.amount * have.size) / bought) * price.price });
  }
  const total = lines.reduce((sum, line) => sum + line.cost, 0);
  const perLitre = (total / sheet.volumeMl) * 1000;
  return { ...sheet, cost: { currency: list.currency, total, perLitre, lines, unpriced } };
}

function checked(price: MixingPrice): MixingPrice {
  const where = "priceMixingSheet";
  requireNumber(where, `price of ${price.what}`, price.price, { min: 0 });
  requireNumber(where, `amount of ${price.what}`, price.amount, { above: 0 });
  requireOneOf(where, `unit of ${price.what}`, price.unit, UNITS);
  return price;
}

function pricesByName(list: MixingPriceList): ReadonlyMap<string, MixingPrice> {
  const where = "priceMixingSheet";
  const given: unknown = list?.prices;
  if (!Array.isArray(given) || typeof list.currency !== "string") {
    const advice = 'write { currency: "EUR", prices: [{ what, price, amount, unit }] }';
    throw new InputError(where, "list", list, advice);
  }
  const prices = new Map<string, MixingPrice>();
  for (const each of list.prices) {
    if (typeof each?.what !== "string" || each.what.trim() === "") {
      throw new InputError(where, "what", each?.what, "write the name of what the price is for");
    }
    const names = new Set([plainName(each.what), plainName(label(each.what))]);
    if ([...names].some((name) => prices.has(name))) {
      const advice = "priced twice; keep the line of the pack that is used";
      throw new InputError(where, "prices", each.what, advice);
    }
    for (const name of names) prices.set(name, checked(each));
  }
  return prices;
}

/** "borax" becomes "borax, decahydrate", as the steps of a formula's sheet are spelled. */
function label(what: string): string {
  try {
    return chemicalInForm(what).label;
  } catch {
    return what; // not a chemical of the registry: a kit's part, a concentrate
  }
}

function plainName(what: string): string {
  return what.trim().toLowerCase();
}

/** Water has no price on any list: "water", "water at 40 °C", "water to make". */
export function isWater(what: string): boolean {
  return /^(warm |cold |hot |distilled )?water\b/i.test(what.trim());
}
