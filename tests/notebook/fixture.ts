import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll } from "vitest";
import { type Cell, type Notebook, notebookText } from "../../lib/notebook/notebook-file.ts";

/** A cell of a draft: code as text, or text and tags; Markdown if it starts with `#` or `md:`. */
export type Draft = string | { readonly source: string; readonly tags: readonly string[] };

/** A notebook made of drafts, as before its first run. */
export function draftNotebook(drafts: readonly Draft[]): Notebook {
  const cells = drafts.map((draft, i): Cell => {
    const { source, tags } = typeof draft === "string" ? { source: draft, tags: [] } : draft;
    const id = `cell-${i + 1}`;
    const metadata = tags.length > 0 ? { tags: [...tags] } : {};
    if (/^(#|md:)/.test(source)) {
      return { cell_type: "markdown", id, metadata, source: source.replace(/^md:/, "") };
    }
    return { cell_type: "code", id, metadata, source, execution_count: null, outputs: [] };
  });
  return { cells, metadata: {}, nbformat: 4, nbformat_minor: 5 };
}

const folders: string[] = [];
afterAll(() => Promise.all(folders.map((each) => rm(each, { recursive: true, force: true }))));

/** An empty folder far from any package, gone after the tests of the file. */
export async function emptyFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), "wetside-test-"));
  folders.push(folder);
  return folder;
}

/** A notebook file in an empty folder, with other files beside it. */
export async function notebookFile(
  drafts: readonly Draft[],
  beside: Readonly<Record<string, string | Uint8Array>> = {},
): Promise<{ readonly file: string; readonly folder: string }> {
  const folder = await emptyFolder();
  const file = join(folder, "trial.ipynb");
  await writeFile(file, notebookText(draftNotebook(drafts)));
  for (const [name, content] of Object.entries(beside))
    await writeFile(join(folder, name), content);
  return { file, folder };
}

/** The text of a file. */
export function textOf(path: string): Promise<string> {
  return readFile(path, "utf8");
}
