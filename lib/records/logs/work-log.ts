import { momentCell, momentColumns } from "../cells/time-cell.ts";
import { wordCell } from "../cells/word-cell.ts";
import type { LogOptions, ParsedLog } from "../reading/log-problem.ts";
import { readLog } from "../reading/read-log.ts";
import type { WorkEntry } from "./log-rows.ts";

/** What the reader of a work log may be told. */
export interface WorkLogOptions extends LogOptions {
  /** Ids of the lines; without them any line goes. */
  readonly lines?: readonly string[];
  /** Words for kinds of work; without them any word goes. */
  readonly kinds?: readonly string[];
}

/**
 * Reads a work log: one row a piece of work at a line, such as a mix of replenisher or a rack that
 * was lifted.
 *
 * Columns `done_at` (`2026-08-14T06:40`; or `date` and `time`), `line` and `work`.
 *
 * @param text the file's text; commas, semicolons or tabs; a byte order mark and any line ends
 * @param options the file's name, and what to check the rows against
 * @returns the good rows, everything wrong by line and column, and warnings
 * @throws InputError if `text` is not a string or an option cannot be meant; never for a bad file
 *
 * @example
 * parseWorkLog("done_at,line,work\n2026-08-14T06:40,film,fixer-handled", { file: "work.csv" }).rows[0].work // => "fixer-handled"
 */
export function parseWorkLog(text: string, options: WorkLogOptions): ParsedLog<WorkEntry> {
  return readLog<WorkEntry>(text, options, {
    where: "parseWorkLog",
    timeColumn: "done_at",
    timeOf: (row) => row.doneAt,
    seriesOf: (row) => `${row.line}\n${row.work}`,
    twice: "one kind of work at a line twice at the same minute",
    twiceAdvice: "write the minute of each, or delete the one that is wrong",
    needs: (headers) => ({
      required: [...momentColumns("done_at", headers), "line", "work"],
      optional: [],
    }),
    rowReader: (columns, report, context) => {
      const allowed = (words: readonly string[] | undefined) =>
        words === undefined ? {} : { allowed: words };
      const doneAtOf = momentCell(columns, "done_at", report, context);
      const lineKind = { what: "line", ...allowed(options.lines) };
      const workKind = { what: "kind of work", ...allowed(options.kinds) };
      const lineOf = wordCell(columns.get("line"), lineKind, report);
      const workOf = wordCell(columns.get("work"), workKind, report);
      return (cells) => {
        const doneAt = doneAtOf(cells);
        const line = lineOf(cells);
        const work = workOf(cells);
        if (doneAt === "" || line === "" || work === "") return undefined;
        return { doneAt, line, work, source: { file: report.file, line: report.line } };
      };
    },
  });
}
