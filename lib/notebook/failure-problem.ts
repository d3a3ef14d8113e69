import { basename } from "node:path";
import { findImport } from "./cell-module.ts";
import type { CellProblem } from "./cell-problem.ts";
import { problemOnLine } from "./code-cells.ts";
import type { CellsRun } from "./run-cells.ts";

/** The error that ended a run, at the cell and line it came from. */
export function failureProblem(run: CellsRun): CellProblem {
  const { failure, cells, events } = run;
  const begun = events.findLast((each) => each.type === "begin");
  const current = cells.find((each) => begun?.type === "begin" && each.number === begun.cell);
  const linked = current === undefined ? importProblem(run) : undefined;
  if (linked !== undefined) return linked;
  const [cell] = current === undefined ? cells : [current];
  const message = messageOf(run);
  if (cell === undefined) return { cell: 0, title: "no code", line: 0, code: "", message };
  const frames = framesOf(run, failure?.stack ?? "");
  const own = frames.findLast((each) => each.cell === cell) ?? frames.at(-1);
  if (own === undefined) return problemOnLine(cell, 0, message);
  const inner = frames[0];
  const elsewhere =
    inner !== undefined && inner.cell !== own.cell
      ? ` (from line ${inner.line} of cell ${inner.cell.number})`
      : "";
  return problemOnLine(own.cell, own.line, `${message}${elsewhere}`);
}

function messageOf({ failure, events }: CellsRun): string {
  if (failure === undefined) return "";
  const { name, message, way } = failure;
  if (way === "stopped" || way === "not-thrown") {
    const all = events.some((each) => each.type === "end");
    return all ? `all cells ran, but something they started goes on: ${message}` : message;
  }
  const text = name === "InputError" ? message : `${name}: ${message}`;
  return way === "rejected"
    ? `${text} (a promise that nothing waited for failed; write await before it)`
    : text;
}

/** Frames of a stack that lie in the cells, innermost first. */
function framesOf({ module, modulePath }: CellsRun, stack: string) {
  const name = basename(modulePath);
  return stack.split("\n").flatMap((frame) => {
    const at = frame.indexOf(`${name}:`);
    const line = at < 0 ? Number.NaN : Number.parseInt(frame.slice(at + name.length + 1), 10);
    const from = module.lines[line - 1];
    return from === undefined ? [] : [from];
  });
}

/** An error in the imports comes before any cell runs; the import is found by what it names. */
function importProblem({ failure, cells }: CellsRun): CellProblem | undefined {
  const text = failure?.message ?? "";
  const noName = /['"]([^'"]+)['"] does not provide an export named '([^']+)'/.exec(text);
  const noModule = /Cannot find (?:package|module) '([^']+)'/.exec(text);
  const found = findImport(cells, ({ from, names }) =>
    noName !== null
      ? names.some(({ imported }) => imported === noName[2])
      : noModule !== null &&
        (from === noModule[1] ||
          from.startsWith(`${noModule[1]}/`) ||
          noModule[1]?.endsWith(from.replace(/^\.+/, "")) === true),
  );
  if (found === undefined) return undefined;
  const { cell, found: where } = found;
  const line = cell.source.slice(0, where.start).split("\n").length;
  const local = where.from.startsWith(".");
  const install = local
    ? "there is no such file; paths start at the notebook's folder"
    : `"${where.from}" is not installed; install it with: npm install ${where.from}`;
  const message = noName !== null ? `"${where.from}" has no export named ${noName[2]}` : install;
  return problemOnLine(cell, line, message);
}
