import { closestWord, InputError } from "../../input/index.ts";

/** Lets an object in if all its keys are known: a misspelt one would be passed over in silence. */
export function requireKnownKeys(
  where: string,
  argument: string,
  value: unknown,
  keys: readonly string[],
): void {
  if (typeof value !== "object" || value === null || Array.isArray(value)) {
    throw new InputError(where, argument, value, `write an object with ${keys.join(", ")}`);
  }
  for (const key of Object.keys(value)) {
    if (keys.includes(key)) continue;
    const near = closestWord(key, keys);
    const advice = `write one of ${keys.join(", ")}${near === undefined ? "" : ` (did you mean ${near}?)`}`;
    throw new InputError(where, `a key of ${argument}`, key, advice);
  }
}

/** Lets `true`, `false` or nothing in: the text "no" would count as yes. */
export function requireYesNo(where: string, argument: string, value: unknown): void {
  if (value === undefined || typeof value === "boolean") return;
  throw new InputError(where, argument, value, "write true or false, without quotation marks");
}

/** Lets a list in, or nothing. */
export function requireList(where: string, argument: string, value: unknown, like: string): void {
  if (value === undefined || Array.isArray(value)) return;
  throw new InputError(where, argument, value, `write a list such as ${like}`);
}
