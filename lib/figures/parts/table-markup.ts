import type { Table, TableColumn } from "./table.ts";

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

/** A table as HTML, escaped, with caption and scopes. */
export function tableHtml({ caption, columns, rows }: Table): string {
  const styles = columns.map((column) => `text-align:${alignment(column, rows)}`);
  const head = columns.map(
    (column, i) => `<th scope="col" style="${styles[i]}">${escapeHtml(heading(column))}</th>`,
  );
  const body = rows.map((row) => {
    const cells = columns.map((column, i) => {
      const text = escapeHtml(together(cellText(column, row[column.field])));
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

/** Keeps a number and its unit, and a clock time and its "+1" day, on one line. */
function together(text: string): string {
  return text.replace(/(?<=\d) (?=(?:°C|mL|L|g|%|min|s|h)(?!\w)|\+\d)/g, "\u00a0");
}

/** A table as aligned plain text. */
export function tableText({ caption, columns, rows }: Table): string {
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

/** Text as it stands in HTML. */
export function escapeHtml(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
