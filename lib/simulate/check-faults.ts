import { InputError } from "../input/index.ts";
import { checkedFault, requireApart } from "./check-fault.ts";
import { drawFault, PRINTER_FAULT, prints } from "./random-fault.ts";
import type { CheckedFault } from "./simulated-fault.ts";
import type { SimulateLabOptions } from "./simulated-lab.ts";
import type { SimulatedLine } from "./simulated-line.ts";

/** Lets the faults of a lab in, or draws the one that its seed chooses. */
export function checkedFaults(
  where: string,
  { faults = [], seed }: SimulateLabOptions,
  lines: readonly SimulatedLine[],
  days: number,
): readonly CheckedFault[] {
  const ids = lines.map(({ id }) => id);
  const given = faults === "random" ? [drawFault(seed, lines, days)] : faults;
  if (!Array.isArray(given)) {
    throw new InputError(where, "faults", faults, 'write a list of faults, or "random"');
  }
  const checked = given.map((fault, i) => checkedFault(where, `faults[${i}]`, fault, ids, days));
  checked.forEach(({ kind, line }, i) => {
    if (kind !== PRINTER_FAULT || lines.some(({ id, process }) => id === line && prints(process))) {
      return;
    }
    const advice = "write the line that makes prints; films do not go through a printer";
    throw new InputError(where, `faults[${i}].line`, line, advice);
  });
  requireApart(where, checked);
  return checked;
}
