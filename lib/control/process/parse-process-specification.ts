import { InputError } from "../../input/index.ts";
import { specificationProblems } from "./check-specification.ts";
import { parsedJson } from "./json-words.ts";
import type { ProcessLimits } from "./process-limits.ts";
import type { ParameterSpecification, ProcessSpecification } from "./process-specification.ts";

/**
 * Reads a process specification, the lab's own or one of the library's: the patches of the strip,
 * the parameters that are plotted, and their action and control limits with their sources.
 *
 * Limits are deviations from aim in density. Checked: every field and word; that lower is at or
 * below zero and upper at or above; that the adjustment tolerance lies within the action limits and
 * those within the control limits; that patches and parameters that are referred to exist.
 *
 * @param json the text of a JSON file, or the object it holds
 * @returns the specification, frozen in type; limits that are left out become `null`
 * @throws InputError that lists everything that is wrong at once
 *
 * @example
 * const own = structuredClone(colourPaperProcess) as { id: string };
 * own.id = "colour-paper-line-2";
 * parseProcessSpecification(own).id // => "colour-paper-line-2"
 */
export function parseProcessSpecification(json: unknown): ProcessSpecification {
  const where = "parseProcessSpecification";
  const value = parsedJson(where, json);
  const problems = specificationProblems(value);
  if (problems.length > 0) {
    const name = nameOf(value);
    throw new InputError(where, "specification", name, `mend this: ${problems.join("; ")}`);
  }
  const sound = value as ProcessSpecification;
  return { ...sound, parameters: sound.parameters.map(withWholeLimits) };
}

function withWholeLimits(parameter: ParameterSpecification): ParameterSpecification {
  const { action, control, adjustment } = parameter.limits as Partial<ProcessLimits>;
  const limits: ProcessLimits = {
    kind: "process limits",
    action: action ?? null,
    control: control ?? null,
    adjustment: adjustment ?? null,
  };
  return { ...parameter, limits };
}

function nameOf(value: unknown): unknown {
  const id = (value as { id?: unknown } | null | undefined)?.id;
  return typeof id === "string" ? id : "without an id";
}
