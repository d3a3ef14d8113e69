import { readText } from "./read-text.ts";

/**
 * Reads a text file that a lab may or may not keep.
 *
 * @param path as for `readText`; `""` for a file that is not kept
 * @returns the text, or `undefined` if the path is `""` or there is no such file
 * @throws InputError as `readText` for a file that is there and cannot be read
 *
 * @example
 * await readTextIfThere("") // => undefined
 */
export async function readTextIfThere(path: string): Promise<string | undefined> {
  if (path === "") return undefined;
  try {
    return await readText(path);
  } catch (error) {
    if (error instanceof Error && isMissing(error.message.replaceAll(path, ""))) return undefined;
    throw error;
  }
}

/** What the runner, Node, Deno and a server say of a file that is not there. */
function isMissing(message: string): boolean {
  return /no such file|folder does not exist|ENOENT|NotFound|\(404 /.test(message);
}
