import { requireObject } from "../../input/index.ts";
import type { Columns } from "../cells/columns.ts";
import { numberCell } from "../cells/number-cell.ts";
import type { NumberKind } from "../cells/number-fault.ts";
import { dayCell } from "../cells/time-cell.ts";
import type { LogOptions, ParsedLog } from "../reading/log-problem.ts";
import type { ReadContext, RowReader } from "../reading/log-shape.ts";
import { readLog } from "../reading/read-log.ts";
import { type Report, refuse } from "../reading/report.ts";
import { camelCase, snakeCase } from "../strips/patch-columns.ts";
import type { RemakesDay } from "./log-rows.ts";

/** What the reader of a remakes log may be told. */
export interface RemakesLogOptions extends LogOptions {
  /** Reasons the log must have, `["tooBright", "tooDim"]`; without them those of its header. */
  readonly reasons?: readonly string[];
}

const PRINTS: NumberKind = { what: "count", min: 0, max: Number.MAX_SAFE_INTEGER, whole: true };
const PREFIX = "remade_";

/**
 * Reads a remakes log: one row a day, with the prints made and how many were made again by reason.
 *
 * Columns `date`, `prints_made`, and one for each reason: `remade_too_bright` is the reason
 * `tooBright`. All are whole numbers, 0 or more (a 0 is written, not left empty), and a day's
 * remakes are together at most its prints.
 *
 * @param text the file's text; commas, semicolons or tabs; a byte order mark and any line ends
 * @param options the file's name, and what to check the rows against
 * @returns the good days, everything wrong by line and column, and warnings
 * @throws InputError if `text` is not a string or an option cannot be meant; never for a bad file
 *
 * @example
 * parseRemakesLog("date,prints_made,remade_too_bright,remade_unsharp\n2026-08-14,1210,9,2", { file: "remakes.csv" }).rows[0].remade // => { tooBright: 9, unsharp: 2 }
 */
export function parseRemakesLog(text: string, options: RemakesLogOptions): ParsedLog<RemakesDay> {
  requireObject("parseRemakesLog", "options", options, "an object with file");
  const stated = (options.reasons ?? []).map((reason) => PREFIX + snakeCase(reason));
  return readLog<RemakesDay>(text, options, {
    where: "parseRemakesLog",
    timeColumn: "date",
    timeOf: (row) => row.date,
    seriesOf: () => "",
    twice: "one day twice",
    twiceAdvice: "add the two and write one row",
    needs: (headers) => {
      const reasons = headers.filter((header) => header.startsWith(PREFIX));
      const wanted = [...new Set([...reasons, ...stated])];
      const some = wanted.length === 0 ? [`${PREFIX}too_bright`, `${PREFIX}too_dim`] : wanted;
      return { required: ["date", "prints_made", ...some], optional: [] };
    },
    rowReader: dayReader,
  });
}

function dayReader(columns: Columns, report: Report, context: ReadContext): RowReader<RemakesDay> {
  const made = columns.get("prints_made");
  const dateOf = dayCell(columns.get("date"), report, context);
  const printsOf = numberCell(made, PRINTS, report, context);
  const reasons = columns.names
    .filter((name) => name.startsWith(PREFIX))
    .map((name) => ({
      reason: camelCase(name.slice(PREFIX.length)),
      read: numberCell(columns.get(name), PRINTS, report, context),
    }));
  return (cells) => {
    const date = dateOf(cells);
    const printsMade = printsOf(cells);
    const remade: Record<string, number> = {};
    let sum = 0;
    for (const { reason, read } of reasons) {
      const count = read(cells);
      remade[reason] = count;
      sum += count;
    }
    if (date === "" || Number.isNaN(printsMade + sum)) return undefined;
    if (sum > printsMade) {
      const problem = `${sum} remakes of ${printsMade} prints`;
      const advice = "correct the prints made or the remakes";
      return refuse(report, made.header, String(printsMade), problem, advice);
    }
    return { date, printsMade, remade, source: { file: report.file, line: report.line } };
  };
}
