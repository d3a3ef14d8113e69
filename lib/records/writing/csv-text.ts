import Papa from "papaparse";

/** A CSV text of a header and rows: commas, `\n` after every line, quotes only where needed. */
export function csvText(
  header: readonly string[],
  rows: readonly (readonly (string | number)[])[],
): string {
  return `${Papa.unparse([[...header], ...rows.map((row) => [...row])], { newline: "\n" })}\n`;
}
