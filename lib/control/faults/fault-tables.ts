import colourNegative from "../../../data/faults/colour-negative.json" with { type: "json" };
import colourPaper from "../../../data/faults/colour-paper.json" with { type: "json" };
import { InputError } from "../../input/index.ts";
import type { FaultTable } from "./fault-table.ts";
import { parseFaultTable } from "./parse-fault-table.ts";

/**
 * Faults of a colour-negative film process. Directions are published where a source is named; sizes
 * are illustrative, for no published size was found.
 *
 * @example
 * colourNegativeFaults.patterns["over-active"]?.published[0]?.sign // => "+"
 *
 * Source: Kodak publication CIS-254 p. 6 (directions).
 */
export const colourNegativeFaults: FaultTable = /* @__PURE__ */ parseFaultTable(colourNegative);

/**
 * Faults of a colour-paper process. Directions are published where a source is named; sizes are
 * illustrative, for no published size was found.
 *
 * @example
 * colourPaperFaults.patterns["under-active"]?.published[0]?.sign // => "-"
 *
 * Source: US Army SS0514 (directions).
 */
export const colourPaperFaults: FaultTable = /* @__PURE__ */ parseFaultTable(colourPaper);

/** The library's table of a process. */
export function faultTableOf(where: string, process: string): FaultTable {
  const tables = [colourNegativeFaults, colourPaperFaults];
  const found = tables.find((table) => table.process === process);
  if (found !== undefined) return found;
  const known = tables.map((table) => JSON.stringify(table.process)).join(" and ");
  const advice = `the library has tables for ${known}; for another process write options.table`;
  throw new InputError(where, "process", process, advice);
}
