import { readdirSync, readFileSync } from "node:fs";
import { rm } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { type CellProblem, problemText } from "../../lib/notebook/cell-problem.ts";
import { checkNotebookTypes } from "../../lib/notebook/check-types.ts";
import { codeCells } from "../../lib/notebook/code-cells.ts";
import { lintCells } from "../../lib/notebook/lint-cells.ts";
import { notebookText, parseNotebook } from "../../lib/notebook/notebook-file.ts";
import { parametersOf } from "../../lib/notebook/parameters.ts";
import { runNotebook } from "../../lib/notebook/run-notebook.ts";
import { withoutOutputs } from "../../lib/notebook/student-copy.ts";
import { notebookFormatProblems } from "../../lib/notebook/validate-notebook.ts";
import { writeWhole } from "../../lib/notebook/write-file.ts";
import { firstDifference } from "./first-difference.ts";
import { ofRecord, withoutLastDigits } from "./last-digits.ts";

const FOLDER = fileURLToPath(new URL("../../notebooks/", import.meta.url));
const NAMES = readdirSync(FOLDER).filter((name) => /^[^.].*\.ipynb$/.test(name));
/** A notebook may take its time on a busy machine; `npm start` shows how long each takes. */
const SLOW = 600_000;
const asTexts = (problems: readonly CellProblem[]) => problems.map(problemText).join("\n");

describe("the committed notebooks", () => {
  it("are there", () => {
    expect(NAMES).not.toEqual([]);
  });

  it("have the right types in every cell", { timeout: SLOW }, async () => {
    const reports = await checkNotebookTypes(NAMES.map((name) => join(FOLDER, name)));
    const wrong = reports.filter(({ problems }) => problems.length > 0);
    expect(wrong.map(({ file, problems }) => `${file}\n${asTexts(problems)}`).join("\n")).toBe("");
  });
});

describe.each(NAMES)("%s", (name) => {
  const path = join(FOLDER, name);
  const committed = readFileSync(path, "utf8");
  const notebook = parseNotebook(path, committed);

  it("follows the notebook format and is written as Jupyter writes it", async () => {
    expect(await notebookFormatProblems(JSON.parse(committed))).toEqual([]);
    expect(firstDifference(committed, notebookText(notebook))).toBeUndefined();
  });

  it("follows the rules for cells, and each parameter says its unit and range", async () => {
    const { cells, problems } = await codeCells(notebook);
    const found = parametersOf(cells);
    expect(asTexts([...problems, ...lintCells(cells), ...found.problems])).toBe("");
    const silent = found.parameters.filter(({ comment }) => comment === "");
    expect(silent.map((each) => each.name)).toEqual([]);
  });

  it("is for the Deno kernel and holds no settings of a run", () => {
    expect(notebook.metadata.kernelspec).toMatchObject({ name: "deno", language: "typescript" });
    expect(notebook.cells.filter(({ id }) => id === "injected-parameters")).toEqual([]);
  });

  it("gives its committed outputs, byte for byte, when it is run from clean", {
    timeout: SLOW,
  }, async () => {
    // Beside the committed one, so that its paths lead to the same files.
    const clean = join(FOLDER, `.clean-${process.pid}-${name}`);
    try {
      const stripped = { ...notebook, cells: notebook.cells.map(withoutOutputs) };
      await writeWhole(clean, notebookText(stripped));
      const again = notebookText((await runNotebook({ file: clean })).notebook);
      const read = ofRecord ? (text: string) => text : withoutLastDigits;
      expect(firstDifference(read(committed), read(again))).toBeUndefined();
    } finally {
      await rm(clean, { force: true });
    }
  });
});
