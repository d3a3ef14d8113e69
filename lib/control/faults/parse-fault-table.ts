import { InputError } from "../../input/index.ts";
import { isFields } from "../process/json-words.ts";
import { faultTableProblems } from "./check-fault-table.ts";
import type { FaultTable } from "./fault-table.ts";

/**
 * Reads a table of faults from JSON: the library's own form, or a lab's.
 *
 * @param json what `JSON.parse` gave: `{ process, name, note, scatter, patterns, faults }`
 * @returns the table, checked
 * @throws InputError that lists everything that is wrong, each with where it stands
 *
 * @example
 * parseFaultTable(JSON.parse(JSON.stringify(colourPaperFaults))).process // => "colour-paper"
 */
export function parseFaultTable(json: unknown): FaultTable {
  const problems = faultTableProblems(json);
  if (problems.length === 0) return json as FaultTable;
  const id = isFields(json) ? json.process : json;
  throw new InputError("parseFaultTable", "the table of", id, problems.join("; "));
}
