import { readFile } from "node:fs/promises";
import { basename, dirname, resolve } from "node:path";
import { NotebookError } from "./cell-problem.ts";
import { type CodeCell, codeCells, holdsCode, problemOnLine } from "./code-cells.ts";
import { failureProblem } from "./failure-problem.ts";
import { injectSettings } from "./inject.ts";
import { lintCells } from "./lint-cells.ts";
import { type Cell, type Notebook, type Output, parseNotebook } from "./notebook-file.ts";
import { requirePackages } from "./optional-package.ts";
import { collectOutputs, FigureError } from "./outputs.ts";
import { type Parameter, parametersOf } from "./parameters.ts";
import { runCells } from "./run-cells.ts";
import { adaptPath } from "./setting-path.ts";

/** How a notebook is run. */
export interface RunOptions {
  /** Path of the .ipynb file; never written to here. */
  readonly file: string;
  /** Name → value as typed, for the notebook's parameters. */
  readonly settings?: ReadonlyMap<string, string>;
  /** Seconds after which a cell that has not ended is stopped. */
  readonly timeoutSeconds?: number;
  /** Called with each line the notebook announces. */
  readonly onAnnounce?: (text: string) => void;
}

/** What a run made. */
export interface RunResult {
  readonly notebook: Notebook;
  /** Files the notebook saved, by name. */
  readonly saved: ReadonlyMap<string, string>;
  readonly announced: readonly string[];
  /** Files the notebook read, relative to its folder. */
  readonly read: readonly string[];
  /** Things done that the caller should know of. */
  readonly notes: readonly string[];
}

const TIMEOUT_SECONDS = 300;

/**
 * Runs a notebook from top to bottom in a process of its own and gives it back with its outputs.
 * No file is written.
 *
 * @throws NotebookError that names cells and lines, if the notebook cannot be run or an error
 *   stops it; InputError for a setting that does not fit
 */
export async function runNotebook(options: RunOptions): Promise<RunResult> {
  const { file, settings = new Map(), timeoutSeconds = TIMEOUT_SECONDS } = options;
  requirePackages(["oxc-parser", "tsx"]);
  const path = resolve(file);
  const source = parseNotebook(file, await readFile(path, "utf8"));
  const notes: string[] = [];
  const original = await codeCells(source);
  const adapt = (parameter: Parameter, value: unknown) =>
    adaptPath(dirname(path), parameter, value, notes);
  const notebook = injectSettings(source, parametersOf(original.cells), settings, adapt);
  const { cells } = await checkedCells(file, notebook);
  const run = await runCells(path, cells, timeoutSeconds, options.onAnnounce);
  if (run.failure !== undefined) {
    throw new NotebookError(file, "stopped", [failureProblem(run)], run.failure.stack);
  }
  const outputs = await collectOutputs(run.events).catch((error: unknown) => {
    const cell = error instanceof FigureError && cells.find((each) => each.number === error.cell);
    if (!cell) throw error;
    throw new NotebookError(file, "stopped", [problemOnLine(cell, 0, error.message)], error.stack);
  });
  const results = notebook.cells.map((cell, index) => withOutputs(cell, index, cells, outputs));
  return {
    notebook: { ...notebook, cells: results },
    saved: new Map(
      run.events.flatMap((each) => (each.type === "save" ? [[each.name, each.text]] : [])),
    ),
    announced: run.events.flatMap((each) => (each.type === "announce" ? [each.text] : [])),
    read: [...new Set(run.events.flatMap((each) => (each.type === "read" ? [each.path] : [])))],
    notes,
  };
}

async function checkedCells(file: string, notebook: Notebook) {
  const { cells, problems } = await codeCells(notebook);
  if (problems.length > 0) throw new NotebookError(file, "cannot be run", problems);
  const found = [...lintCells(cells), ...parametersOf(cells).problems];
  if (found.length > 0) throw new NotebookError(file, "cannot be run", found);
  return { cells };
}

function withOutputs(
  cell: Cell,
  index: number,
  cells: readonly CodeCell[],
  outputs: ReadonlyMap<number, readonly Output[]>,
): Cell {
  if (cell.cell_type !== "code") return cell;
  const number = cells.find((each) => each.index === index)?.number;
  if (!holdsCode(cell) || number === undefined)
    return { ...cell, execution_count: null, outputs: [] };
  const count = number === 0 ? null : number;
  return { ...cell, execution_count: count, outputs: outputs.get(number) ?? [] };
}

/** Name of a notebook without folder and ending: what its outputs are filed under. */
export function notebookName(file: string): string {
  return basename(file).replace(/\.ipynb$/, "");
}
