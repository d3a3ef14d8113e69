import type { LogProblem } from "./log-problem.ts";

/** Collects what is wrong while a file is read; `line` is the row being read. */
export interface Report {
  readonly file: string;
  readonly problems: LogProblem[];
  line: number;
}

export const WHOLE_ROW = "";

export function newReport(file: string): Report {
  return { file, problems: [], line: 1 };
}

/** Reports something for which the row, or the file, cannot be used. */
export function refuse(
  report: Report,
  column: string,
  value: string,
  problem: string,
  advice: string,
): undefined {
  const { file, line } = report;
  report.problems.push({ file, line, column, value, problem, advice, rowUsed: false });
}

/** Reports something wrong with a row that stays usable. */
export function remark(
  report: Report,
  line: number,
  column: string,
  value: string,
  problem: string,
  advice: string,
): void {
  report.problems.push({ file: report.file, line, column, value, problem, advice, rowUsed: true });
}
