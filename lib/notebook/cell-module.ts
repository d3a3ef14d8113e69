import type { CellProblem } from "./cell-problem.ts";
import { type CodeCell, problemOnLine } from "./code-cells.ts";
import { type CellImport, importsOf, importText } from "./imports.ts";
import { declaredNames, statements } from "./syntax-tree.ts";

/** A whole notebook as one ES module, and from where each of its lines comes. */
export interface CellModule {
  readonly text: string;
  /** For each line of the text (from 0): the cell and its line, if it comes from one. */
  readonly lines: readonly ({ readonly cell: CodeCell; readonly line: number } | undefined)[];
}

/** Name under which the running module finds the runner. */
export const RUNNER = "__wetside";
const EXPECTED = "raises-exception";
/** Cells whose last expression is an assignment nobody wants to see. */
const QUIET = ["parameters", "injected-parameters"];

/**
 * The module that runs: a marker before each cell, the last expression of each cell handed to the
 * runner to be shown.
 */
export function runningModule(cells: readonly CodeCell[], resolve = keepName): CellModule {
  const builder = moduleBuilder(resolve);
  builder.add(`const ${RUNNER} = globalThis[Symbol.for("wetside.runner")];`);
  for (const cell of cells) {
    const expected = cell.tags.includes(EXPECTED);
    builder.add(`await ${RUNNER}.begin(${cell.number});${expected ? " try {" : ""}`);
    builder.addCell(cell, !QUIET.some((tag) => cell.tags.includes(tag)));
    if (expected) {
      builder.add(`await ${RUNNER}.notThrown(); } catch (error) { ${RUNNER}.caught(error); }`);
    }
  }
  builder.add(`await ${RUNNER}.end();`);
  return builder.built();
}

/**
 * The module whose types are checked: the cells as they are. After the parameters cell each
 * parameter is assigned a value of unknown origin, so that the checker does not take the value
 * written in the notebook for the only one possible.
 */
export function typedModule(cells: readonly CodeCell[], resolve = keepName): CellModule {
  const builder = moduleBuilder(resolve);
  for (const cell of cells) {
    const expected = cell.tags.includes(EXPECTED);
    // A cell may end without a semicolon; the next must not be read as going on with it.
    builder.add(expected ? "; try {" : ";");
    builder.addCell(cell, false);
    if (expected) builder.add("} catch {}");
    if (cell.tags.includes("parameters")) {
      const names = statements(cell.program).flatMap(declaredNames);
      builder.add(names.map(({ name }) => `${name} = null as any;`).join(" "));
    }
  }
  builder.add("export {};");
  return builder.built();
}

function keepName(from: string): string {
  return from;
}

function moduleBuilder(resolve: (from: string) => string) {
  const texts: string[] = [];
  const lines: CellModule["lines"][number][] = [];
  const imported = new Set<string>();
  const add = (text: string) => {
    texts.push(text);
    lines.push(undefined);
  };
  const addCell = (cell: CodeCell, shown: boolean) => {
    rewritten(cell, shown, imported, resolve)
      .split("\n")
      .forEach((text, i) => {
        texts.push(text);
        lines.push({ cell, line: i + 1 });
      });
  };
  return { add, addCell, built: (): CellModule => ({ text: `${texts.join("\n")}\n`, lines }) };
}

/** The cell's source with each import standing once in the module, and its last value shown. */
function rewritten(
  cell: CodeCell,
  shown: boolean,
  imported: Set<string>,
  resolve: (from: string) => string,
): string {
  let text = cell.source;
  const last = statements(cell.program).at(-1);
  if (shown && last?.type === "ExpressionStatement") {
    const { start, end } = last.expression as { start: number; end: number };
    text = `${text.slice(0, start)}await ${RUNNER}.show((${text.slice(start, end)}))${text.slice(end)}`;
  }
  const edits = importsOf(cell).map((found) => {
    const fresh = found.names.filter(({ local }) => !imported.has(local));
    for (const { local } of fresh) imported.add(local);
    return { found, fresh, from: resolve(found.from) };
  });
  for (const { found, fresh, from } of edits.reverse()) {
    if (from === found.from && fresh.length === found.names.length) continue;
    const { start, end } = found;
    const blank = "\n".repeat(text.slice(start, end).split("\n").length - 1);
    text = `${text.slice(0, start)}${importText(found, fresh, from)}${blank}${text.slice(end)}`;
  }
  return text;
}

/** Where a line of the module (from 1) comes from, as a problem with a message. */
export function problemInModule(
  module: CellModule,
  line: number,
  message: string,
): CellProblem | undefined {
  const from = module.lines[line - 1];
  return from && problemOnLine(from.cell, from.line, message);
}

/** The import of a cell that brings in a name from another module. */
export function findImport(
  cells: readonly CodeCell[],
  matches: (found: CellImport) => boolean,
): { readonly cell: CodeCell; readonly found: CellImport } | undefined {
  for (const cell of cells) {
    const found = importsOf(cell).find(matches);
    if (found !== undefined) return { cell, found };
  }
  return undefined;
}
