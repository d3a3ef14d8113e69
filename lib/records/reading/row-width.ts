import type { ReadContext } from "./log-shape.ts";
import { type Report, refuse, WHOLE_ROW } from "./report.ts";

/** Whether a row holds nothing but blanks. */
export function isBlank(cells: readonly string[]): boolean {
  for (const cell of cells) if (cell !== "" && cell.trim() !== "") return false;
  return true;
}

/** The number of cells up to the last one that is not blank. */
export function filledWidth(cells: readonly string[]): number {
  let width = cells.length;
  while (width > 0 && (cells[width - 1] ?? "").trim() === "") width -= 1;
  return width;
}

/**
 * Reports a row with fewer cells than the header, or with more that are not blank.
 *
 * @returns whether it was reported
 */
export function raggedRow(
  cells: readonly string[],
  width: number,
  report: Report,
  context: ReadContext,
): boolean {
  const filled = cells.length > width ? filledWidth(cells) : cells.length;
  if (cells.length > width && filled <= width) return false;
  const problem = `the row has ${filled} cells, the header ${width}`;
  refuse(report, WHOLE_ROW, cells.join(context.separator), problem, advice(filled, width, context));
  return true;
}

function advice(filled: number, width: number, { separator }: ReadContext): string {
  if (filled < width) return "write every cell, also at the end of the row";
  if (separator !== ",") return "take out the cells too many";
  return "write decimals with a point (0.32, not 0,32) and put a cell that holds a comma in quotation marks";
}
