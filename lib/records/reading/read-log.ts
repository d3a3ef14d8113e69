import { InputError } from "../../input/index.ts";
import { isDay } from "../cells/calendar.ts";
import { plainLines } from "./csv-rows.ts";
import { keepOrder } from "./keep-order.ts";
import type { LogOptions, ParsedLog } from "./log-problem.ts";
import type { LogShape, SourcedRow } from "./log-shape.ts";
import { foreignFile } from "./not-a-csv.ts";
import { readRows } from "./read-rows.ts";
import { newReport, refuse, WHOLE_ROW } from "./report.ts";

/** Reads any log: one pass over the text, every fault reported, every good row kept. */
export function readLog<Row extends SourcedRow>(
  text: string,
  options: LogOptions,
  shape: LogShape<Row>,
): ParsedLog<Row> {
  checkArguments(shape.where, text, options);
  const report = newReport(options.file);
  const warnings: string[] = [];
  const { problems } = report;
  const foreign = foreignFile(text);
  if (foreign !== undefined) {
    refuse(report, WHOLE_ROW, "", foreign.problem, foreign.advice);
    return { file: options.file, rows: [], problems, warnings, rowsRead: 0, rowsRefused: 0 };
  }
  const read = readRows(plainLines(text), options, shape, report, warnings);
  if (read.rowsRead === 0 && problems.length === 0) {
    report.line = read.headerLine;
    refuse(report, WHOLE_ROW, "", "the file holds a header and no rows", "add one line a reading");
  }
  const rows = keepOrder(read.rows, { ...shape, timeColumn: read.timeHeader }, report, warnings);
  problems.sort((a, b) => a.line - b.line);
  const rowsRefused = read.rowsRead - rows.length;
  return { file: options.file, rows, problems, warnings, rowsRead: read.rowsRead, rowsRefused };
}

function checkArguments(where: string, text: unknown, options: LogOptions): void {
  if (typeof text !== "string") {
    throw new InputError(where, "text", text, "pass the text of the file, a string");
  }
  if (typeof options?.file !== "string" || options.file.trim() === "") {
    throw new InputError(
      where,
      "file",
      options?.file,
      'name the file: { file: "film-strips.csv" }',
    );
  }
  if (options.today !== undefined && !isDay(options.today)) {
    throw new InputError(where, "today", options.today, 'write a day: "2026-08-14"');
  }
}
