import { closestWord, InputError } from "../input/index.ts";

/** Lets an object in if it has no key but these; a key that is written wrong is not passed over. */
export function requireKnownKeys(
  where: string,
  argument: string,
  value: unknown,
  known: readonly string[],
): void {
  const list = known.join(", ");
  if (typeof value !== "object" || value === null || Array.isArray(value)) {
    throw new InputError(where, argument, value, `write an object with ${list}`);
  }
  const odd = Object.keys(value).find((key) => !known.includes(key));
  if (odd === undefined) return;
  const near = closestWord(odd, known);
  const meant = near === undefined ? "" : ` (did you mean ${JSON.stringify(near)}?)`;
  throw new InputError(where, `a key of ${argument}`, odd, `its keys are ${list}${meant}`);
}
