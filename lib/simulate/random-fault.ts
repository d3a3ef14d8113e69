import { InputError, requireNumber } from "../input/index.ts";
import { type SimulatedFault, simulatedFaultKinds } from "./simulated-fault.ts";
import { type SimulatedLine, simulatedLines } from "./simulated-line.ts";
import { partStream } from "./streams.ts";

/** What of a line decides which faults it can have. */
type LineKind = Pick<SimulatedLine, "id" | "process">;

/** The fault that shows in prints alone. */
export const PRINTER_FAULT = "printer-at-fault";

/** Whether a process makes prints; films do not go through a printer. */
export function prints(process: string): boolean {
  return process === "colour-paper";
}

/**
 * One fault that a seed chooses: its kind, line, moment (after the first third, before the last
 * tenth) and size (0.8 to 1.6 times what is typical). `simulateLab({ faults: "random" })` uses it and
 * keeps it sealed.
 *
 * @param seed a whole number
 * @param options `days` of the lab, 3 to 3,660, default 90; `lines`, default `simulatedLines`
 * @returns the fault
 * @throws InputError if the seed is not a whole number, for days out of range or no lines
 *
 * @example
 * randomFault(7) // => { kind: "developer-too-long", line: "paper", fromDay: 30, size: 0.0807 }
 */
export function randomFault(
  seed: number,
  options: { readonly days?: number; readonly lines?: readonly LineKind[] } = {},
): SimulatedFault {
  const where = "randomFault";
  requireNumber(where, "seed", seed, { whole: true });
  const days = requireNumber(where, "days", options.days ?? 90, {
    min: 3,
    max: 3660,
    whole: true,
  });
  const lines = options.lines ?? simulatedLines;
  const sound = Array.isArray(lines) && lines.every((line) => typeof line?.id === "string");
  if (!sound || lines.length === 0) {
    throw new InputError(where, "lines", lines, "write a list of lines, such as simulatedLines");
  }
  return drawFault(seed, lines, days);
}

/** The same of values already let in. */
export function drawFault(seed: number, lines: readonly LineKind[], days: number): SimulatedFault {
  const { integer, uniform } = partStream(seed, "fault");
  const line = lines[integer(0, lines.length - 1)];
  const kinds = simulatedFaultKinds.filter(
    ({ id }) => id !== PRINTER_FAULT || prints(line?.process ?? ""),
  );
  const kind = kinds[integer(0, kinds.length - 1)];
  const earliest = Math.floor(days / 3);
  const fromDay = integer(earliest, Math.max(earliest, Math.floor(0.9 * days) - 1));
  const size = (kind?.typicalSize ?? 1) * (0.8 + 0.8 * uniform());
  return { kind: kind?.id ?? "", line: line?.id ?? "", fromDay, size: Number(size.toPrecision(3)) };
}
