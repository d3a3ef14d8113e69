import { InputError, requireNumber } from "../input/index.ts";

/** An answer to an exercise: a number, a word, or a list of them in order. */
export type Answer = number | string | readonly (number | string)[];

/**
 * The code of an answer: it tells whether another answer is the same, without saying which it is.
 *
 * FNV-1a, 64 bits: h = 0xcbf29ce484222325; for every byte h = (h xor byte)·0x100000001b3 mod 2⁶⁴. The
 * bytes are those of the exercise's name, a line end, and the answer: a number as a whole number of
 * steps, a word in small letters with single blanks.
 *
 * It keeps an answer from being read, not from being tried out by a program.
 *
 * @param exercise name of the exercise, so that equal answers of two exercises have different codes
 * @param answer number, word or list
 * @param options `step` to which a number is rounded, greater than 0, default 1
 * @returns 16 hexadecimal digits
 * @throws InputError if the exercise has no name, or the answer is empty or not finite
 *
 * @example
 * answerCode("false alarms", 370.4, { step: 1 }) === answerCode("false alarms", 370, { step: 1 }) // => true
 *
 * Source: G. Fowler, L. C. Noll, K.-P. Vo and D. Eastlake, The FNV non-cryptographic hash algorithm.
 */
export function answerCode(
  exercise: string,
  answer: Answer,
  options: { readonly step?: number } = {},
): string {
  const where = "answerCode";
  if (typeof exercise !== "string" || exercise.trim() === "") {
    throw new InputError(where, "exercise", exercise, "give the exercise a name");
  }
  const step = requireNumber(where, "step", options.step ?? 1, { above: 0 });
  const parts = Array.isArray(answer) ? answer : [answer];
  if (parts.length === 0) throw new InputError(where, "answer", answer, "write at least one value");
  return fnv1a(`${exercise}\n${parts.map((part) => inSteps(where, part, step)).join(";")}`);
}

function inSteps(where: string, part: unknown, step: number): string {
  if (typeof part === "number") {
    // + 0 turns −0 into 0.
    return String(Math.round(requireNumber(where, "answer", part) / step) + 0);
  }
  const word = typeof part === "string" ? part.trim().toLowerCase().replace(/\s+/g, " ") : "";
  if (word === "") throw new InputError(where, "answer", part, "write a number or a word");
  return word;
}

const OFFSET_BASIS = 0xcbf29ce484222325n;
const PRIME = 0x100000001b3n;

/** FNV-1a of the text's UTF-8 bytes, as 16 hexadecimal digits. */
export function fnv1a(text: string): string {
  let hash = OFFSET_BASIS;
  for (const byte of new TextEncoder().encode(text)) {
    hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * PRIME);
  }
  return hash.toString(16).padStart(16, "0");
}
