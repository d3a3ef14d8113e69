import { InputError } from "../input/index.ts";
import { seededRandom } from "../numerics/index.ts";

const KEY = 271_828;
const BLOCK = 512;

/**
 * A value as a text that shows nothing to the eye, not even whether there is little or much in it.
 * It keeps an honest reader from seeing an answer by accident; it is no secret.
 */
export function seal(value: unknown): string {
  const text = JSON.stringify(value);
  const bytes = [...new TextEncoder().encode(text)];
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
  try {
    return JSON.parse(new TextDecoder().decode(bytes));
  } catch {
    throw new InputError(where, "sealedAnswer", `${sealed.slice(0, 12)}…`, advice);
  }
}
