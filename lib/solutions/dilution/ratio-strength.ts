import { InputError, requireNumber } from "../../input/index.ts";
import { parseRatio, type Ratio, type RatioReading } from "../../units/index.ts";
import { readingOf } from "./dilute.ts";

/**
 * Strength of a working solution as a fraction of its concentrate.
 *
 * f = p / Σ p, of the first concentrate, or of the one with index `part`
 *
 * @param ratio `"1+9"`, `"1+1+18"`, `"stock"`
 * @param options.part which concentrate, from 0
 * @returns a fraction: 0.1 for 1+9, 1 for stock; times g/L of the concentrate it is g/L of the mix
 * @throws InputError for a ratio that cannot be read or a part it has not
 *
 * @example
 * ratioStrength("1+9") // => 0.1
 *
 * Source: arithmetic of the plus notation.
 */
export function ratioStrength(
  ratio: string | Ratio,
  options: { readonly part?: number } & RatioReading = {},
): number {
  const where = "ratioStrength";
  const parsed = parseRatio(ratio, readingOf(options), where);
  const last = parsed.concentrateParts.length - 1;
  const bounds = { whole: true, min: 0, max: last };
  const part = requireNumber(where, "part", options.part ?? 0, bounds);
  return (parsed.concentrateParts[part] ?? 0) / parsed.totalParts;
}

/**
 * The ratio from the concentrate when a dilution is diluted again: stock at 1+3, then 1+7, is 1+31.
 *
 * 1 + n = Π (1 + n_i)
 *
 * @param ratios two or more single-concentrate dilutions, in the order made
 * @returns the ratio from the concentrate
 * @throws InputError for fewer than one ratio, or one with several concentrates
 *
 * @example
 * chainedRatio(["1+3", "1+7"]).text // => "1+31"
 *
 * Source: arithmetic of the plus notation.
 */
export function chainedRatio(ratios: readonly (string | Ratio)[]): Ratio {
  if (!Array.isArray(ratios) || ratios.length === 0) {
    throw new InputError("chainedRatio", "ratios", ratios, 'write a list like ["1+3", "1+7"]');
  }
  const total = ratios.reduce((product: number, ratio) => {
    const parsed = requireSingle("chainedRatio", "ratios", ratio);
    return product * (parsed.totalParts / (parsed.concentrateParts[0] ?? 1));
  }, 1);
  return ratioFromStrength(1 / total);
}

/**
 * The ratio 1+n of a strength given as a fraction of the concentrate.
 *
 * n = 1 / f − 1
 *
 * @param strength fraction of the concentrate, from 1e-12 to 1
 * @returns the ratio, its parts rounded to 12 digits
 * @throws InputError for a strength outside that range
 *
 * @example
 * ratioFromStrength(0.1).text // => "1+9"
 */
export function ratioFromStrength(strength: number): Ratio {
  const bounds = { min: 1e-12, max: 1 };
  const fraction = requireNumber("ratioFromStrength", "strength", strength, bounds);
  const water = Number((1 / fraction - 1).toPrecision(12));
  if (water < 1e-6) return parseRatio("stock");
  return { text: `1+${water}`, concentrateParts: [1], waterParts: water, totalParts: 1 + water };
}

/** A ratio with one concentrate only. */
export function requireSingle(where: string, argument: string, ratio: string | Ratio): Ratio {
  const parsed = parseRatio(ratio, {}, where);
  if (parsed.concentrateParts.length === 1) return parsed;
  const advice = 'write a ratio with one concentrate, like "1+4"; mix a kit from its parts instead';
  throw new InputError(where, argument, parsed.text, advice);
}
