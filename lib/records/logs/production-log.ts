import { requireObject } from "../../input/index.ts";
import { numberCell } from "../cells/number-cell.ts";
import type { NumberKind } from "../cells/number-fault.ts";
import { processKind } from "../cells/process-kind.ts";
import { dayCell } from "../cells/time-cell.ts";
import { wordCell } from "../cells/word-cell.ts";
import type { LogOptions, ParsedLog } from "../reading/log-problem.ts";
import { readLog } from "../reading/read-log.ts";
import type { ProductionRow } from "./log-rows.ts";

/** What the reader of a production log may be told. */
export interface ProductionLogOptions extends LogOptions {
  /** Ids of the processes; by default colour-negative and colour-paper. */
  readonly processes?: readonly string[];
  /** Ids of the formats the lab takes; without them any format goes. */
  readonly formats?: readonly string[];
}

const COUNT: NumberKind = { what: "count", min: 0, max: Number.MAX_SAFE_INTEGER, whole: true };
const COLUMNS = ["date", "process", "format", "count"];

/**
 * Reads a production log: how many rolls, sheets or prints of each format went through each process
 * on each day. Areas are looked up elsewhere, by the format.
 *
 * Columns `date` (`2026-08-14`), `process`, `format`, `count` (whole, 0 or more). A format that
 * occurs twice on a day in one process is reported and the second row left out.
 *
 * @param text the file's text; commas, semicolons or tabs; a byte order mark and any line ends
 * @param options the file's name, and what to check the rows against
 * @returns the good rows, everything wrong by line and column, and warnings
 * @throws InputError if `text` is not a string or an option cannot be meant; never for a bad file
 *
 * @example
 * parseProductionLog("date,process,format,count\n2026-08-14,colour-negative,135-36,41", { file: "production.csv" }).rows[0].count // => 41
 */
export function parseProductionLog(
  text: string,
  options: ProductionLogOptions,
): ParsedLog<ProductionRow> {
  requireObject("parseProductionLog", "options", options, "an object with file");
  const { formats } = options;
  const format = {
    what: "format",
    ifUnknown: "add the format to the list of formats",
    ...(formats === undefined ? {} : { allowed: formats }),
  };
  return readLog<ProductionRow>(text, options, {
    where: "parseProductionLog",
    timeColumn: "date",
    timeOf: (row) => row.date,
    seriesOf: (row) => `${row.process}\n${row.format}`,
    twice: "one format twice on a day",
    twiceAdvice: "add the two counts and write one row",
    needs: () => ({ required: COLUMNS, optional: [] }),
    rowReader: (columns, report, context) => {
      const dateOf = dayCell(columns.get("date"), report, context);
      const processOf = wordCell(columns.get("process"), processKind(options.processes), report);
      const formatOf = wordCell(columns.get("format"), format, report);
      const countOf = numberCell(columns.get("count"), COUNT, report, context);
      return (cells) => {
        const date = dateOf(cells);
        const process = processOf(cells);
        const format = formatOf(cells);
        const count = countOf(cells);
        const bad = date === "" || process === "" || format === "" || Number.isNaN(count);
        if (bad) return undefined;
        return { date, process, format, count, source: { file: report.file, line: report.line } };
      };
    },
  });
}
