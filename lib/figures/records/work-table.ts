import { requireEntries, requireObject } from "../../input/index.ts";
import type { ParsedLog, WorkEntry } from "../../records/index.ts";
import { type Table, table } from "../parts/table.ts";
import { clock, type DayTableOptions, nothing, problems } from "./day-table.ts";

/**
 * What was done at the lines from the first of some days on, oldest first.
 *
 * @param log what `parseWorkLog` gave; `undefined` for a log that is not kept
 * @param options the days, of which the first counts, and the time up to which entries count
 * @returns table, a row an entry; what is wrong with the log stands below; a sentence if there is
 * nothing to show
 *
 * @example
 * workTable(undefined, { days: ["2026-08-13"] }).caption // => "Work at the lines"
 */
export function workTable(log: ParsedLog<WorkEntry> | undefined, options: DayTableOptions): Table {
  if (log !== undefined)
    requireObject("workTable", "log", log, "an object with file, rows, problems, …");
  const { days, asOf } = requireObject("workTable", "options", options, "an object with days");
  requireEntries("workTable", "options.days", days, "a list of days");
  const from = [...days].sort()[0] ?? "";
  const rows = (log?.rows ?? [])
    .filter(({ doneAt }) => doneAt >= from && (asOf === undefined || doneAt <= asOf))
    .sort((a, b) => (a.doneAt < b.doneAt ? -1 : 1))
    .map(({ doneAt, line, work }) => ({ doneAt: clock(doneAt), line, work }));
  return table(rows, {
    caption: "Work at the lines",
    ifEmpty: nothing("work", log),
    notes: problems(log),
    columns: [
      { field: "doneAt", heading: "Done" },
      { field: "line", heading: "Line" },
      { field: "work", heading: "Work" },
    ],
  });
}
