import { readdir } from "node:fs/promises";
import { basename, dirname, resolve } from "node:path";
import { closestWord } from "../input/index.ts";

/** What to say about a file that cannot be read: where it was looked for, and what is there. */
export async function missingFileAdvice(path: string, error: unknown): Promise<string> {
  const code = (error as { code?: string }).code;
  if (code === "EISDIR") return "that is a folder; write the path of a file in it";
  if (code !== "ENOENT") return `that file cannot be read (${code ?? String(error)})`;
  const folder = dirname(resolve(path));
  const names = await readdir(folder).catch(() => undefined);
  if (names === undefined) {
    return "that folder does not exist; paths start at the notebook's folder";
  }
  const near = closestWord(basename(path), names);
  const meant = near === undefined ? "" : ` (did you mean "${dirname(path)}/${near}"?)`;
  return `there is no such file; paths start at the notebook's folder${meant}`;
}
