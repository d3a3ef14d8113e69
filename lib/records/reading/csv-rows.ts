import Papa from "papaparse";
import type { Separator } from "./separator.ts";

/** Takes one row's cells and the line it starts on. */
export type RowVisitor = (cells: readonly string[], line: number) => void;
/** Takes a line whose quotation marks do not pair. */
export type BrokenVisitor = (text: string, line: number) => void;

/** How many lines a quoted cell may run over before its opening mark counts as a slip. */
export const LONGEST_CELL_LINES = 20;

/** Long files go through the parser in pieces of whole lines, to spare memory. */
const CHUNK_CHARACTERS = 100_000;

/** Text with one kind of line end and no byte order mark. */
export function plainLines(text: string): string {
  const body = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  return body.includes("\r") ? body.replace(/\r\n?/g, "\n") : body;
}

/**
 * Gives every row of a CSV text to `visit`, in one pass. A line whose quotation marks do not pair
 * goes to `broken` and swallows nothing: the lines after it are still read.
 */
export function eachCsvRow(
  text: string,
  separator: Separator,
  visit: RowVisitor,
  broken: BrokenVisitor,
): void {
  if (text.includes('"')) {
    eachQuotedRow(text, separator, visit, broken);
    return;
  }
  let line = 0;
  const step = ({ data }: { readonly data: string[] }): void => {
    line += 1;
    visit(data, line);
  };
  for (let start = 0; start < text.length; ) {
    const end = text.indexOf("\n", start + CHUNK_CHARACTERS);
    const stop = end < 0 ? text.length : end;
    Papa.parse<string[]>(text.slice(start, stop), { delimiter: separator, newline: "\n", step });
    start = stop + 1;
  }
}

function eachQuotedRow(
  text: string,
  separator: Separator,
  visit: RowVisitor,
  broken: BrokenVisitor,
): void {
  const lines = text.split("\n");
  const parse = (record: string): readonly string[] | undefined => {
    const { data, errors } = Papa.parse<string[]>(record, { delimiter: separator, newline: "\n" });
    return errors.length === 0 && data.length <= 1 ? (data[0] ?? [""]) : undefined;
  };
  for (let at = 0; at < lines.length; at++) {
    const first = lines[at] ?? "";
    let record = first;
    let cells = parse(record);
    let last = at;
    const furthest = Math.min(lines.length - 1, at + LONGEST_CELL_LINES - 1);
    while (cells === undefined && marks(record) % 2 === 1 && last < furthest) {
      last += 1;
      record += `\n${lines[last] ?? ""}`;
      cells = marks(record) % 2 === 0 ? parse(record) : undefined;
    }
    if (cells === undefined) broken(first, at + 1);
    else {
      visit(cells, at + 1);
      at = last;
    }
  }
}

function marks(text: string): number {
  let count = 0;
  for (let at = text.indexOf('"'); at >= 0; at = text.indexOf('"', at + 1)) count += 1;
  return count;
}
