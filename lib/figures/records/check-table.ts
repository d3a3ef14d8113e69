import { median } from "simple-statistics";
import { requireObject } from "../../input/index.ts";
import type { LineCheck, ParsedLog } from "../../records/index.ts";
import { type Table, table } from "../parts/table.ts";
import { clock, nothing, problems } from "./day-table.ts";

/**
 * The latest value of each check of each line, beside the median of all earlier ones.
 *
 * @param log what `parseCheckLog` gave; `undefined` for a log that is not kept
 * @param options the local time up to which entries count; default: all do
 * @returns table, a row a line and check; values in the lab's own units, to the decimals they were
 * written with; what is wrong with the log stands below; a sentence if there is nothing to show
 *
 * @example
 * checkTable(undefined).caption // => "Checks of the lines: latest and usual"
 */
export function checkTable(
  log: ParsedLog<LineCheck> | undefined,
  { asOf }: { readonly asOf?: string } = {},
): Table {
  if (log !== undefined)
    requireObject("checkTable", "log", log, "an object with file, rows, problems, …");
  const read = (log?.rows ?? []).filter(({ readAt }) => asOf === undefined || readAt <= asOf);
  const keys = [...new Set(read.map((one) => `${one.line}\n${one.check}`))];
  const rows = keys.map((key) => {
    const [line = "", check = ""] = key.split("\n");
    const own = read
      .filter((one) => one.line === line && one.check === check)
      .sort((a, b) => (a.readAt < b.readAt ? -1 : 1));
    const values = own.map(({ value }) => value);
    const digits = Math.max(...values.map(decimals));
    const earlier = values.slice(0, -1);
    const usual = earlier.length === 0 ? "–" : median(earlier).toFixed(digits);
    const latest = (values.at(-1) ?? Number.NaN).toFixed(digits);
    return { line, check, usual, latest, readAt: clock(own.at(-1)?.readAt ?? "") };
  });
  return table(rows, {
    caption: "Checks of the lines: latest and usual",
    ifEmpty: nothing("checks", log),
    notes: problems(log),
    columns: [
      { field: "line", heading: "Line" },
      { field: "check", heading: "Check" },
      { field: "usual", heading: "Median before", align: "right" },
      { field: "latest", heading: "Latest", align: "right" },
      { field: "readAt", heading: "Read" },
    ],
  });
}

function decimals(value: number): number {
  return String(value).split(".")[1]?.length ?? 0;
}
