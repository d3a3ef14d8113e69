import { closestWord } from "../../input/index.ts";
import { type Report, refuse } from "../reading/report.ts";

/** One column as found: where it stands and what the file calls it. */
export interface Column {
  readonly index: number;
  readonly header: string;
}

/** The columns of a file, by our names. */
export interface Columns {
  /** All headers of the file, in our spelling. */
  readonly names: readonly string[];
  /** Headers that nobody asked for, as the file writes them. */
  readonly strangers: readonly string[];
  /** A column that the shape requires. */
  readonly get: (name: string) => Column;
  /** A column that may be missing. */
  readonly find: (name: string) => Column | undefined;
}

/** Which columns a log must and may have, by our names. */
export interface ColumnNeeds {
  readonly required: readonly string[];
  readonly optional: readonly string[];
}

/** A header in our spelling: small letters, words joined by underscores. */
export function plainHeader(header: string): string {
  return header
    .trim()
    .toLowerCase()
    .replace(/[\s\-.]+/g, "_");
}

/**
 * Finds the columns of a log in the header row. Every missing and every doubled column is reported;
 * a column nobody asked for becomes a warning.
 *
 * @returns the columns, or `undefined` if the rows cannot be read
 */
export function matchColumns(
  cells: readonly string[],
  headers: readonly string[],
  needs: ColumnNeeds,
  report: Report,
  warnings: string[],
): Columns | undefined {
  const found = new Map<string, Column>();
  const known = new Set([...needs.required, ...needs.optional]);
  const strangers: string[] = [];
  let usable = true;
  headers.forEach((name, index) => {
    const header = (cells[index] ?? "").trim();
    if (!known.has(name)) strangers.push(header === "" ? `(column ${index + 1})` : header);
    else if (found.has(name)) {
      usable = false;
      refuse(report, header, header, "the column stands twice in the header", "keep one of them");
    } else found.set(name, { index, header });
  });
  const missing = needs.required.filter((name) => !found.has(name));
  const columns = columnsOf(found, headers, strangers);
  if (missing.length > 0) {
    if (found.size === 0) reportNoHeader(missing, cells, report);
    else reportMissing(missing, report.line, columns, report);
  }
  if (strangers.length > 0) {
    warnings.push(`${report.file}: columns not used: ${strangers.map(quoted).join(", ")}`);
  }
  return usable && missing.length === 0 ? columns : undefined;
}

/** Reports a first line that holds none of the log's columns: a title, a reading, another text. */
function reportNoHeader(
  missing: readonly string[],
  cells: readonly string[],
  report: Report,
): void {
  const first = missing[0] ?? "";
  const problem = "this should be the header, and none of the log's columns is in it";
  const advice = `write the header as the first line, with no title above it: ${missing.join(",")}; or, if the file's columns are called otherwise, pass columns: { ${first}: "…" }`;
  refuse(report, "", cells.join(","), problem, advice);
}

/** Reports columns that a log needs and its header, on the line given, has not. */
export function reportMissing(
  missing: readonly string[],
  headerLine: number,
  { strangers }: Columns,
  report: Report,
): void {
  for (const name of missing) {
    const near = closestWord(name, strangers.map(plainHeader));
    const meant = strangers.find((header) => plainHeader(header) === near);
    report.problems.push({
      file: report.file,
      line: headerLine,
      column: name,
      value: "",
      problem: "the column is missing",
      advice: missingAdvice(name, meant, strangers),
      rowUsed: false,
    });
  }
}

function missingAdvice(
  name: string,
  meant: string | undefined,
  strangers: readonly string[],
): string {
  if (meant !== undefined && /_c$/.test(name) && /_f$|fahrenheit/.test(plainHeader(meant))) {
    return `${quoted(meant)} seems to be in °F: turn its readings into °C, (°F − 32) / 1.8, and call the column ${quoted(name)}`;
  }
  if (meant !== undefined) {
    return `rename the column ${quoted(meant)} if that is it, or pass columns: { ${name}: ${quoted(meant)} }`;
  }
  const add = `add a column ${quoted(name)} to the header and every row`;
  if (strangers.length === 0) return add;
  const unused = strangers.map(quoted).join(", ");
  return `${add}, or pass columns: { ${name}: "…" } if it is one of those not used (${unused})`;
}

function columnsOf(
  found: ReadonlyMap<string, Column>,
  names: readonly string[],
  strangers: readonly string[],
): Columns {
  return {
    names,
    strangers,
    find: (name) => found.get(name),
    get: (name) => {
      const column = found.get(name);
      if (column === undefined) throw new Error(`the shape of the log forgot to require ${name}`);
      return column;
    },
  };
}

function quoted(text: string): string {
  return JSON.stringify(text);
}
