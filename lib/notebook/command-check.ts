import { readFile } from "node:fs/promises";
import { NotebookError } from "./cell-problem.ts";
import { checkNotebookTypes } from "./check-types.ts";
import { codeCells } from "./code-cells.ts";
import { type OptionRule, optionsHelp, parseCommandLine } from "./command-line.ts";
import { lintCells } from "./lint-cells.ts";
import { parseNotebook } from "./notebook-file.ts";
import { requirePackages } from "./optional-package.ts";
import { parametersOf } from "./parameters.ts";
import { requireNotebooks, type Say } from "./terminal.ts";
import { notebookFormatProblems } from "./validate-notebook.ts";

const OPTIONS = {
  help: { help: "print this" },
} as const satisfies Record<string, OptionRule>;

export const CHECK_HELP = `wetside check FILE…

Checks notebooks without running them: the file's format, what would not run everywhere, and the
types in the cells. Every fault is named by cell and line.

${optionsHelp(OPTIONS)}`;

/** `wetside check`. */
export async function commandCheck(words: readonly string[], say: Say): Promise<void> {
  const { paths, options } = parseCommandLine("check", words, OPTIONS);
  if (options.has("help")) return say(CHECK_HELP);
  requireNotebooks("check", paths);
  requirePackages(["ajv", "oxc-parser", "typescript"]);
  const types = await checkNotebookTypes(paths);
  const faulty: NotebookError[] = [];
  for (const [i, file] of paths.entries()) {
    const text = await readFile(file, "utf8");
    const { cells, problems } = await codeCells(parseNotebook(file, text));
    const format = (await notebookFormatProblems(JSON.parse(text))).map((message) => {
      return { cell: 0, title: "format of the file", line: 0, code: "", message };
    });
    const rules = problems.length > 0 ? [] : [...lintCells(cells), ...parametersOf(cells).problems];
    const all = [...format, ...rules, ...(types[i]?.problems ?? [])];
    if (all.length === 0) say(`${file}: nothing wrong`);
    else faulty.push(new NotebookError(file, "has faults", all));
  }
  if (faulty.length === 1) throw faulty[0];
  if (faulty.length > 1) throw new AggregateError(faulty, `${faulty.length} notebooks have faults`);
}
