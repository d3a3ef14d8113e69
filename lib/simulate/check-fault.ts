import { InputError, requireNumber, requireOneOf } from "../input/index.ts";
import { requireKnownKeys } from "./known-keys.ts";
import {
  type CheckedFault,
  type SimulatedFault,
  type SimulatedFaultKind,
  simulatedFaultIds,
  simulatedFaultKinds,
} from "./simulated-fault.ts";

const KEYS: readonly (keyof SimulatedFault)[] = ["kind", "line", "fromDay", "size", "untilDay"];

/** A fault that is over with the strip it befell. */
const ONE_STRIP = "strip-mishandled";

/** The kind with an id, or an error that lists all. */
export function faultKindOf(where: string, id: unknown, argument = "kind"): SimulatedFaultKind {
  const known = requireOneOf(where, argument, id, simulatedFaultIds);
  const found = simulatedFaultKinds.find((each) => each.id === known);
  if (found === undefined) {
    throw new InputError(where, argument, id, "write the id of a known fault");
  }
  return found;
}

/** Lets a size in: above 0 and no larger than the kind allows. */
export function requireFaultSize(
  where: string,
  kind: SimulatedFaultKind,
  size: unknown,
  argument = "size",
): number {
  return requireNumber(where, argument, size, {
    above: 0,
    max: kind.largestSize,
    unit: kind.unit === "1" ? "" : kind.unit,
    hint: `${kind.id}: ${kind.sizeMeans}; the kind already says in which direction`,
  });
}

/** Lets a fault in if its line exists and its days and size are in range. */
export function checkedFault(
  where: string,
  argument: string,
  fault: SimulatedFault,
  lines: readonly string[],
  days: number,
): CheckedFault {
  requireKnownKeys(where, argument, fault, KEYS);
  const kind = faultKindOf(where, fault.kind, `${argument}.kind`);
  const line = requireOneOf(where, `${argument}.line`, fault.line, lines);
  const fromDay = requireNumber(where, `${argument}.fromDay`, fault.fromDay, {
    min: 0,
    max: days - 1,
    whole: true,
    hint: `0 is the first of ${days} days, ${days - 1} the last`,
  });
  const untilDay = requireNumber(where, `${argument}.untilDay`, fault.untilDay ?? days, {
    above: fromDay,
    max: days,
    whole: true,
    hint: "the day on which it is mended; left out, the fault stays to the end",
  });
  return {
    kind: kind.id,
    line,
    fromDay,
    untilDay: kind.id === ONE_STRIP ? fromDay + 1 : untilDay,
    size: requireFaultSize(where, kind, fault.size ?? kind.typicalSize, `${argument}.size`),
  };
}

/** Refuses two faults of one kind that stand on one line at once: they would be one larger fault. */
export function requireApart(where: string, faults: readonly CheckedFault[]): void {
  faults.forEach((fault, i) => {
    const { kind, line, fromDay, untilDay } = fault;
    const before = faults.findIndex(
      (other, at) =>
        at < i &&
        other.kind === kind &&
        other.line === line &&
        other.fromDay < untilDay &&
        fromDay < other.untilDay,
    );
    if (before < 0) return;
    const advice = `faults[${before}] is of the same kind and stands on that line at the same time; write one fault of the whole size, or days that do not overlap`;
    throw new InputError(where, `faults[${i}]`, `${kind} from day ${fromDay}`, advice);
  });
}
