import { mkdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { basename, dirname, join } from "node:path";

/**
 * Writes a whole file or nothing: beside its place first, then renamed. A file that already holds
 * the text is left alone. Folders are made as needed.
 *
 * @returns false if the file already held the text
 */
export async function writeWhole(path: string, text: string): Promise<boolean> {
  const before = await readFile(path, "utf8").catch(() => undefined);
  if (before === text) return false;
  const unique = `${process.pid}-${Math.random().toString(36).slice(2, 8)}`;
  const beside = join(dirname(path), `.${basename(path)}-${unique}`);
  await mkdir(dirname(path), { recursive: true });
  try {
    await writeFile(beside, text);
    await rename(beside, path);
  } finally {
    await rm(beside, { force: true });
  }
  return true;
}
