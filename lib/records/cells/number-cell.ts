import type { ReadContext } from "../reading/log-shape.ts";
import { type Report, refuse } from "../reading/report.ts";
import type { Column } from "./columns.ts";
import { type NumberKind, numberFault, rangeFault } from "./number-fault.ts";

const WITH_POINT = /^[+-]?(?:\d+(?:\.\d+)?|\.\d+)$/;
const WITH_COMMA = /^[+-]?(?:\d+(?:,\d+)?|,\d+)$/;
/** Different texts remembered per column: densities take some 450, counters no end. */
const REMEMBERED = 5000;

/**
 * Builds the reader of one column of numbers. It gives `NaN` for a cell it has reported.
 */
export function numberCell(
  column: Column,
  kind: NumberKind,
  report: Report,
  context: ReadContext,
): (cells: readonly string[]) => number {
  const { index, header } = column;
  const wellFormed = context.decimalComma ? WITH_COMMA : WITH_POINT;
  const known = new Map<string, number>();
  return (cells) => {
    const cell = cells[index] ?? "";
    const before = known.get(cell);
    if (before !== undefined) return before;
    const text = cell.trim();
    const value = wellFormed.test(text) ? Number(text.replace(",", ".")) : Number.NaN;
    const fault = Number.isNaN(value) ? numberFault(text, kind, context) : rangeFault(value, kind);
    if (fault !== undefined) {
      refuse(report, header, cell, fault.problem, fault.advice);
      return Number.NaN;
    }
    if (known.size < REMEMBERED) known.set(cell, value);
    return value;
  };
}

/** As `numberCell`, but an empty cell is allowed and gives `undefined`. */
export function optionalNumberCell(
  column: Column | undefined,
  kind: NumberKind,
  report: Report,
  context: ReadContext,
): (cells: readonly string[]) => number | undefined {
  if (column === undefined) return () => undefined;
  const read = numberCell(column, kind, report, context);
  return (cells) => ((cells[column.index] ?? "").trim() === "" ? undefined : read(cells));
}
