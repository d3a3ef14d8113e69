import { InputError } from "../input/index.ts";
import { displayedAs } from "./figure.ts";

/** One column of a table. */
export interface TableColumn {
  /** Key of the row object. */
  readonly field: string;
  readonly heading: string;
  /** Unit, printed once in the heading. */
  readonly unit?: string;
  /** Digits after the point, for numbers; without it numbers are printed as they are. */
  readonly digits?: number;
  /** Numbers print their plus sign, as deviations do. */
  readonly signed?: boolean;
  /** Numbers stand right and words left unless said otherwise. */
  readonly align?: "left" | "right";
}

/** A table that shows itself in a notebook; rows and columns stay plain data. */
export interface Table {
  readonly kind: "table";
  readonly caption: string;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly { readonly [field: string]: unknown }[];
}

/**
 * A table of rows for a notebook, a page and plain text.
 *
 * @param rows plain objects; a value that is missing prints as a dash
 * @param options.columns which fields, in which order, with heading, unit and digits
 * @param options.caption what the table shows; required
 * @returns plain JSON-safe object; shows itself as HTML (escaped) and as aligned plain text
 * @throws InputError for a missing caption or columns, or a field that no row has
 *
 * @example
 * table([{ bath: "developer", temperatureC: 37.8 }], { caption: "Baths", columns: [{ field: "bath", heading: "Bath" }] }).kind // => "table"
 */
export function table<Row extends object>(
  rows: readonly Row[],
  options: { readonly columns: readonly TableColumn[]; readonly caption: string },
): Table {
  const { columns, caption } = options;
  if (typeof caption !== "string" || caption.trim() === "") {
    throw new InputError("table", "caption", caption, "write in words what the table shows");
  }
  if (!Array.isArray(columns) || columns.length === 0) {
    throw new InputError("table", "columns", columns, "write at least one column");
  }
  const known = new Set(rows.flatMap((row) => Object.keys(row)));
  for (const { field } of columns) {
    if (rows.length === 0 || known.has(field)) continue;
    const advice = `write a field that the rows have: ${[...known].join(", ")}`;
    throw new InputError("table", "columns.field", field, advice);
  }
  const plainRows = rows.map((row) => ({ ...row }) as { readonly [field: string]: unknown });
  const result: Table = { kind: "table", caption, columns, rows: plainRows };
  return displayedAs(result, { "text/html": toHtml(result), "text/plain": toText(result) });
}

function cellText(column: TableColumn, value: unknown): string {
  if (value === undefined || value === null || value === "") return "–";
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value !== "number") return String(value);
  if (!Number.isFinite(value)) return "–";
  const digits =
    column.digits === undefined ? String(Math.abs(value)) : Math.abs(value).toFixed(column.digits);
  const zero = Number(digits) === 0;
  const sign = value < 0 && !zero ? "−" : column.signed && !zero ? "+" : "";
  return `${sign}${digits}`;
}

function heading(column: TableColumn): string {
  return column.unit === undefined ? column.heading : `${column.heading} (${column.unit})`;
}

function alignment(column: TableColumn, rows: Table["rows"]): "left" | "right" {
  if (column.align !== undefined) return column.align;
  const values = rows
    .map((row) => row[column.field])
    .filter((value) => value !== undefined && value !== null);
  return values.length > 0 && values.every((value) => typeof value === "number") ? "right" : "left";
}

function toHtml({ caption, columns, rows }: Table): string {
  const styles = columns.map((column) => `text-align:${alignment(column, rows)}`);
  const head = columns.map(
    (column, i) => `<th scope="col" style="${styles[i]}">${escapeHtml(heading(column))}</th>`,
  );
  const body = rows.map((row) => {
    const cells = columns.map((column, i) => {
      const text = escapeHtml(cellText(column, row[column.field]));
      const style = `style="${styles[i]};font-variant-numeric:tabular-nums"`;
      return i === 0 && alignment(column, rows) === "left"
        ? `<th scope="row" style="text-align:left;font-weight:normal">${text}</th>`
        : `<td ${style}>${text}</td>`;
    });
    return `<tr>${cells.join("")}</tr>`;
  });
  return [
    "<table>",
    `<caption>${escapeHtml(caption)}</caption>`,
    `<thead><tr>${head.join("")}</tr></thead>`,
    `<tbody>${body.join("\n")}</tbody>`,
    "</table>",
  ].join("\n");
}

function toText({ caption, columns, rows }: Table): string {
  const cells = [
    columns.map(heading),
    ...rows.map((row) => columns.map((column) => cellText(column, row[column.field]))),
  ];
  const widths = columns.map((_, i) =>
    Math.max(...cells.map((line) => [...(line[i] ?? "")].length)),
  );
  const lines = cells.map((line) =>
    line
      .map((text, i) => {
        const column = columns[i];
        const space = " ".repeat((widths[i] ?? 0) - [...text].length);
        return column && alignment(column, rows) === "right" ? space + text : text + space;
      })
      .join("  ")
      .trimEnd(),
  );
  const rule = widths.map((width) => "-".repeat(width)).join("  ");
  return [caption, "", lines[0], rule, ...lines.slice(1)].join("\n");
}

function escapeHtml(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
