import { type Cell, type Notebook, tagsOf } from "./notebook-file.ts";

/**
 * The notebook as a class gets it: cells tagged `solution` are left out, and so are all outputs
 * below the first of them, which would give the answers away.
 */
export function studentCopy(notebook: Notebook): Notebook {
  const first = notebook.cells.findIndex(isSolution);
  const cells = notebook.cells
    .map((cell, index) => (first >= 0 && index > first ? withoutOutputs(cell) : cell))
    .filter((cell) => !isSolution(cell));
  return { ...notebook, cells };
}

function isSolution(cell: Cell): boolean {
  return tagsOf(cell).includes("solution");
}

/** A code cell as before it was run. */
export function withoutOutputs(cell: Cell): Cell {
  return cell.cell_type === "code" ? { ...cell, execution_count: null, outputs: [] } : cell;
}
