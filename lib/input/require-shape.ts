import { InputError } from "./input-error.ts";

/**
 * Lets an object in, and returns it: not a list, not nothing, not a number or a text.
 *
 * @param where name of the public function, for the message
 * @param argument name of the argument, for the message
 * @param value what was given
 * @param like what to write instead, after "write": `"an object with rows and y"`
 * @returns the same object
 * @throws InputError for anything else
 *
 * @example
 * requireObject("dilute", "input", { totalMl: 500 }).totalMl // => 500
 */
export function requireObject<T>(where: string, argument: string, value: T, like?: string): T {
  if (typeof value === "object" && value !== null && !Array.isArray(value)) return value;
  throw new InputError(where, argument, value, `write ${like ?? "an object, { … }"}`);
}

/**
 * Lets a list in, and returns it; an empty one too.
 *
 * @param where name of the public function, for the message
 * @param argument name of the argument, for the message
 * @param value what was given
 * @param like what to write instead, after "write": `"a list of readings"`
 * @returns the same list
 * @throws InputError for anything else
 *
 * @example
 * requireEntries("mean", "readings", [1.2, 1.3]) // => [1.2, 1.3]
 */
export function requireEntries<T>(where: string, argument: string, value: T, like?: string): T {
  if (Array.isArray(value)) return value;
  throw new InputError(where, argument, value, `write ${like ?? "a list, [ … ]"}`);
}

/**
 * Lets a function in, and returns it.
 *
 * @param where name of the public function, for the message
 * @param argument name of the argument, for the message
 * @param value what was given
 * @param like what to write instead, after "write": `"a function of x"`
 * @returns the same function
 * @throws InputError for anything else
 *
 * @example
 * requireFunction("integrate", "f", (x: number) => 2 * x)(3) // => 6
 */
export function requireFunction<T>(where: string, argument: string, value: T, like?: string): T {
  if (typeof value === "function") return value;
  throw new InputError(where, argument, value, `write ${like ?? "a function"}`);
}
