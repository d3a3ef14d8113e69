import { requireEntries } from "../../input/index.ts";
import type { LineCheck, WorkEntry } from "../logs/log-rows.ts";
import { csvText } from "./csv-text.ts";
import { plainNumber } from "./plain-number.ts";

/**
 * Writes a check log that `parseCheckLog` reads back to the same rows.
 *
 * @param rows any rows
 * @returns the CSV text
 *
 * @example
 * formatCheckLog([{ readAt: "2026-08-14T07:04", line: "film", check: "developer-time", value: 195.4 }]) // => "read_at,line,check,value\n2026-08-14T07:04,film,developer-time,195.4\n"
 */
export function formatCheckLog(rows: readonly LineCheck[]): string {
  requireEntries("formatCheckLog", "rows", rows);
  const cells = rows.map(({ readAt, line, check, value }) => [
    readAt,
    line,
    check,
    plainNumber(value),
  ]);
  return csvText(["read_at", "line", "check", "value"], cells);
}

/**
 * Writes a work log that `parseWorkLog` reads back to the same rows.
 *
 * @param rows any rows
 * @returns the CSV text
 *
 * @example
 * formatWorkLog([{ doneAt: "2026-08-14T06:40", line: "film", work: "fixer-handled" }]) // => "done_at,line,work\n2026-08-14T06:40,film,fixer-handled\n"
 */
export function formatWorkLog(rows: readonly WorkEntry[]): string {
  requireEntries("formatWorkLog", "rows", rows);
  const cells = rows.map(({ doneAt, line, work }) => [doneAt, line, work]);
  return csvText(["done_at", "line", "work"], cells);
}
