import type { LogProblem, ParsedLog } from "./log-problem.ts";

/** What `problemMessage` looks at. */
export type ProblemLog = Pick<ParsedLog<unknown>, "file" | "problems" | "rowsRead" | "rowsRefused">;

const LONGEST_VALUE = 60;

/**
 * Everything that is wrong with a log in one readable message: a line that counts, then one line
 * for each problem with file line, column, value, what is wrong and what to write instead.
 *
 * @param log what a reader of logs returned
 * @param most how many problems to list, 1 or more; by default 20. The count is always of all.
 * @returns the message, lines joined by `\n`; `""` if nothing is wrong
 *
 * @example
 * problemMessage({ file: "pumps.csv", rowsRead: 9, rowsRefused: 1, problems: [{ file: "pumps.csv", line: 4, column: "counter_strokes", value: "1.2.3", problem: "more than one decimal point", advice: "write one decimal point", rowUsed: false }] }) // => "pumps.csv: 1 problem; 1 of 9 rows cannot be used\n  line 4, counter_strokes \"1.2.3\": more than one decimal point; write one decimal point"
 */
export function problemMessage(log: ProblemLog, most = 20): string {
  const { file, problems, rowsRead, rowsRefused } = log;
  if (problems.length === 0) return "";
  const count = problems.length === 1 ? "1 problem" : `${problems.length} problems`;
  const rows = rowsRead === 0 ? "" : `; ${rowsRefused} of ${rowsRead} rows cannot be used`;
  const shown = problems.slice(0, Math.max(1, most)).map((each) => problemLine(each, file));
  const more = problems.length - shown.length;
  if (more > 0) shown.push(`  … and ${more} more`);
  return [`${file}: ${count}${rows}`, ...shown].join("\n");
}

function problemLine(found: LogProblem, log: string): string {
  const { file, line, column, value, problem, advice } = found;
  const cell = value.length > LONGEST_VALUE ? `${value.slice(0, LONGEST_VALUE - 1)}…` : value;
  const quoted = value === "" ? "" : ` ${JSON.stringify(cell)}`;
  const where = column === "" ? quoted : `, ${column}${quoted}`;
  const place = file === log ? "line" : `${file}, line`;
  return `  ${place} ${line}${where}: ${problem}; ${advice}`;
}
