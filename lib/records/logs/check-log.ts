import { numberCell } from "../cells/number-cell.ts";
import type { NumberKind } from "../cells/number-fault.ts";
import { momentCell, momentColumns } from "../cells/time-cell.ts";
import { wordCell } from "../cells/word-cell.ts";
import type { LogOptions, ParsedLog } from "../reading/log-problem.ts";
import { readLog } from "../reading/read-log.ts";
import type { LineCheck } from "./log-rows.ts";

/** What the reader of a check log may be told. */
export interface CheckLogOptions extends LogOptions {
  /** Ids of the lines; without them any line goes. */
  readonly lines?: readonly string[];
  /** Ids of the checks; without them any check goes. */
  readonly checks?: readonly string[];
}

const VALUE: NumberKind = { what: "value", min: -1e6, max: 1e6 };

/**
 * Reads a check log: one row a check of a line that gave a number, such as the time through the
 * developer by stopwatch or the developer's specific gravity.
 *
 * Columns `read_at` (`2026-08-14T07:04`; or `date` and `time`), `line`, `check` and `value`, in a unit
 * of the lab's own that stays the same for each check.
 *
 * @param text the file's text; commas, semicolons or tabs; a byte order mark and any line ends
 * @param options the file's name, and what to check the rows against
 * @returns the good rows, everything wrong by line and column, and warnings
 * @throws InputError if `text` is not a string or an option cannot be meant; never for a bad file
 *
 * @example
 * parseCheckLog("read_at,line,check,value\n2026-08-14T07:04,film,developer-time,195.4", { file: "checks.csv" }).rows[0].value // => 195.4
 */
export function parseCheckLog(text: string, options: CheckLogOptions): ParsedLog<LineCheck> {
  return readLog<LineCheck>(text, options, {
    where: "parseCheckLog",
    timeColumn: "read_at",
    timeOf: (row) => row.readAt,
    seriesOf: (row) => `${row.line}\n${row.check}`,
    twice: "one check of a line twice at the same minute",
    twiceAdvice: "write the minute of each, or delete the one that is wrong",
    needs: (headers) => ({
      required: [...momentColumns("read_at", headers), "line", "check", "value"],
      optional: [],
    }),
    rowReader: (columns, report, context) => {
      const readAtOf = momentCell(columns, "read_at", report, context);
      const lineOf = wordCell(columns.get("line"), kind("line", options.lines), report);
      const checkOf = wordCell(columns.get("check"), kind("check", options.checks), report);
      const numberOf = numberCell(columns.get("value"), VALUE, report, context);
      return (cells) => {
        const readAt = readAtOf(cells);
        const line = lineOf(cells);
        const check = checkOf(cells);
        const value = numberOf(cells);
        const bad = readAt === "" || line === "" || check === "" || Number.isNaN(value);
        const source = { file: report.file, line: report.line };
        return bad ? undefined : { readAt, line, check, value, source };
      };
    },
  });
}

function kind(what: string, allowed: readonly string[] | undefined) {
  return { what, ...(allowed === undefined ? {} : { allowed }) };
}
