import {
  InputError,
  requireEntries,
  requireNumber,
  requireObject,
  requireOneOf,
} from "../../input/index.ts";
import type { ProcessLimit, ProcessLimits } from "../process/process-limits.ts";
import type {
  ParameterSpecification,
  ProcessSpecification,
} from "../process/process-specification.ts";
import { stripColours } from "../strip.ts";

const LIKE = "an object as parseProcessSpecification gives it";
const NAMES = ["action", "control", "adjustment"] as const;

/**
 * Lets a specification in that was written by hand: a limit that is no number would never be passed,
 * and a bad process would run.
 */
export function requireSpecification(where: string, specification: ProcessSpecification): void {
  requireObject(where, "specification", specification, LIKE);
  const parameters = specification.parameters;
  requireEntries(where, "specification.parameters", parameters, "a list of parameters");
  parameters.forEach((parameter, i) => {
    const at = `specification.parameters[${i}]`;
    requireObject(where, at, parameter, LIKE);
    if (parameter.kind === "spread") requireSpreadOf(where, `${at}.of`, parameter.of, parameters);
    else {
      requireEntries(where, `${at}.colours`, parameter.colours, `a list such as ["red"]`);
      for (const colour of parameter.colours) {
        requireOneOf(where, `a colour of ${at}`, colour, stripColours);
      }
    }
    const limits: ProcessLimits = requireObject(where, `${at}.limits`, parameter.limits, LIKE);
    for (const name of NAMES) requireLimit(where, `${at}.limits.${name}`, limits[name]);
  });
}

function requireSpreadOf(
  where: string,
  argument: string,
  of: string,
  parameters: readonly ParameterSpecification[],
): void {
  const ids = parameters.flatMap((each) => (each?.kind === "spread" ? [] : [each?.id]));
  requireOneOf(where, argument, of, ids);
}

function requireLimit(where: string, argument: string, limit: ProcessLimit | null): void {
  if (limit === null || limit === undefined) return;
  requireObject(where, argument, limit, "{ lower, upper } or null");
  for (const side of ["lower", "upper"] as const) {
    const value = limit[side];
    if (value === null) continue;
    if (value === undefined) {
      throw new InputError(where, `${argument}.${side}`, value, "write a density or null");
    }
    requireNumber(where, `${argument}.${side}`, value, { min: -6, max: 6, unit: "density" });
  }
}
