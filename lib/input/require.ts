import { InputError } from "./input-error.ts";

/** What a number must satisfy to come in; all bounds optional. */
export interface NumberBounds {
  /** Smallest value allowed (inclusive). */
  readonly min?: number;
  /** Largest value allowed (inclusive). */
  readonly max?: number;
  /** The value must be greater than this (exclusive). */
  readonly above?: number;
  /** The value must be less than this (exclusive). */
  readonly below?: number;
  /** Only whole numbers. */
  readonly whole?: boolean;
  /** Unit for the message, as written after a number: `"°C"`, `"mL"`. */
  readonly unit?: string;
  /** What was probably meant; added to the message. */
  readonly hint?: string;
}

/**
 * Lets a number in if it is finite and within the bounds, and returns it.
 *
 * @param where name of the public function, for the message
 * @param argument name of the argument, for the message
 * @param value what was given
 * @param bounds what is allowed
 * @returns the same number
 * @throws InputError if it is not a finite number or lies outside the bounds
 *
 * @example
 * requireNumber("dilute", "totalMl", 500, { above: 0, unit: "mL" }) // => 500
 */
export function requireNumber(
  where: string,
  argument: string,
  value: unknown,
  bounds: NumberBounds = {},
): number {
  const ok =
    typeof value === "number" &&
    Number.isFinite(value) &&
    (bounds.min === undefined || value >= bounds.min) &&
    (bounds.max === undefined || value <= bounds.max) &&
    (bounds.above === undefined || value > bounds.above) &&
    (bounds.below === undefined || value < bounds.below) &&
    (!bounds.whole || Number.isInteger(value));
  if (ok) return value;
  const meant = bounds.hint ?? numberMeant(value);
  const hint = meant ? ` (${meant})` : "";
  throw new InputError(where, argument, value, `write ${allowed(bounds)}${hint}`);
}

/** What to say to a number that came as text. */
function numberMeant(value: unknown): string | undefined {
  const typed = /^\s*([-−+]?\d+(?:[.,]\d+)?)\s*([^\d\s]+[23]?)?\s*$/.exec(
    typeof value === "string" ? value : "",
  );
  if (typed === null) return undefined;
  const [, digits = "", unit] = typed;
  if (unit !== undefined) return "a number, not text, without its unit";
  // "1,500" is one and a half to some readers and fifteen hundred to others.
  if (/,\d{3}$/.test(digits)) return "a number, not text, with a point for decimals";
  return `a number, not text: ${Number(digits.replace("−", "-").replace(",", "."))}`;
}

function allowed(bounds: NumberBounds): string {
  const unit = bounds.unit ? ` ${bounds.unit}` : "";
  const limits: string[] = [];
  if (bounds.min !== undefined) limits.push(`at least ${bounds.min}${unit}`);
  if (bounds.above !== undefined) limits.push(`greater than ${bounds.above}${unit}`);
  if (bounds.max !== undefined) limits.push(`at most ${bounds.max}${unit}`);
  if (bounds.below !== undefined) limits.push(`less than ${bounds.below}${unit}`);
  const kind = bounds.whole ? "a whole number" : "a finite number";
  return limits.length === 0 ? `${kind}${unit}` : `${kind} ${limits.join(" and ")}`;
}

/**
 * Lets one of a list of words in, and returns it.
 *
 * @param where name of the public function, for the message
 * @param argument name of the argument, for the message
 * @param value what was given
 * @param allowedValues the words allowed, at least one
 * @returns the same word, as the type of the list has it
 * @throws InputError that lists what is allowed and names the closest word
 *
 * @example
 * requireOneOf("hydrate", "form", "anhydrous", ["anhydrous", "monohydrate"]) // => "anhydrous"
 */
export function requireOneOf<T extends string>(
  where: string,
  argument: string,
  value: unknown,
  allowedValues: readonly T[],
): T {
  const found = allowedValues.find((each) => each === value);
  if (found !== undefined) return found;
  const near = typeof value === "string" ? closestWord(value, allowedValues) : undefined;
  const list = allowedValues.map((each) => JSON.stringify(each)).join(", ");
  const meant = near === undefined ? "" : ` (did you mean ${JSON.stringify(near)}?)`;
  throw new InputError(where, argument, value, `write one of ${list}${meant}`);
}

/**
 * The word of a list closest to what was typed, by edit distance, or `undefined` if none is near
 * (more than a third of the letters differ). Capitals do not count.
 *
 * @param typed what was written
 * @param words what may be meant, in the order in which the first of equals is preferred
 * @returns a word of the list as it stands there, or `undefined`; no error
 *
 * @example
 * closestWord("develper", ["developer", "fixer"]) // => "developer"
 */
export function closestWord(typed: string, words: readonly string[]): string | undefined {
  let best: string | undefined;
  let bestDistance = Number.POSITIVE_INFINITY;
  if (typeof typed !== "string") return undefined;
  for (const word of words) {
    if (typeof word !== "string") continue;
    const distance = editDistance(typed.toLowerCase(), word.toLowerCase());
    if (distance < bestDistance) {
      best = word;
      bestDistance = distance;
    }
  }
  return best !== undefined && bestDistance <= Math.max(1, best.length / 3) ? best : undefined;
}

function editDistance(a: string, b: string): number {
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const current = [i];
    for (let j = 1; j <= b.length; j++) {
      const swap = (previous[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      current.push(Math.min(swap, (previous[j] ?? 0) + 1, (current[j - 1] ?? 0) + 1));
    }
    previous = current;
  }
  return previous[b.length] ?? 0;
}
