import { InputError } from "../input/index.ts";
import { type InputQuantity, requireDistribution } from "./distribution.ts";

/** Lets a list of inputs in: at least one, each named once, each with a usable distribution. */
export function requireInputs(where: string, inputs: readonly InputQuantity[]): void {
  if (!Array.isArray(inputs) || inputs.length === 0) {
    const advice = "write at least one { name, distribution }";
    throw new InputError(where, "inputs", inputs, advice);
  }
  const names = new Set<string>();
  for (const { name, distribution } of inputs) {
    if (typeof name !== "string" || name.trim() === "") {
      throw new InputError(where, "inputs.name", name, "write the name that the model reads");
    }
    if (names.has(name)) {
      throw new InputError(where, "inputs.name", name, "this name is given twice; name each once");
    }
    names.add(name);
    requireDistribution(where, name, distribution);
  }
}

/** The model at one set of inputs, or an error that shows them. */
export function modelValue(
  where: string,
  model: (inputs: Readonly<Record<string, number>>) => number,
  values: Readonly<Record<string, number>>,
): number {
  const y = model(values);
  if (typeof y === "number" && Number.isFinite(y)) return y;
  const at = Object.entries(values).map(([name, value]) => `${name} = ${value}`);
  const advice = `the model gives no finite number at ${at.join(", ")}`;
  throw new InputError(where, "model", y, advice);
}
