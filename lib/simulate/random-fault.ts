import { requireNumber } from "../input/index.ts";
import { type SimulatedFault, simulatedFaultKinds } from "./simulated-fault.ts";
import { partStream } from "./streams.ts";

/**
 * One fault that a seed chooses: its kind, line, moment (after the first third, before the last
 * tenth) and size (0.8 to 1.6 times what is typical). `simulateLab({ faults: "random" })` uses it and
 * keeps it sealed.
 *
 * @param seed a whole number
 * @param options `days` of the lab, default 90; `lines`, default film and paper
 * @returns the fault
 * @throws InputError if the seed is not a whole number or there are fewer than 3 days
 *
 * @example
 * randomFault(7).kind === randomFault(7).kind // => true
 */
export function randomFault(
  seed: number,
  options: { readonly days?: number; readonly lines?: readonly string[] } = {},
): SimulatedFault {
  const where = "randomFault";
  requireNumber(where, "seed", seed, { whole: true });
  const days = requireNumber(where, "days", options.days ?? 90, { min: 3, whole: true });
  return drawFault(seed, options.lines ?? ["film", "paper"], days);
}

export function drawFault(seed: number, lines: readonly string[], days: number): SimulatedFault {
  const { integer, uniform } = partStream(seed, "fault");
  const line = lines[integer(0, lines.length - 1)] ?? "film";
  // A film line has no printer of its own.
  const kinds = simulatedFaultKinds.filter(
    ({ id }) => line !== "film" || id !== "printer-at-fault",
  );
  const kind = kinds[integer(0, kinds.length - 1)];
  const earliest = Math.floor(days / 3);
  const fromDay = integer(earliest, Math.max(earliest, Math.floor(0.9 * days) - 1));
  const size = (kind?.typicalSize ?? 1) * (0.8 + 0.8 * uniform());
  return { kind: kind?.id ?? "", line, fromDay, size: Number(size.toPrecision(3)) };
}
