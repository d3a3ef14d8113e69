import weightData from "../../../data/atomic-weights.json" with { type: "json" };
import { closestWord, InputError } from "../../input/index.ts";

/** Standard atomic weight of an element. */
export interface AtomicWeight {
  readonly symbol: string;
  /** Relative atomic mass; the abridged value where the standard is an interval. */
  readonly weight: number;
  /** Half-width of the range that any normal material keeps to; not a standard deviation. */
  readonly bound: number;
}

const weights: ReadonlyMap<string, AtomicWeight> = new Map(
  weightData.elements.map(({ symbol, weight, bound }) => [symbol, { symbol, weight, bound }]),
);

/**
 * Standard atomic weight of an element, IUPAC 2021.
 *
 * @param symbol as in a formula: `"Na"`
 * @returns the weight (no unit; g/mol in number) and the bound on it
 * @throws InputError for a symbol without a standard weight
 *
 * @example
 * atomicWeight("S").weight // => 32.06
 *
 * Source: Pure Appl. Chem. 94 (2022) 573–600, tables 1 and 2.
 */
export function atomicWeight(symbol: string): AtomicWeight {
  const found = weights.get(symbol);
  if (found) return found;
  const near = typeof symbol === "string" ? closestWord(symbol, [...weights.keys()]) : undefined;
  const meant = near === undefined ? "" : ` (did you mean "${near}"?)`;
  const advice = `write the symbol of an element that has a standard weight, such as "Na"${meant}`;
  throw new InputError("atomicWeight", "symbol", symbol, advice);
}

/** Whether a symbol has a standard atomic weight. */
export function isElement(symbol: string): boolean {
  return weights.has(symbol);
}
