import { InputError } from "../input/index.ts";
import { seededRandom } from "../numerics/index.ts";

const KEY = 271_828;
const BLOCK = 512;
const CHECK_DIGITS = 8;

/**
 * A value as a text that shows nothing to the eye, not even whether there is little or much in it.
 * It keeps an honest reader from seeing an answer by accident; it is no secret.
 */
export function seal(value: unknown): string {
  const text = JSON.stringify(value);
  const bytes = [...new TextEncoder().encode(checkDigits(text) + text)];
  const padded = Math.max(BLOCK, Math.ceil(bytes.length / BLOCK) * BLOCK);
  while (bytes.length < padded) bytes.push(32);
  const { integer } = seededRandom(KEY);
  return bytes.map((byte) => (byte ^ integer(0, 255)).toString(16).padStart(2, "0")).join("");
}

/** What was sealed. */
export function unseal(where: string, sealed: unknown): unknown {
  const advice = "write the sealed answer of a simulated lab as it stands in its result";
  if (typeof sealed !== "string" || !/^([0-9a-f]{2})+$/.test(sealed)) {
    throw new InputError(where, "sealedAnswer", sealed, advice);
  }
  const { integer } = seededRandom(KEY);
  const bytes = Uint8Array.from(sealed.match(/../g) ?? [], (pair) => {
    return Number.parseInt(pair, 16) ^ integer(0, 255);
  });
  const opened = new TextDecoder().decode(bytes).trimEnd();
  const text = opened.slice(CHECK_DIGITS);
  if (text === "" || opened.slice(0, CHECK_DIGITS) !== checkDigits(text)) {
    throw new InputError(where, "sealedAnswer", `${sealed.slice(0, 12)}…`, advice);
  }
  return JSON.parse(text);
}

/** A number of its text that a change to the text changes (FNV-1a, in the public domain). */
function checkDigits(text: string): string {
  let hash = 0x811c9dc5;
  for (const letter of text) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  return (hash >>> 0).toString(16).padStart(CHECK_DIGITS, "0");
}
