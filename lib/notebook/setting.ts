import { InputError } from "../input/index.ts";
import { type ParameterType, typeWords } from "./parameter-type.ts";
import type { Parameter } from "./parameters.ts";

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

/**
 * The value that a text after `--set name=` means for a parameter of that type.
 *
 * @throws InputError that says what to write instead
 */
export function parseSetting(parameter: Parameter, text: string): unknown {
  const found = settingOf(parameter.type, text);
  if (found.length > 0) return found[0];
  const unit = parameter.comment === "" ? "" : ` (${parameter.comment})`;
  const decimal = /^-?\d+,\d+$/.test(text.trim())
    ? ` (decimals with a point: ${text.trim().replace(",", ".")})`
    : "";
  const advice = `write ${typeWords(parameter.type)}${unit}${decimal}`;
  throw new InputError("--set", parameter.name, text, advice);
}

/** The value as a list of one, or an empty list if the text does not fit. */
function settingOf(type: ParameterType, text: string): readonly unknown[] {
  if (type.kind === "string") return [text];
  if (type.kind === "union") {
    const order = [...type.among].sort(
      (a, b) => Number(a.kind === "string") - Number(b.kind === "string"),
    );
    for (const each of order) {
      const found = settingOf(each, text);
      if (found.length > 0) return found;
    }
    return [];
  }
  if (type.kind === "literal" && String(type.value) === text.trim()) return [type.value];
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    value = undefined;
  }
  if (type.kind === "number" && NUMBER.test(text.trim())) value = Number(text);
  return value !== undefined && fits(type, value) ? [value] : [];
}

function fits(type: ParameterType, value: unknown): boolean {
  switch (type.kind) {
    case "number":
      return typeof value === "number" && Number.isFinite(value);
    case "string":
    case "boolean":
      return typeof value === type.kind;
    case "null":
      return value === null;
    case "literal":
      return value === type.value;
    case "array":
      return Array.isArray(value) && value.every((item) => fits(type.item, item));
    case "union":
      return type.among.some((each) => fits(each, value));
    default:
      return true;
  }
}
