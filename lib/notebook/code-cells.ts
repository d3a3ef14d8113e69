import type { Comment, Program } from "oxc-parser";
import type { CellProblem } from "./cell-problem.ts";
import { type Cell, type Notebook, tagsOf } from "./notebook-file.ts";
import { optionalPackage } from "./optional-package.ts";

/** A code cell taken apart. */
export interface CodeCell {
  /** Index among all cells of the notebook. */
  readonly index: number;
  /**
   * Number among the code cells that hold code: Jupyter's `[n]`. An `injected-parameters` cell has
   * 0, so that the others keep the numbers they have without it.
   */
  readonly number: number;
  readonly title: string;
  readonly tags: readonly string[];
  readonly source: string;
  readonly program: Program;
  readonly comments: readonly Comment[];
}

/** The code cells that hold code, taken apart, and the errors of syntax in them. */
export async function codeCells(notebook: Notebook): Promise<{
  readonly cells: readonly CodeCell[];
  readonly problems: readonly CellProblem[];
}> {
  const { parseSync } = await optionalPackage("oxc-parser", () => import("oxc-parser"));
  const cells: CodeCell[] = [];
  const problems: CellProblem[] = [];
  notebook.cells.forEach((cell, index) => {
    if (!holdsCode(cell)) return;
    const injected = tagsOf(cell).includes("injected-parameters");
    const number = injected ? 0 : cells.filter((each) => each.number > 0).length + 1;
    const title = titleOf(notebook, index);
    const { source } = cell;
    const parsed = parseSync("cell.ts", source, { lang: "ts", sourceType: "module" });
    const { program, comments } = parsed;
    const code: CodeCell = { index, number, title, tags: tagsOf(cell), source, program, comments };
    cells.push(code);
    for (const error of parsed.errors) {
      const help = error.helpMessage ? ` (${error.helpMessage})` : "";
      problems.push(problemAt(code, error.labels[0]?.start ?? 0, `${error.message}${help}`));
    }
  });
  return { cells, problems };
}

/** True for a code cell with more than blanks in it. */
export function holdsCode(cell: Cell): boolean {
  return cell.cell_type === "code" && cell.source.trim() !== "";
}

/** A problem at an offset of a cell's source. */
export function problemAt(cell: CodeCell, offset: number, message: string): CellProblem {
  const line = cell.source.slice(0, offset).split("\n").length;
  return problemOnLine(cell, line, message);
}

/** A problem on a line of a cell; line 0 means the whole cell. */
export function problemOnLine(cell: CodeCell, line: number, message: string): CellProblem {
  const code = cell.source.split("\n")[line - 1] ?? "";
  return { cell: cell.number, title: cell.title, line, code, message };
}

function titleOf(notebook: Notebook, index: number): string {
  for (let i = index - 1; i >= 0; i--) {
    const cell = notebook.cells[i];
    const headings = cell?.cell_type === "markdown" ? cell.source.match(/^#{1,6} .+$/gm) : null;
    const heading = headings?.at(-1);
    if (heading) return `under “${heading.replace(/^#+ /, "").trim()}”`;
  }
  const firstLine = notebook.cells[index]?.source.trim().split("\n")[0] ?? "";
  return `“${firstLine.slice(0, 60)}”`;
}
