import { readdirSync, statSync } from "node:fs";
import { basename, dirname, relative, resolve, sep } from "node:path";
import { closestWord, InputError } from "../input/index.ts";
import type { Parameter } from "./parameters.ts";

/**
 * A path typed in a terminal starts at the terminal's folder, one in a notebook at the notebook's.
 * A value that replaces a file's path and names a file from where the command was typed becomes a
 * path from the notebook's folder; any other value stays as it is.
 *
 * @param folder the notebook's
 * @param notes gets a line that says so, if of two files the one near the terminal is taken
 * @throws InputError for the path of a file that is neither here nor there; a plain name that
 *   replaces a plain name passes, since a notebook may look for it beside another file
 */
export function adaptPath(
  folder: string,
  { name, written }: Pick<Parameter, "name" | "written">,
  value: unknown,
  notes: string[],
): unknown {
  if (typeof value !== "string" || !looksLikePath(written)) return value;
  const typed = resolve(value);
  const there = resolve(folder, value);
  if (!isFile(typed) && !isFile(there)) refuseMissing(name, written, value, [typed, there]);
  if (!isFile(typed) || typed === there) return value;
  const adapted = relative(folder, typed).split(sep).join("/");
  if (isFile(there)) {
    notes.push(
      `two files are called ${value}; the one in the current folder is used (${adapted} from the notebook)`,
    );
  }
  return adapted;
}

function refuseMissing(
  name: string,
  written: string,
  value: string,
  places: readonly string[],
): void {
  const isPath = written.includes("/") || (value.includes("/") && /\.\w+$/.test(value));
  if (value === "" || !isPath) return;
  if (places.some(isFolder)) {
    throw new InputError("--set", name, value, "that is a folder; write the path of a file in it");
  }
  const near = places.map((place) => closestWord(basename(place), namesIn(dirname(place))));
  const [found] = near.filter((each) => each !== undefined);
  const meant = found === undefined ? "" : ` (did you mean ${inFolder(value, found)}?)`;
  const advice = `there is no such file, seen from here or from the notebook's folder${meant}`;
  throw new InputError("--set", name, value, advice);
}

/** Another name in the folder of a path. */
function inFolder(path: string, name: string): string {
  return path.replace(/[^/\\]*$/, "") + name;
}

function looksLikePath(written: string): boolean {
  return /^["'`].*[/.].*["'`]$/.test(written) || /^["'`]["'`]$/.test(written);
}

function isFile(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isFile() ?? false;
}

function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

function namesIn(folder: string): readonly string[] {
  return isFolder(folder) ? readdirSync(folder) : [];
}
