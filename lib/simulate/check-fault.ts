import { InputError, requireNumber, requireOneOf } from "../input/index.ts";
import {
  type CheckedFault,
  type SimulatedFault,
  type SimulatedFaultKind,
  simulatedFaultIds,
  simulatedFaultKinds,
} from "./simulated-fault.ts";

/** The kind with an id, or an error that lists all. */
export function faultKindOf(where: string, id: unknown): SimulatedFaultKind {
  const known = requireOneOf(where, "kind", id, simulatedFaultIds);
  const found = simulatedFaultKinds.find((each) => each.id === known);
  if (found === undefined) throw new InputError(where, "kind", id, "write the id of a known fault");
  return found;
}

/** Lets a size in: above 0 and no larger than the kind allows. */
export function requireFaultSize(where: string, kind: SimulatedFaultKind, size: unknown): number {
  return requireNumber(where, `size of ${kind.id}`, size, {
    above: 0,
    max: kind.largestSize,
    unit: kind.unit === "1" ? "" : kind.unit,
    hint: `${kind.sizeMeans}; the kind already says in which direction`,
  });
}

/** Lets a fault in if its line exists and its days and size are in range. */
export function checkedFault(
  where: string,
  fault: SimulatedFault,
  lines: readonly string[],
  days: number,
): CheckedFault {
  const kind = faultKindOf(where, fault.kind);
  const fromDay = requireNumber(where, "fromDay", fault.fromDay, {
    min: 0,
    max: days - 1,
    whole: true,
    hint: "0 is the first day",
  });
  return {
    kind: kind.id,
    line: requireOneOf(where, "line", fault.line, lines),
    fromDay,
    untilDay: requireNumber(where, "untilDay", fault.untilDay ?? days, {
      above: fromDay,
      whole: true,
    }),
    size: requireFaultSize(where, kind, fault.size ?? kind.typicalSize),
  };
}
