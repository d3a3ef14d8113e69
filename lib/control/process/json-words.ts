import { closestWord, InputError } from "../../input/index.ts";

/** A JSON object, not yet known. */
export type Fields = Readonly<Record<string, unknown>>;

/** Whether a value is one of the allowed words; if not, adds the problem to the list. */
export function wordIn(
  problems: string[],
  at: string,
  value: unknown,
  allowed: readonly string[],
): boolean {
  if (typeof value === "string" && allowed.includes(value)) return true;
  const near = typeof value === "string" ? closestWord(value, allowed) : undefined;
  const meant = near === undefined ? "" : ` (did you mean ${JSON.stringify(near)}?)`;
  const list = allowed.map((each) => JSON.stringify(each)).join(", ");
  problems.push(`${at} is ${shown(value)}; write one of ${list}${meant}`);
  return false;
}

/** Whether a JSON value is an object with fields. */
export function isFields(value: unknown): value is Fields {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Whether a JSON value is some text. */
export function isText(value: unknown): value is string {
  return typeof value === "string" && value.trim() !== "";
}

/** A value as it is shown in a message. */
export function shown(value: unknown): string {
  return value === undefined ? "missing" : (JSON.stringify(value) ?? String(value)).slice(0, 60);
}

/** What the text of a JSON file holds; anything but text is taken as it is. */
export function parsedJson(where: string, json: unknown): unknown {
  if (typeof json !== "string") return json;
  try {
    return JSON.parse(json);
  } catch (cause) {
    const why = cause instanceof Error ? cause.message : String(cause);
    const advice = `write a JSON object (the text is not JSON: ${why})`;
    throw new InputError(where, "json", json.slice(0, 40), advice);
  }
}
