import { InputError } from "../../input/index.ts";
import { isFields, parsedJson } from "../process/json-words.ts";
import { faultTableProblems } from "./check-fault-table.ts";
import type { FaultTable } from "./fault-table.ts";

/**
 * Reads a table of faults from JSON: the library's own form, or a lab's.
 *
 * @param json the text of a JSON file, or the object it holds:
 *   `{ process, name, note, scatter, patterns, faults }`
 * @returns the table, checked
 * @throws InputError that lists everything that is wrong, each with where it stands
 *
 * @example
 * parseFaultTable(JSON.parse(JSON.stringify(colourPaperFaults))).process // => "colour-paper"
 */
export function parseFaultTable(json: unknown): FaultTable {
  const where = "parseFaultTable";
  const table = parsedJson(where, json);
  const problems = faultTableProblems(table);
  if (problems.length === 0) return table as FaultTable;
  const id = isFields(table) ? table.process : table;
  throw new InputError(where, "the table of", id, problems.join("; "));
}
