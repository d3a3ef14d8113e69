import { InputError } from "../input/index.ts";
import { notebookHost } from "./default-host.ts";

/**
 * Reads a text file: a reading log, a table, a recipe.
 *
 * @param path relative to the notebook's folder, with `/` between folders: `"../data/strips.csv"`;
 *   in a page, relative to the page
 * @returns the text, without a byte-order mark; UTF-8, or UTF-16 if the file says so
 * @throws InputError if there is no such file, if it is a spreadsheet and not text, or if its
 *   bytes are not UTF-8
 *
 * @example
 * const restore = installHost({ show() {}, announce() {}, readBytes: async () => new TextEncoder().encode("R,G,B"), saveText() {} });
 * await readText("../data/strips.csv") // => "R,G,B"
 * restore();
 */
export async function readText(path: string): Promise<string> {
  if (typeof path !== "string" || path.trim() === "") {
    throw new InputError(
      "readText",
      "path",
      path,
      'write the path of a file: "../data/strips.csv"',
    );
  }
  return decodeText(path, await bytesOf(path));
}

async function bytesOf(path: string): Promise<Uint8Array> {
  try {
    return await notebookHost().readBytes(path);
  } catch (error) {
    if (error instanceof InputError) throw error;
    const reason = error instanceof Error ? error.message : String(error);
    throw new InputError("readText", "path", path, `that file cannot be read (${reason})`);
  }
}

/** The text in a file's bytes, or an error that says what kind of file it is instead. */
export function decodeText(path: string, bytes: Uint8Array): string {
  const startsWith = (...start: number[]) => start.every((byte, i) => bytes[i] === byte);
  if (startsWith(0x50, 0x4b, 3, 4) || startsWith(0xd0, 0xcf, 0x11, 0xe0)) {
    const advice =
      "that file is a spreadsheet or an archive, not text; save the sheet as CSV (UTF-8)";
    throw new InputError("readText", "path", path, advice);
  }
  if (startsWith(0xff, 0xfe)) return new TextDecoder("utf-16le").decode(bytes);
  if (startsWith(0xfe, 0xff)) return new TextDecoder("utf-16be").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    const advice =
      "that file is not UTF-8 text; save it again as UTF-8 (in a spreadsheet: CSV UTF-8)";
    throw new InputError("readText", "path", path, advice);
  }
}
