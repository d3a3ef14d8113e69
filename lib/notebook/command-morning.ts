import { readdir } from "node:fs/promises";
import { availableParallelism } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { InputError } from "../input/index.ts";
import { type OptionRule, optionsHelp, parseCommandLine, requireNoMore } from "./command-line.ts";
import { notebookPage } from "./page.ts";
import { indexPage, type PageEntry, readerOf } from "./page-index.ts";
import { notebookName, runNotebook } from "./run-notebook.ts";
import { type Say, secondsSince, shownPath } from "./terminal.ts";
import { writeWhole } from "./write-file.ts";

const OPTIONS = {
  out: { value: "DIR", help: "folder for the pages (out/pages)" },
  trace: { help: "print where in the code an error arose" },
  help: { help: "print this" },
} as const satisfies Record<string, OptionRule>;

export const MORNING_HELP = `wetside morning [FOLDER] [--out DIR]

The lab's morning: runs every notebook of a folder (notebooks), prints what each announces, the
day's verdict first of all, and makes a page of each and a list of the pages. The notebooks
themselves are not changed.

${optionsHelp(OPTIONS)}`;

/** `wetside morning`: what `npm start` runs. */
export async function commandMorning(words: readonly string[], say: Say): Promise<void> {
  const { paths, options } = parseCommandLine("morning", words, OPTIONS);
  if (options.has("help")) return say(MORNING_HELP);
  requireNoMore("morning", paths, 1);
  const [folder = "notebooks"] = paths;
  const pages = resolve(options.get("out")?.[0] ?? join("out", "pages"));
  const files = await notebooksIn(folder);
  const start = performance.now();
  const failed: unknown[] = [];
  const entries: PageEntry[] = [];
  const said: Said[] = [];
  const waiting = [...files];
  let done = 0;
  const work = async () => {
    for (let file = waiting.shift(); file !== undefined; file = waiting.shift()) {
      const began = performance.now();
      try {
        const { entry, lines } = await runAndPage(file, pages);
        entries.push(entry);
        say(`${++done}/${files.length}  ${notebookName(file)}  ${secondsSince(began)}`);
        if (lines.length > 0) said.push({ name: notebookName(file), lines });
      } catch (error) {
        say(`${++done}/${files.length}  ${notebookName(file)}  stopped with an error`);
        failed.push(error);
      }
    }
  };
  await Promise.all(Array.from({ length: Math.min(files.length, availableParallelism()) }, work));
  for (const { name, lines } of said.sort(verdictFirst)) {
    say(`\n${name}`);
    for (const line of lines.flatMap((each) => each.split("\n"))) say(`  ${line}`);
  }
  entries.sort((a, b) => (a.href < b.href ? -1 : 1));
  const index = join(pages, "index.html");
  await writeWhole(index, await indexPage(entries));
  say(`\n${entries.length} pages in ${secondsSince(start)}: ${shownPath(index)}`);
  say(pathToFileURL(index).href);
  if (failed.length === 1) throw failed[0];
  if (failed.length > 1) throw new AggregateError(failed, `${failed.length} notebooks stopped`);
}

/** What a notebook announced and saved. */
interface Said {
  readonly name: string;
  readonly lines: readonly string[];
}

/** A verdict comes before anything else, for whoever reads one line only; the rest by name. */
function verdictFirst(a: Said, b: Said): number {
  const isVerdict = ({ lines }: Said) => Number(/^(HOLD|ACT|RUN)\b/.test(lines[0] ?? ""));
  return isVerdict(b) - isVerdict(a) || (a.name < b.name ? -1 : 1);
}

async function notebooksIn(folder: string): Promise<readonly string[]> {
  const names = await readdir(folder).catch(() => {
    throw new InputError("wetside morning", "FOLDER", folder, "there is no such folder");
  });
  const files = names.filter((name) => /^[^.].*\.ipynb$/.test(name)).sort();
  if (files.length > 0) return files.map((name) => join(folder, name));
  throw new InputError("wetside morning", "FOLDER", folder, "there is no notebook in it");
}

async function runAndPage(file: string, pages: string) {
  const { notebook, saved, announced, notes } = await runNotebook({ file });
  const name = notebookName(file);
  const lines = [...announced, ...notes];
  for (const [savedName, text] of saved) {
    const path = resolve("out", name, savedName);
    await writeWhole(path, text);
    lines.push(`saved ${shownPath(path)}`);
  }
  const { html, title, faults } = await notebookPage(notebook, file, pages);
  await writeWhole(join(pages, `${name}.html`), html);
  const entry: PageEntry = { href: `${name}.html`, title, reader: readerOf(notebook) };
  return { entry, lines: [...lines, ...faults] };
}
