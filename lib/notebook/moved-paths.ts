import { existsSync } from "node:fs";
import { relative, resolve, sep } from "node:path";
import type { Notebook } from "./notebook-file.ts";

const PATH_IN_QUOTES = /(["'`])(\.{1,2}\/[^"'`\n$]*)\1/g;

/**
 * A notebook for another folder: paths in its code that begin with ./ or ../ and lead to something
 * from the folder it was in are written as from the new one. Paths that lead nowhere stay as they are.
 */
export function movedPaths(notebook: Notebook, from: string, to: string): Notebook {
  const moved = (path: string) => {
    if (!existsSync(resolve(from, path))) return path;
    const way = relative(to, resolve(from, path)).split(sep).join("/");
    const kept = path.endsWith("/") ? `${way}/` : way;
    return kept.startsWith(".") ? kept : `./${kept}`;
  };
  const cells = notebook.cells.map((cell) => {
    if (cell.cell_type !== "code") return cell;
    const source = cell.source.replace(
      PATH_IN_QUOTES,
      (_, quote: string, path: string) => quote + moved(path) + quote,
    );
    return source === cell.source ? cell : { ...cell, source };
  });
  return { ...notebook, cells };
}
