import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import { displayedAs } from "./figure.ts";
import { requireFiniteValues } from "./finite-values.ts";
import { escapeHtml, tableHtml, tableText } from "./table-markup.ts";

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
  /** Sentences below the table. */
  readonly notes: readonly string[];
}

/** What a table is made with. */
export interface TableOptions {
  readonly columns: readonly TableColumn[];
  readonly caption: string;
  /** The sentence that is shown in the table's place if it has no rows. */
  readonly ifEmpty?: string;
  /** Sentences to be shown below it. */
  readonly notes?: readonly string[];
}

/**
 * A table of rows for a notebook, a page and plain text.
 *
 * @param rows plain objects; a value that is missing prints as a dash
 * @param options.columns which fields, in which order, with heading, unit and digits
 * @param options.caption what the table shows; required
 * @param options.ifEmpty the sentence shown instead of a table without rows
 * @param options.notes sentences shown below
 * @returns plain JSON-safe object; shows itself as HTML (escaped) and as aligned plain text
 * @throws InputError for a missing caption or columns, or a field that no row has
 *
 * @example
 * table([{ bath: "developer", temperatureC: 37.8 }], { caption: "Baths", columns: [{ field: "bath", heading: "Bath" }] }).kind // => "table"
 */
export function table<Row extends object>(rows: readonly Row[], options: TableOptions): Table {
  requireEntries("table", "rows", rows);
  requireObject("table", "options", options, "an object with columns and caption");
  const { columns, caption, ifEmpty, notes = [] } = options;
  if (typeof caption !== "string" || caption.trim() === "") {
    throw new InputError("table", "caption", caption, "write in words what the table shows");
  }
  if (!Array.isArray(columns) || columns.length === 0) {
    throw new InputError("table", "columns", columns, "write at least one column");
  }
  requireFiniteValues("table", "rows", rows);
  const known = new Set(rows.flatMap((row) => Object.keys(row)));
  for (const { field } of columns) {
    if (rows.length === 0 || known.has(field)) continue;
    const advice = `write a field that the rows have: ${[...known].join(", ")}`;
    throw new InputError("table", "columns.field", field, advice);
  }
  const plainRows = rows.map((row) => ({ ...row }) as { readonly [field: string]: unknown });
  const result: Table = { kind: "table", caption, columns, rows: plainRows, notes };
  const below = notes.map((note) => `<p>${escapeHtml(note)}</p>`);
  const empty = rows.length === 0 && ifEmpty !== undefined;
  const html = empty ? `<p>${escapeHtml(ifEmpty)}</p>` : tableHtml(result);
  const text = empty ? ifEmpty : tableText(result);
  return displayedAs(result, {
    "text/html": [html, ...below].join("\n"),
    "text/plain": [text, ...notes].join("\n\n"),
  });
}
