import type { ValidateFunction } from "ajv";
import schemaFile from "./nbformat-4.5.schema.json" with { type: "json" };
import type { Json } from "./notebook-file.ts";
import { optionalPackage } from "./optional-package.ts";

/**
 * What in a notebook's JSON does not follow the format, nbformat 4.5: one sentence for each fault,
 * with its place. Empty if all is well.
 */
export async function notebookFormatProblems(notebook: unknown): Promise<readonly string[]> {
  const { Ajv } = await optionalPackage("ajv", () => import("ajv"));
  // The schema is draft 4; it uses no keyword whose meaning changed by draft 7.
  const { $schema: _, ...schema } = schemaFile;
  const ajv = new Ajv({ allErrors: true, strict: false, schemas: { nbformat: schema } });
  const whole = ajv.getSchema("nbformat");
  if (whole === undefined) throw new Error("the notebook schema cannot be read");
  const repeated = repeatedIds(notebook);
  if (whole(notebook)) return repeated;
  const cells = cellsOf(notebook).flatMap((cell, i) => {
    const kind = typeof cell.cell_type === "string" ? cell.cell_type : "";
    const check = ajv.getSchema(`nbformat#/definitions/${kind}_cell`);
    if (check === undefined) return [`cell at place ${i + 1}: cell_type "${kind}" is not known`];
    return check(cell) ? [] : sentences(check, `cell at place ${i + 1}`);
  });
  const other = cells.length === 0 ? sentences(whole, "notebook") : [];
  return [...repeated, ...cells, ...other];
}

function sentences(check: ValidateFunction, place: string): readonly string[] {
  return (check.errors ?? []).map(({ instancePath, message, params }) => {
    const extra = "additionalProperty" in params ? `: "${params.additionalProperty}"` : "";
    return `${place}${instancePath === "" ? "" : ` at ${instancePath}`} ${message}${extra}`;
  });
}

function repeatedIds(notebook: unknown): readonly string[] {
  const seen = new Set<unknown>();
  return cellsOf(notebook).flatMap(({ id }, i) => {
    const again = id !== undefined && seen.has(id);
    seen.add(id);
    return again ? [`cell at place ${i + 1}: its id "${id}" stands twice in the notebook`] : [];
  });
}

function cellsOf(notebook: unknown): readonly Json[] {
  const cells = (notebook as { cells?: unknown } | null)?.cells;
  return Array.isArray(cells) ? cells.filter((cell) => typeof cell === "object" && cell) : [];
}
