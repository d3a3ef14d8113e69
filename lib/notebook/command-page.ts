import { readFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import { type OptionRule, optionsHelp, parseCommandLine } from "./command-line.ts";
import { parseNotebook } from "./notebook-file.ts";
import { notebookPage } from "./page.ts";
import { notebookName } from "./run-notebook.ts";
import { requireNotebooks, type Say, shownPath } from "./terminal.ts";
import { writeWhole } from "./write-file.ts";

const OPTIONS = {
  out: { value: "DIR", help: "folder for the pages (out/pages)" },
  help: { help: "print this" },
} as const satisfies Record<string, OptionRule>;

export const PAGE_HELP = `wetside page FILE… [--out DIR]

Makes one HTML file of each notebook, with the outputs it holds. The page needs no network and no
other file, and prints cleanly. Run the notebook first if its outputs are old.

${optionsHelp(OPTIONS)}`;

/** `wetside page`. */
export async function commandPage(words: readonly string[], say: Say): Promise<void> {
  const { paths, options } = parseCommandLine("page", words, OPTIONS);
  if (options.has("help")) return say(PAGE_HELP);
  requireNotebooks("page", paths);
  const folder = resolve(options.get("out")?.[0] ?? join("out", "pages"));
  for (const file of paths) {
    const notebook = parseNotebook(file, await readFile(file, "utf8"));
    const code = notebook.cells.filter(({ cell_type }) => cell_type === "code");
    if (code.length > 0 && code.every(({ execution_count }) => execution_count == null)) {
      say(`note: ${file} holds no outputs yet; run it first: wetside run ${file}`);
    }
    const { html, faults } = await notebookPage(notebook, file, folder);
    for (const fault of faults) say(`note: ${file}: ${fault}`);
    const page = join(folder, `${notebookName(file)}.html`);
    await writeWhole(page, html);
    say(`wrote ${shownPath(page)}`);
  }
}
