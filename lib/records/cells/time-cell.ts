import type { ReadContext } from "../reading/log-shape.ts";
import { type Report, refuse } from "../reading/report.ts";
import type { Column, Columns } from "./columns.ts";
import { clockFault, dayFault } from "./time-fault.ts";

/** Gives a local time or day as ISO 8601 text, or `""` for a cell it has reported. */
export type TimeCell = (cells: readonly string[]) => string;

const MINUTE = /^(\d{4}-\d{2}-\d{2})[T ](\d{2}:\d{2})(?::00)?$/;

/** Builds the reader of a column of days: `2026-08-14`. */
export function dayCell(column: Column, report: Report, context: ReadContext): TimeCell {
  const { index, header } = column;
  let lastCell = "";
  let lastDay = "";
  return (cells) => {
    const cell = cells[index] ?? "";
    if (cell === lastCell && lastDay !== "") return lastDay;
    const text = cell.trim();
    const fault = dayFault(text, context.today);
    if (fault !== undefined) {
      refuse(report, header, cell, fault.problem, fault.advice);
      return "";
    }
    lastCell = cell;
    lastDay = text;
    return text;
  };
}

/** Builds the reader of a column of times to the minute: `2026-08-14T07:10`, T or one blank. */
export function minuteCell(column: Column, report: Report, context: ReadContext): TimeCell {
  const { index, header } = column;
  let goodDay = "";
  return (cells) => {
    const cell = cells[index] ?? "";
    const match = MINUTE.exec(cell.trim());
    const day = match?.[1] ?? "";
    const clock = match?.[2] ?? "";
    const fault =
      match === null
        ? clockFault(cell.trim(), undefined)
        : ((day === goodDay ? undefined : dayFault(day, context.today)) ??
          clockFault(cell.trim(), clock));
    if (fault === undefined) {
      goodDay = day;
      return `${day}T${clock}`;
    }
    refuse(report, header, cell, fault.problem, fault.advice);
    return "";
  };
}

/**
 * Builds the reader of a time to the minute from one column, or from the columns `date` and `time`
 * if the file keeps them apart.
 */
export function momentCell(
  columns: Columns,
  name: string,
  report: Report,
  context: ReadContext,
): TimeCell {
  const one = columns.find(name);
  if (one !== undefined) return minuteCell(one, report, context);
  const day = dayCell(columns.get("date"), report, context);
  const { index, header } = columns.get("time");
  return (cells) => {
    const date = day(cells);
    const cell = cells[index] ?? "";
    const text = cell.trim();
    const clock = /^(\d{2}:\d{2})(?::00)?$/.exec(text)?.[1];
    const fault = clockFault(text, clock);
    if (fault !== undefined) refuse(report, header, cell, fault.problem, fault.advice);
    return fault === undefined && date !== "" ? `${date}T${clock}` : "";
  };
}

/** The columns a moment needs: one, or `date` and `time` if the header has those instead. */
export function momentColumns(name: string, headers: readonly string[]): readonly string[] {
  const apart = headers.includes("date") && headers.includes("time") && !headers.includes(name);
  return apart ? ["date", "time"] : [name];
}
