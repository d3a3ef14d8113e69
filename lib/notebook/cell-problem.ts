/** Something wrong in a notebook, with the place where it is. */
export interface CellProblem {
  /** Number of the code cell, as Jupyter prints it in brackets once all have run. */
  readonly cell: number;
  /** Heading the cell stands under, or its first line of code. */
  readonly title: string;
  /** Line in the cell, from 1; 0 if the whole cell is meant. */
  readonly line: number;
  /** The line itself. */
  readonly code: string;
  readonly message: string;
}

/** A notebook that could not be run: which cells and lines, and what to write instead. */
export class NotebookError extends Error {
  readonly file: string;
  readonly problems: readonly CellProblem[];
  /** Stack of the cell's own error, for those who ask for it. */
  readonly trace: string | undefined;

  constructor(
    file: string,
    what: "cannot be run" | "stopped" | "has faults",
    problems: readonly CellProblem[],
    trace?: string,
  ) {
    super(`${file} ${what}\n${problems.map(problemText).join("\n")}`);
    this.name = "NotebookError";
    this.file = file;
    this.problems = problems;
    this.trace = trace;
  }
}

/** One problem as two or three lines of text. */
export function problemText(problem: CellProblem): string {
  const { cell, title, line, code, message } = problem;
  const place = line > 0 ? `, line ${line}` : "";
  const where = cell > 0 ? `  cell ${cell} (${title})${place}` : `  ${title}${place}`;
  const shownCode = line > 0 && code.trim() !== "" ? [`    ${code.trim()}`] : [];
  return [where, ...shownCode, `  ${message.replaceAll("\n", "\n  ")}`].join("\n");
}
