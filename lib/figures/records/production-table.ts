import { requireObject } from "../../input/index.ts";
import type { ParsedLog, ProductionRow } from "../../records/index.ts";
import { type Table, table } from "../parts/table.ts";
import { counts, type DayTableOptions, nothing, problems } from "./day-table.ts";

/**
 * Pieces through the lines on some days, by process and format.
 *
 * @param log what `parseProductionLog` gave; `undefined` for a log that is not kept
 * @param options the days
 * @returns table; a column a day; what is wrong with the log stands below; a sentence if there is
 * nothing to show
 *
 * @example
 * productionTable(undefined, { days: ["2026-08-14"] }).caption // => "Pieces through the lines"
 */
export function productionTable(
  log: ParsedLog<ProductionRow> | undefined,
  options: DayTableOptions,
): Table {
  if (log !== undefined)
    requireObject("productionTable", "log", log, "an object with file, rows, problems, …");
  requireObject("productionTable", "options", options, "an object with days");
  const { days } = options;
  const made = (log?.rows ?? []).filter(({ date }) => counts(date, options));
  const keys = [...new Set(made.map((one) => `${one.process}\n${one.format}`))];
  const rows = keys.map((key) => {
    const [process = "", format = ""] = key.split("\n");
    const own = made.filter((one) => one.process === process && one.format === format);
    const counted = days.map((day) => [day, own.find((one) => one.date === day)?.count ?? null]);
    return { process, format, ...Object.fromEntries(counted) };
  });
  return table(rows, {
    caption: "Pieces through the lines",
    ifEmpty: nothing("production", log),
    notes: problems(log),
    columns: [
      { field: "process", heading: "Process" },
      { field: "format", heading: "Format" },
      ...days.map((day) => ({ field: day, heading: day, digits: 0, align: "right" as const })),
    ],
  });
}
