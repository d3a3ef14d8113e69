import { readFile } from "node:fs/promises";
import { dirname, join, resolve } from "node:path";
import { InputError } from "../input/index.ts";
import { type OptionRule, optionsHelp, parseCommandLine } from "./command-line.ts";
import { movedPaths } from "./moved-paths.ts";
import { notebookText, parseNotebook } from "./notebook-file.ts";
import { notebookName } from "./run-notebook.ts";
import { studentCopy } from "./student-copy.ts";
import { requireNotebooks, type Say, shownPath } from "./terminal.ts";
import { writeWhole } from "./write-file.ts";

const OPTIONS = {
  out: { value: "DIR", help: "folder for the copies (out/students)" },
  help: { help: "print this" },
} as const satisfies Record<string, OptionRule>;

export const STUDENT_HELP = `wetside student FILE… [--out DIR]

Makes copies of notebooks for a class: without the cells tagged "solution", and without the
outputs that would give them away. Paths to logs are written as from the copy's folder.

${optionsHelp(OPTIONS)}`;

/** `wetside student`. */
export async function commandStudent(words: readonly string[], say: Say): Promise<void> {
  const { paths, options } = parseCommandLine("student", words, OPTIONS);
  if (options.has("help")) return say(STUDENT_HELP);
  requireNotebooks("student", paths);
  const folder = resolve(options.get("out")?.[0] ?? join("out", "students"));
  for (const file of paths) {
    const notebook = parseNotebook(file, await readFile(file, "utf8"));
    const target = join(folder, `${notebookName(file)}.ipynb`);
    if (target === resolve(file)) {
      const advice = "name another folder; the copy would replace the notebook itself";
      throw new InputError("wetside student", "--out", folder, advice);
    }
    const copy = movedPaths(studentCopy(notebook), dirname(resolve(file)), folder);
    await writeWhole(target, notebookText(copy));
    say(`wrote ${shownPath(target)}`);
  }
}
