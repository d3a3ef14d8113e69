import { requireEntries, requireObject } from "../../input/index.ts";
import type { LogProblem, ParsedLog } from "./log-problem.ts";

/** What `problemMessage` looks at. */
export type ProblemLog = Pick<ParsedLog<unknown>, "file" | "problems" | "rowsRead" | "rowsRefused">;

const LONGEST_VALUE = 60;
/** How many lines of one problem are named. */
const MOST_LINES = 6;

/**
 * Everything that is wrong with a log in one readable message: a line that counts, then one line
 * for each problem with file line, column, value, what is wrong and what to write instead. What is
 * wrong in the same way with the same value on several lines is told once, with those lines.
 *
 * @param log what a reader of logs returned
 * @param most how many different problems to list, 1 or more; by default 20. The count is always of
 * all.
 * @returns the message, lines joined by `\n`; `""` if nothing is wrong
 *
 * @example
 * problemMessage({ file: "pumps.csv", rowsRead: 9, rowsRefused: 1, problems: [{ file: "pumps.csv", line: 4, column: "counter_strokes", value: "1.2.3", problem: "more than one decimal point", advice: "write one decimal point", rowUsed: false }] }) // => "pumps.csv: 1 problem; 1 of 9 rows cannot be used\n  line 4, counter_strokes \"1.2.3\": more than one decimal point; write one decimal point"
 */
export function problemMessage(log: ProblemLog, most = 20): string {
  requireObject("problemMessage", "log", log, "an object with file, problems, rowsRead, …");
  requireEntries("problemMessage", "problems", log.problems);
  const { file, problems, rowsRead, rowsRefused } = log;
  if (problems.length === 0) return "";
  const count = problems.length === 1 ? "1 problem" : `${problems.length} problems`;
  const rows = rowsRead === 0 ? "" : `; ${rowsRefused} of ${rowsRead} rows cannot be used`;
  const kinds = [...sameProblems(problems).values()];
  const listed = kinds.slice(0, Math.max(1, most));
  const shown = listed.map((each) => problemLine(each, file));
  const more = problems.length - listed.reduce((sum, each) => sum + each.length, 0);
  if (more > 0) shown.push(`  … and ${more} more`);
  return [`${file}: ${count}${rows}`, ...shown].join("\n");
}

/** Problems that differ in nothing but their line, in the order of their first lines. */
function sameProblems(problems: readonly LogProblem[]): Map<string, [LogProblem, ...LogProblem[]]> {
  const kinds = new Map<string, [LogProblem, ...LogProblem[]]>();
  for (const each of problems) {
    const { line: _, ...rest } = each;
    const kind = JSON.stringify(rest);
    const known = kinds.get(kind);
    if (known === undefined) kinds.set(kind, [each]);
    else known.push(each);
  }
  return kinds;
}

function problemLine(found: readonly [LogProblem, ...LogProblem[]], log: string): string {
  const { file, column, value, problem, advice } = found[0];
  const cell = value.length > LONGEST_VALUE ? `${value.slice(0, LONGEST_VALUE - 1)}…` : value;
  const quoted = value === "" ? "" : ` ${JSON.stringify(cell)}`;
  const where = column === "" ? quoted : `, ${column}${quoted}`;
  const place = file === log ? "" : `${file}, `;
  return `  ${place}${lineWords(found.map((each) => each.line))}${where}: ${problem}; ${advice}`;
}

/** `line 7`, `lines 7 and 9`, `lines 2 to 17`, `lines 2, 5, 9 and 13 more`. */
function lineWords(lines: readonly number[]): string {
  const [first = 1, second] = lines;
  const last = lines.at(-1) ?? first;
  if (second === undefined) return `line ${first}`;
  if (lines.length > 2 && last - first === lines.length - 1) return `lines ${first} to ${last}`;
  if (lines.length <= MOST_LINES) return `lines ${lines.slice(0, -1).join(", ")} and ${last}`;
  const named = lines.slice(0, MOST_LINES - 1);
  return `lines ${named.join(", ")} and ${lines.length - named.length} more`;
}
