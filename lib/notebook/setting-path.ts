import { statSync } from "node:fs";
import { relative, resolve, sep } from "node:path";

/**
 * A path typed in a terminal starts at the terminal's folder, one in a notebook at the notebook's.
 * A value that replaces a file's path and names a file from where the command was typed becomes a
 * path from the notebook's folder; any other value stays as it is.
 *
 * @param notes gets a line that says so, if the path was changed
 */
export function adaptPath(
  folder: string,
  written: string,
  value: unknown,
  notes: string[],
): unknown {
  if (typeof value !== "string" || !looksLikePath(written)) return value;
  const typed = resolve(value);
  if (!isFile(typed) || typed === resolve(folder, value)) return value;
  const adapted = relative(folder, typed).split(sep).join("/");
  if (isFile(resolve(folder, value))) {
    notes.push(
      `two files are called ${value}; the one in the current folder is used (${adapted} from the notebook)`,
    );
  }
  return adapted;
}

function looksLikePath(written: string): boolean {
  return /^["'`].*[/.].*["'`]$/.test(written) || /^["'`]["'`]$/.test(written);
}

function isFile(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isFile() ?? false;
}
