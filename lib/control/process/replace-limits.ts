import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { parseProcessSpecification } from "./parse-process-specification.ts";
import type { ProcessLimit, ProcessLimits } from "./process-limits.ts";
import type { ProcessSpecification } from "./process-specification.ts";

/** Limits to put in place of those of a specification, as half-widths in density. */
export interface LimitReplacement {
  readonly action?: number | null;
  readonly control?: number | null;
  readonly adjustment?: number | null;
}

/**
 * A copy of a specification with some limits replaced by the lab's own.
 *
 * A number takes the place of both sides that the old limit had (`0.05` becomes −0.05 and +0.05; on a
 * one-sided limit only that side); where there was no limit, of the sides the parameter's other
 * limits have. `null` takes a limit away.
 *
 * @param specification the specification to start from
 * @param replacements by parameter id: half-widths in density, above 0
 * @returns a new, checked specification whose replaced limits are marked `"the lab's own"`
 * @throws InputError if a parameter is unknown or the new limits cross
 *
 * @example
 * const strict = replaceLimits(colourNegativeProcess, { ld: { action: 0.04, control: 0.06 } });
 * strict.parameters[1]?.limits.action?.upper // => 0.04
 */
export function replaceLimits(
  specification: ProcessSpecification,
  replacements: Readonly<Record<string, LimitReplacement>>,
): ProcessSpecification {
  requireObject(
    "replaceLimits",
    "specification",
    specification,
    "an object with id, name, geometry, …",
  );
  requireEntries("replaceLimits", "parameters", specification.parameters);
  requireObject("replaceLimits", "replacements", replacements, "an object");
  const ids = specification.parameters.map((each) => each.id);
  for (const id of Object.keys(replacements)) {
    if (!ids.includes(id)) {
      const list = ids.map((each) => JSON.stringify(each)).join(", ");
      throw new InputError("replaceLimits", "parameter", id, `write one of ${list}`);
    }
  }
  const parameters = specification.parameters.map((parameter) => {
    const replacement = replacements[parameter.id];
    if (replacement === undefined) return parameter;
    const old = parameter.limits;
    const model = old.control ?? old.action ?? old.adjustment;
    const one = (name: "action" | "control" | "adjustment"): ProcessLimit | null => {
      const half = replacement[name];
      if (half === undefined) return old[name];
      if (half === null) return null;
      requireNumber("replaceLimits", `${parameter.id}.${name}`, half, {
        above: 0,
        unit: "density",
      });
      const sides = old[name] ?? model;
      const onlyUpper = parameter.kind === "spread" || (sides !== null && sides.lower === null);
      return {
        lower: onlyUpper ? null : -half,
        upper: sides !== null && sides.upper === null ? null : half,
        source: "set by the lab",
        howObtained: "the lab's own",
      };
    };
    const limits: ProcessLimits = {
      kind: "process limits",
      action: one("action"),
      control: one("control"),
      adjustment: one("adjustment"),
    };
    return { ...parameter, limits };
  });
  return parseProcessSpecification({ ...specification, parameters });
}
