/** Unit of an amount on a mixing sheet: liquids in mL or L, solids in g or kg. */
export type MixingUnit = "mL" | "L" | "g" | "kg";

/** One line of a mixing sheet: what goes in, how much, in which order. */
export interface MixingStep {
  /** Place in the order of mixing, from 1. */
  readonly order: number;
  /** Name of what is poured or weighed, spelled as in the price list. */
  readonly what: string;
  /** How much, in `unit`; not negative. */
  readonly amount: number;
  readonly unit: MixingUnit;
  /** What to mind at this step; an empty string if nothing. */
  readonly note: string;
}

/** Price of one thing: `price` buys `amount` of `unit`. */
export interface MixingPrice {
  /** Spelled as in the sheet's steps. */
  readonly what: string;
  readonly price: number;
  readonly amount: number;
  readonly unit: MixingUnit;
}

/** A price list; the currency is any word or sign and is only repeated. */
export interface MixingPriceList {
  readonly currency: string;
  readonly prices: readonly MixingPrice[];
}

/** What a mix costs, line by line; `unpriced` names what the list does not have. */
export interface MixingCost {
  readonly currency: string;
  readonly total: number;
  readonly perLitre: number;
  readonly lines: readonly { readonly what: string; readonly cost: number }[];
  readonly unpriced: readonly string[];
}

/** A sheet to pin up at the mixing bench. Plain, JSON-safe; `cost` is null until priced. */
export interface MixingSheet {
  readonly title: string;
  /** Final volume in mL. */
  readonly volumeMl: number;
  readonly steps: readonly MixingStep[];
  readonly cost: MixingCost | null;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
  readonly cautions: readonly string[];
}
