import { InputError } from "../../input/index.ts";
import type { ParameterSpecification } from "../process/process-specification.ts";
import type { Colour } from "../strip.ts";

/** One reading of a strip that takes part in fault finding. */
export interface FaultComponent {
  /** Id of the parameter in the process specification. */
  readonly parameter: string;
  readonly name: string;
  readonly colour: Colour;
  /** Density that counts as size 1: half-width of the action limit, or of the next one there is. */
  readonly limit: number;
}

/** A component in words: `"LD (speed), red"`. */
export function componentWords({ name, colour }: FaultComponent): string {
  return `${name}, ${colour}`;
}

/** The half-width by which a parameter is measured, or `undefined` where it has no limit. */
export function limitHalfWidth({ limits }: ParameterSpecification): number | undefined {
  for (const limit of [limits.action, limits.control, limits.adjustment]) {
    if (limit === null) continue;
    const sides = [limit.lower, limit.upper].filter((side) => side !== null).map(Math.abs);
    const width = Math.min(...sides.filter((side) => side > 0));
    if (Number.isFinite(width)) return width;
  }
  return undefined;
}

/** Lets a list of components in: each once, with a limit above 0. */
export function requireComponents(where: string, components: readonly FaultComponent[]): void {
  if (!Array.isArray(components) || components.length === 0) {
    const advice = "write at least one { parameter, name, colour, limit }";
    throw new InputError(where, "components", components, advice);
  }
  const seen = new Set<string>();
  for (const [i, { parameter, colour, limit }] of components.entries()) {
    const key = `${parameter} ${colour}`;
    if (seen.has(key)) {
      throw new InputError(where, `components[${i}]`, key, "write each reading once");
    }
    seen.add(key);
    if (!(Number.isFinite(limit) && limit > 0)) {
      const advice = "write the half-width of its action limit in density, greater than 0";
      throw new InputError(where, `components[${i}].limit`, limit, advice);
    }
  }
}

/** A density with its sign, to the thousandth: `"+0.062"`. */
export function signedDensity(density: number): string {
  const size = Math.abs(density).toFixed(3);
  const sign = Number(size) === 0 ? "" : density < 0 ? "−" : "+";
  return `${sign}${size}`;
}
