import { InputError, requireObject, requireOneOf } from "../input/index.ts";
import { adviceForRatio } from "./ratio-advice.ts";

/** A dilution ratio: parts of one or more concentrates, then parts of water. */
export interface Ratio {
  /** As read: `"1+9"`, `"1+1+18"`, `"stock"`. */
  readonly text: string;
  /** Parts of each concentrate, in the order written. */
  readonly concentrateParts: readonly number[];
  /** Parts of water; 0 for stock. */
  readonly waterParts: number;
  readonly totalParts: number;
}

/** How a ratio that could be read two ways is meant. */
export interface RatioReading {
  /**
   * `1:9` is refused unless this says what it means: `"water"`, 9 parts of water to 1 (1+9), or
   * `"total"`, 1 part in 9 of the whole (1+8).
   */
  readonly colon?: "water" | "total";
  /** `"last"` (default): the last part is water. `"none"`: every part is a concentrate (A + B). */
  readonly water?: "last" | "none";
}

const PART = String.raw`(?:\d+(?:\.\d+)?|\.\d+)`;
// Between these a number prints without an exponent, so that a ratio's text can be read back.
const SMALLEST_PART = 1e-6;
const LARGEST_PART = 1e12;
const PLUS = new RegExp(String.raw`^${PART}(?:\s*\+\s*${PART})+$`);
const COLON = new RegExp(String.raw`^${PART}(?:\s*:\s*${PART})+$`);

/**
 * Reads a dilution ratio: `1+9` is one part of concentrate and nine of water, `1+1+18` two
 * concentrates and water, `stock` undiluted.
 *
 * @param text parts joined by plus signs, each from 1e-6 to 1e12, or `"stock"`
 * @param reading how to read a colon, and whether the last part is water
 * @param where name of the function that asks, to stand in the message; `parseRatio` if left out
 * @returns the parts, plain and JSON-safe
 * @throws InputError for `1:9` without a reading (both are spelled out), zero or negative parts,
 *   unit words, per cents, a decimal comma, or anything that is not a ratio
 *
 * @example
 * parseRatio("1+1+18").totalParts // => 20
 * parseRatio("1:9", { colon: "total" }).text // => "1+8"
 *
 * Source: the plus notation is the trade's own; common practice, no source.
 */
export function parseRatio(
  text: string | Ratio,
  reading: RatioReading = {},
  where = "parseRatio",
): Ratio {
  requireObject("parseRatio", "reading", reading, "an object of options, or leave it out");
  const given: unknown = text;
  if (isRatio(given)) return parseRatio(given.text, waterOf(given), where);
  if (typeof given !== "string") {
    throw new InputError(where, "ratio", given, 'write a text like "1+9" or "stock"');
  }
  const water = requireOneOf(where, "water", reading.water ?? "last", ["last", "none"]);
  // NFKC turns full-width digits and signs into plain ones.
  const plain = given.normalize("NFKC").trim().toLowerCase();
  if (plain === "stock") return { text: "stock", ...parts([1], 0) };
  const colon =
    reading.colon === undefined
      ? undefined
      : requireOneOf(where, "colon", reading.colon, ["water", "total"]);
  const byColon = COLON.test(plain) && colon !== undefined;
  if (!byColon && !PLUS.test(plain)) {
    throw new InputError(where, "ratio", given, adviceForRatio(plain));
  }
  const numbers = numbersIn(plain);
  if (numbers.some((part) => part < SMALLEST_PART || part > LARGEST_PART)) {
    const advice =
      'write every part as a number greater than 0 (0.000001 to 1e12); undiluted concentrate is "stock"';
    throw new InputError(where, "ratio", given, advice);
  }
  if (byColon) return fromColon(where, given, numbers, colon);
  const known = numbers.join("+");
  return water === "none"
    ? { text: known, ...parts(numbers, 0) }
    : { text: known, ...parts(numbers.slice(0, -1), numbers.at(-1) ?? 0) };
}

function fromColon(
  where: string,
  given: string,
  numbers: readonly number[],
  colon: "water" | "total",
): Ratio {
  const concentrate = numbers.slice(0, -1);
  const last = numbers.at(-1) ?? 0;
  const sum = concentrate.reduce((total, part) => total + part, 0);
  const water = colon === "water" ? last : Number((last - sum).toPrecision(12));
  if (water < 0) {
    const advice = `${adviceForRatio(given)}; as "${colon}" it leaves no part for water`;
    throw new InputError(where, "ratio", given, advice);
  }
  if (water === 0 && concentrate.length === 1) return { text: "stock", ...parts([1], 0) };
  const text = water === 0 ? concentrate.join("+") : [...concentrate, water].join("+");
  return { text, ...parts(concentrate, water) };
}

function parts(concentrateParts: readonly number[], waterParts: number) {
  const totalParts = concentrateParts.reduce((sum, part) => sum + part, waterParts);
  return { concentrateParts, waterParts, totalParts };
}

function numbersIn(text: string): number[] {
  return text.split(/[+:]/).map(Number);
}

function isRatio(value: unknown): value is Ratio {
  return typeof value === "object" && value !== null && "concentrateParts" in value;
}

function waterOf(ratio: Ratio): RatioReading {
  return { water: ratio.waterParts === 0 ? "none" : "last" };
}
