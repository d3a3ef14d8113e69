import type { DisplayBundle } from "../figures/index.ts";
import { escapeHtml } from "./escape-html.ts";
import { numberText } from "./inspect-value.ts";

const MOST_ROWS = 60;
type Cells = readonly unknown[];

interface FrameLike {
  readonly columns: readonly (string | number)[];
  readonly index: readonly (string | number)[];
  readonly values: readonly Cells[];
}

/** True for a danfo.js DataFrame, told by what it has and not by its class. */
export function isFrame(value: unknown): value is FrameLike {
  return hasFrameParts(value) && !value.$isSeries;
}

/** True for a danfo.js Series, told by what it has and not by its class. */
export function isSeries(value: unknown): value is FrameLike {
  return hasFrameParts(value) && value.$isSeries;
}

function hasFrameParts(value: unknown): value is FrameLike & { readonly $isSeries: boolean } {
  if (typeof value !== "object" || value === null || !("$isSeries" in value)) return false;
  const { columns, index, values } = value as Partial<FrameLike>;
  return Array.isArray(columns) && Array.isArray(index) && Array.isArray(values);
}

/** A data frame as an HTML table and as aligned text; long frames show both ends. */
export function showFrame(frame: FrameLike): DisplayBundle {
  return tableOf(["", ...frame.columns], frame.index, frame.values);
}

/** A series as a table of one column. */
export function showSeries(series: FrameLike): DisplayBundle {
  const values = (series.values as readonly unknown[]).map((value) => [value]);
  return tableOf(["", ...series.columns], series.index, values);
}

function tableOf(
  heading: Cells,
  index: readonly (string | number)[],
  values: readonly Cells[],
): DisplayBundle {
  const all = values.map((row, i) => [index[i] ?? i, ...row].map(cellText));
  const half = MOST_ROWS / 2;
  const gap = heading.map(() => "…");
  const rows =
    all.length <= MOST_ROWS ? all : [...all.slice(0, half), gap, ...all.slice(all.length - half)];
  const head = heading.map(String);
  const right = head.map((_, c) => values.every((row) => c > 0 && isNumeric(row[c - 1])));
  const note = rows.length === all.length ? "" : `${all.length} rows`;
  return {
    "text/html": html(head, rows, right, note),
    "text/plain": plain(head, rows, right, note),
  };
}

function isNumeric(value: unknown): boolean {
  return typeof value === "number" || value === null || value === undefined;
}

function cellText(value: unknown): string {
  if (typeof value === "number") return Number.isNaN(value) ? "–" : numberText(value);
  return value === null || value === undefined ? "–" : String(value);
}

function html(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  right: readonly (boolean | undefined)[],
  note: string,
): string {
  const style = (c: number) => ` style="text-align:${right[c] ? "right" : "left"}"`;
  const headCells = head.map((text, c) => `<th scope="col"${style(c)}>${escapeHtml(text)}</th>`);
  const lines = rows.map((row) => {
    const cells = row.map((text, c) =>
      c === 0
        ? `<th scope="row"${style(c)}>${escapeHtml(text)}</th>`
        : `<td${style(c)}>${escapeHtml(text)}</td>`,
    );
    return `<tr>${cells.join("")}</tr>`;
  });
  const caption = note === "" ? [] : [`<caption>${note}</caption>`];
  return [
    "<table>",
    ...caption,
    `<thead><tr>${headCells.join("")}</tr></thead>`,
    "<tbody>",
    ...lines,
    "</tbody>",
    "</table>",
  ].join("\n");
}

function plain(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  right: readonly (boolean | undefined)[],
  note: string,
): string {
  const lines = [head, ...rows];
  const widths = head.map((_, c) => Math.max(...lines.map((line) => (line[c] ?? "").length)));
  const texts = lines.map((line) =>
    line
      .map((text, c) => (right[c] ? text.padStart(widths[c] ?? 0) : text.padEnd(widths[c] ?? 0)))
      .join("  ")
      .trimEnd(),
  );
  return [...texts, ...(note === "" ? [] : ["", note])].join("\n");
}
