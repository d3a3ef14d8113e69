import { existsSync } from "node:fs";
import { relative } from "node:path";
import { InputError } from "../input/index.ts";

/** Says one line to the person at the terminal. */
export type Say = (line: string) => void;

/** A path as a reader of the terminal would write it. */
export function shownPath(path: string): string {
  const from = relative(process.cwd(), path);
  return from.startsWith("..") ? path : from || ".";
}

/** Refuses a path that is no notebook file. */
export function requireNotebook(command: string, file: string): void {
  const advice = !file.endsWith(".ipynb")
    ? "write the path of a notebook, a file that ends in .ipynb"
    : existsSync(file)
      ? undefined
      : "there is no such file";
  if (advice !== undefined) throw new InputError(`wetside ${command}`, "FILE", file, advice);
}

/** Refuses a command without a notebook. */
export function requireNotebooks(command: string, files: readonly string[]): void {
  if (files.length === 0) {
    const advice = `write the path of a notebook: wetside ${command} notebooks/morning-call.ipynb`;
    throw new InputError(`wetside ${command}`, "FILE", undefined, advice);
  }
  for (const file of files) requireNotebook(command, file);
}

/** Seconds since a moment, for a progress line. */
export function secondsSince(start: number): string {
  return `${((performance.now() - start) / 1000).toFixed(1)} s`;
}
