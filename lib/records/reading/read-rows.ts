import { closestWord, InputError } from "../../input/index.ts";
import { type ColumnNeeds, matchColumns, plainHeader } from "../cells/columns.ts";
import { eachCsvRow } from "./csv-rows.ts";
import type { LogOptions } from "./log-problem.ts";
import type { LogShape, RowReader, SourcedRow } from "./log-shape.ts";
import { type Report, refuse, WHOLE_ROW } from "./report.ts";
import { filledWidth, isBlank, raggedRow } from "./row-width.ts";
import { separatorIn, separatorName } from "./separator.ts";

const BROKEN_ADVICE = 'close every cell that opens with ", and write a " inside it twice';

/** The rows of a file as it holds them. */
interface RowsRead<Row> {
  readonly rows: readonly Row[];
  readonly rowsRead: number;
  readonly headerLine: number;
  /** What the file calls the column of times. */
  readonly timeHeader: string;
}

/** Reads the header, then every row under it. */
export function readRows<Row extends SourcedRow>(
  text: string,
  options: LogOptions,
  shape: LogShape<Row>,
  report: Report,
  warnings: string[],
): RowsRead<Row> {
  const { file, decimalComma = false, today, columns: renamed = {} } = options;
  const separator = separatorIn(text);
  if (separator !== ",") {
    warnings.push(`${file}: cells are separated by ${separatorName(separator)}, not commas`);
  }
  const context = { separator, decimalComma, today };
  const rows: Row[] = [];
  const hollow: number[] = [];
  let rowsRead = 0;
  let width = 0;
  let headerLine = 1;
  let timeHeader = shape.timeColumn;
  let read: RowReader<Row> | undefined;

  const readHeader = (cells: readonly string[]): void => {
    width = filledWidth(cells);
    headerLine = report.line;
    const headers = cells.slice(0, width).map((cell) => ourName(cell, renamed));
    const needs = shape.needs(headers);
    checkRenamed(shape.where, renamed, needs);
    const columns = matchColumns(cells, headers, needs, report, warnings);
    if (columns === undefined) return;
    timeHeader = (columns.find(shape.timeColumn) ?? columns.find("date"))?.header ?? timeHeader;
    read = shape.rowReader(columns, report, context);
  };

  eachCsvRow(
    text,
    separator,
    (cells, line) => {
      report.line = line;
      if (isBlank(cells)) {
        if (cells.length > 1) hollow.push(line);
      } else if (width === 0) {
        if (line !== 1 || !isSeparatorLine(cells)) readHeader(cells);
      } else {
        rowsRead += 1;
        if (read === undefined) return;
        if (cells.length !== width && raggedRow(cells, width, report, context)) return;
        const row = read(cells);
        if (row !== undefined) rows.push(row);
      }
    },
    (broken, line) => {
      report.line = line;
      refuse(report, WHOLE_ROW, broken, "the quotation marks do not pair", BROKEN_ADVICE);
      if (width > 0) rowsRead += 1;
      else width = Number.POSITIVE_INFINITY;
    },
  );
  if (hollow.length > 0) {
    const lines = hollow.slice(0, 5).join(", ") + (hollow.length > 5 ? ", …" : "");
    const hold = hollow.length === 1 ? "1 line holds" : `${hollow.length} lines hold`;
    warnings.push(`${file}: ${hold} separators only (${lines})`);
  }
  return { rows, rowsRead, headerLine, timeHeader };
}

function isSeparatorLine(cells: readonly string[]): boolean {
  return /^sep=.?$/i.test(cells.join(""));
}

function ourName(header: string, renamed: Readonly<Record<string, string>>): string {
  const plain = plainHeader(header);
  for (const [ours, theirs] of Object.entries(renamed)) {
    if (plainHeader(theirs) === plain) return ours;
  }
  return plain;
}

function checkRenamed(
  where: string,
  renamed: Readonly<Record<string, string>>,
  { required, optional }: ColumnNeeds,
): void {
  const known = [...required, ...optional];
  for (const ours of Object.keys(renamed)) {
    if (known.includes(ours)) continue;
    const near = closestWord(ours, known);
    const meant = near === undefined ? "" : `; did you mean ${JSON.stringify(near)}?`;
    const advice = `use this log's column names: ${known.join(", ")}${meant}`;
    throw new InputError(where, "columns", ours, advice);
  }
}
