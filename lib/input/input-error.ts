/**
 * An error made at the door: a value the caller gave cannot be used.
 *
 * The message names the function, the argument, what it was, what is allowed, and where possible
 * what was probably meant. `argument` and `value` repeat the first two for programs.
 *
 * @example
 * new InputError("dilute", "parts", 0, "write parts greater than 0").message // => "dilute: parts is 0; write parts greater than 0"
 */
export class InputError extends Error {
  readonly where: string;
  readonly argument: string;
  readonly value: unknown;

  constructor(where: string, argument: string, value: unknown, advice: string) {
    super(`${where}: ${argument} is ${shown(value)}; ${advice}`);
    this.name = "InputError";
    this.where = where;
    this.argument = argument;
    this.value = value;
  }
}

function shown(value: unknown): string {
  if (typeof value === "string") return JSON.stringify(value);
  if (value === undefined) return "missing";
  if (typeof value === "number" || typeof value === "boolean" || value === null) {
    return String(value);
  }
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
}
