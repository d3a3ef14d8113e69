import { requireEntries, requireObject, requireOneOf } from "../../input/index.ts";
import type { FaultEntry, FaultTable } from "./fault-table.ts";

/**
 * A fault of a table by its id.
 *
 * @param table the faults of a process
 * @param id id of the fault, `"developer-too-warm"`
 * @returns the fault: name, pattern, course, place, how it is confirmed, what then
 * @throws InputError that lists the table's faults and names the closest, if it lacks this one
 *
 * @example
 * faultById(colourNegativeFaults, "bleach-weak").place // => "bleach"
 */
export function faultById(table: FaultTable, id: string): FaultEntry {
  requireObject("faultById", "table", table, "an object with process, name, note, …");
  requireEntries("faultById", "faults", table.faults);
  const ids = table.faults.map((fault) => fault.id);
  const known = requireOneOf("faultById", "id", id, ids);
  const [found] = table.faults.filter((fault) => fault.id === known);
  return found ?? requireOneOf("faultById", "id", id, []);
}
