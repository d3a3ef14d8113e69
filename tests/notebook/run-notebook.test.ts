import { mkdir, readdir, rename, writeFile } from "node:fs/promises";
import { join, relative, sep } from "node:path";
import { describe, expect, it } from "vitest";
import { NotebookError } from "../../lib/notebook/cell-problem.ts";
import type { Output } from "../../lib/notebook/notebook-file.ts";
import { notebookText } from "../../lib/notebook/notebook-file.ts";
import { type RunOptions, type RunResult, runNotebook } from "../../lib/notebook/run-notebook.ts";
import { type Draft, notebookFile, textOf } from "./fixture.ts";

/** A process with two module loaders takes a second or two, more on a busy machine. */
const SLOW = 300_000;

type Files = Readonly<Record<string, string | Uint8Array>>;
async function run(
  drafts: readonly Draft[],
  beside: Files = {},
  options: Partial<RunOptions> = {},
) {
  const { file, folder } = await notebookFile(drafts, beside);
  const result = await runNotebook({ file, ...options });
  return { ...result, file, folder };
}

function outputs(result: RunResult): readonly (readonly Output[])[] {
  return result.notebook.cells
    .filter((each) => each.cell_type === "code")
    .map((each) => each.outputs ?? []);
}

async function failure(
  drafts: readonly Draft[],
  beside: Files = {},
  options: Partial<RunOptions> = {},
) {
  const { file, folder } = await notebookFile(drafts, beside);
  const before = await textOf(file);
  const error = await runNotebook({ file, ...options }).then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  expect(error).toBeInstanceOf(NotebookError);
  expect(await textOf(file), "the notebook is left as it was").toBe(before);
  expect(await readdir(folder), "nothing else is left behind").toHaveLength(
    1 + Object.keys(beside).length,
  );
  const { problems, message } = error as NotebookError;
  return { problem: problems[0], message: message.replace(file, "FILE") };
}

const text = (value: string) => ({ "text/plain": value });

describe("a run of a notebook", { timeout: SLOW }, () => {
  it("shows the last expression of each cell, what was printed, and what was shown on the way", async () => {
    const result = await run(
      [
        "# Title",
        'import { show, showMarkdown, announce, readText, saveJson } from "wetside/notebook";\nimport { InputError } from "wetside";\n1 + 1 // two',
        'console.log("a");\nconsole.log("b");\nconsole.warn("careful");\nconst later = await Promise.resolve(3);',
        'await show("x", 2);\nshowMarkdown("**b**");\n(later, later * 2)',
        "",
        'saveJson("verdict", { ok: true });\nannounce("film: run");\nawait readText("a.csv")',
        'import { InputError } from "wetside";\nimport { show } from "wetside/notebook";\nnew InputError("f", "a", 1, "b") instanceof Error',
        "function later2() { return later; }\nundefined",
        '"a lone text"',
      ],
      { "a.csv": "R,G\n" },
    );
    const shown = (data: object, count: number) => ({
      output_type: "execute_result",
      data,
      metadata: {},
      execution_count: count,
    });
    const display = (data: object) => ({ output_type: "display_data", data, metadata: {} });
    expect(outputs(result)).toEqual([
      [shown(text("2"), 1)],
      [
        { output_type: "stream", name: "stdout", text: "a\nb\n" },
        { output_type: "stream", name: "stderr", text: "careful\n" },
      ],
      [
        display(text("x")),
        display(text("2")),
        display({ "text/markdown": "**b**", ...text("**b**") }),
        shown(text("6"), 3),
      ],
      [],
      [display(text("film: run")), shown(text("R,G\n"), 4)],
      [shown(text("true"), 5)],
      [],
      [shown(text("a lone text"), 7)],
    ]);
    expect(result.notebook.cells.map((each) => each.execution_count)).toEqual([
      undefined,
      1,
      2,
      3,
      null,
      4,
      5,
      6,
      7,
    ]);
    expect(result.announced).toEqual(["film: run"]);
    expect(result.read).toEqual(["a.csv"]);
    expect(JSON.parse(result.saved.get("verdict.json") ?? "")).toEqual({ ok: true });
    expect(await readdir(result.folder)).toHaveLength(2);
  });

  it("gives the same bytes each time, in any time zone", async () => {
    const figure = `({ kind: "vega-lite", title: "T", description: "D", specification: { data: { values: [{ t: "2024-05-01T07:30", d: 1 }, { t: "2024-05-02T07:30", d: 2 }] }, mark: { type: "line", clip: true }, encoding: { x: { field: "t", type: "temporal" }, y: { field: "d", type: "quantitative" } } } })`;
    const { file } = await notebookFile(["# T", figure, "new Date(2024, 4, 1).toString()", figure]);
    const before = process.env.TZ;
    process.env.TZ = "America/New_York";
    const first = notebookText((await runNotebook({ file })).notebook);
    process.env.TZ = "Asia/Kolkata";
    const second = notebookText((await runNotebook({ file })).notebook);
    process.env.TZ = before;
    expect(second).toBe(first);
    expect(first).toContain("image/svg+xml");
    const [one, , two] = JSON.parse(first).cells.slice(1);
    const svg = (cell: typeof one) => cell.outputs[0].data["image/svg+xml"].join("");
    expect(svg(one)).toBe(svg(two));
    expect(svg(one)).toMatch(/^<svg [^>]*viewBox=/);
    expect(svg(one)).not.toContain("NaN");
  });

  it("puts settings into a cell of their own and runs with them, keeping the numbers of cells", async () => {
    const parameters = {
      source: 'let days: number = 30; // d\nlet log: string = "a.csv"; // path',
      tags: ["parameters"],
    };
    const result = await run([parameters, "days * 2"], {}, { settings: new Map([["days", "4"]]) });
    expect(result.notebook.cells.map(({ id, execution_count }) => [id, execution_count])).toEqual([
      ["cell-1", 1],
      ["injected-parameters", null],
      ["cell-2", 2],
    ]);
    expect(outputs(result)[2]).toMatchObject([{ data: text("8") }]);
  });

  it("takes a path typed in the terminal from the terminal's folder", async () => {
    const parameters = { source: 'let log: string = "a.csv"; // path', tags: ["parameters"] };
    const read = 'import { readText } from "wetside/notebook";\nawait readText(log)';
    const { folder, file: made } = await notebookFile([parameters, read], { "mine.csv": "mine" });
    const typed = relative(process.cwd(), join(folder, "mine.csv"));
    // As deep below the folder as the typed path climbs: from there it cannot name the same file.
    const levels = typed.split(sep).map(() => "deep");
    const deep = join(folder, ...levels);
    const file = join(deep, "trial.ipynb");
    await mkdir(deep, { recursive: true });
    await rename(made, file);
    const result = await runNotebook({ file, settings: new Map([["log", typed]]) });
    expect(outputs(result)[2]).toMatchObject([{ data: text("mine") }]);
    expect(result.notebook.cells[1]?.source).toBe(
      `log = "${levels.map(() => "../").join("")}mine.csv";`,
    );
  });

  it("refuses the path of a file that is neither here nor beside the notebook, before any cell runs", async () => {
    const source =
      'let log = "../a.csv"; // path\nlet beside = "b.csv"; // plain name\nlet more = "";';
    const cells = [{ source, tags: ["parameters"] }, "[log, beside, more]"];
    const { folder, file } = await notebookFile(cells, { "strips.csv": "" });
    const set = (name: string, value: string) =>
      runNotebook({ file, settings: new Map([[name, value]]) });
    const nowhere = "there is no such file, seen from here or from the notebook's folder";
    await expect(set("log", "strip.csv")).rejects.toThrow(
      `--set: log is "strip.csv"; ${nowhere} (did you mean strips.csv?)`,
    );
    await expect(set("log", `${folder}/strip.csv`)).rejects.toThrow(`mean ${folder}/strips.csv?)`);
    await expect(set("beside", "no-such/b.csv")).rejects.toThrow(nowhere);
    await expect(set("more", "no-such/b.csv")).rejects.toThrow(nowhere);
    await expect(set("log", folder)).rejects.toThrow("that is a folder");
    for (const [name, value] of [
      ["log", ""],
      ["log", "strips.csv"],
      ["beside", "c.csv"],
      ["more", "7/8"],
    ] as const) {
      const { notebook } = await set(name, value);
      expect(notebook.cells[1]?.source).toBe(`${name} = ${JSON.stringify(value)};`);
    }
  });

  it("keeps an expected error as an output and goes on", async () => {
    const tags = ["raises-exception"];
    const result = await run(["1", { source: 'throw new RangeError("too hot");', tags }, "2"]);
    expect(outputs(result)[1]).toEqual([
      {
        output_type: "error",
        ename: "RangeError",
        evalue: "too hot",
        traceback: ["RangeError: too hot"],
      },
    ]);
    expect(outputs(result)[2]).toMatchObject([{ data: text("2") }]);
  });

  it("keeps what async cells show in the cell that showed it", async () => {
    const slow =
      'const slow = { [Symbol.for("Jupyter.display")]: () => new Promise((done) => setTimeout(() => done({ "text/plain": "slow" }), 30)) };';
    const result = await run([
      `import { show } from "wetside/notebook";\n${slow}`,
      "show(slow);",
      "slow",
      "show(slow)",
    ]);
    expect(
      outputs(result).map((each) =>
        each.map((one) => ("data" in one ? one.data["text/plain"] : one)),
      ),
    ).toEqual([[], ["slow"], ["slow"], ["slow"]]);
  });

  it("carries long outputs whole", async () => {
    const result = await run(['console.log("x".repeat(3_000_000));\n"é".repeat(200_000)']);
    const [stream, last] = outputs(result)[0] ?? [];
    expect(stream).toMatchObject({ text: `${"x".repeat(3_000_000)}\n` });
    expect(last).toMatchObject({ data: text("é".repeat(200_000)) });
  });

  it("prints warnings of the process without its number", async () => {
    const result = await run([
      'const p = globalThis["process"];\np.emitWarning("bath is old");',
      "await new Promise((done) => setTimeout(done, 20));",
    ]);
    expect(JSON.stringify(outputs(result))).toContain("Warning: bath is old");
    expect(JSON.stringify(outputs(result))).not.toMatch(/node:\d+/);
  });

  it("runs a notebook without code", async () => {
    expect((await run(["# Only words"])).notebook.cells).toHaveLength(1);
  });
});

describe("a run that fails", { timeout: SLOW }, () => {
  it("prints an input error's message alone, with cell, heading and line", async () => {
    const { message } = await failure([
      "# T\n\n## The day",
      'import { InputError } from "wetside";',
      '// dilute\nconst a = 1;\nthrow new InputError("dilute", "parts", 0, "write parts greater than 0");',
      "3",
    ]);
    expect(message).toBe(
      'FILE stopped\n  cell 2 (under “The day”), line 3\n    throw new InputError("dilute", "parts", 0, "write parts greater than 0");\n  dilute: parts is 0; write parts greater than 0',
    );
  });
  it("does the same for every kind of input error", async () => {
    const { problem } = await failure([
      'import { InputError } from "wetside";\nclass LogProblem extends InputError {\n  override readonly name = "LogProblem";\n}\nthrow new LogProblem("f", "a", 1, "write 2");',
    ]);
    expect(problem?.message).toBe("f: a is 1; write 2");
  });
  it("names the line of the cell that called, and the one of another cell it came from", async () => {
    const { problem } = await failure([
      "const f = () => {\n  throw new TypeError('no bath');\n};",
      "1;\nf();",
    ]);
    expect(problem).toMatchObject({ cell: 2, line: 2, code: "f();" });
    expect(problem?.message).toBe("TypeError: no bath (from line 2 of cell 1)");
  });
  it("names a missing file and the one that was probably meant", async () => {
    const read = 'import { readText } from "wetside/notebook";\nawait readText("strip.csv")';
    const { problem } = await failure([read], { "strips.csv": "" });
    expect(problem).toMatchObject({ cell: 1, line: 2 });
    expect(problem?.message).toMatch(
      /"strip.csv"; there is no such file; .*did you mean ".\/strips.csv"\?/,
    );
  });
  it("names the import of a package that is not installed, and of a name that does not exist", async () => {
    const missing = await failure(["1", 'import { a } from "no-such-package";\na']);
    expect(missing.problem).toMatchObject({ cell: 2, line: 1 });
    expect(missing.problem?.message).toMatch(/"no-such-package" is not installed/);
    const name = await failure(["1", '// c\nimport { noSuchName } from "wetside";\nnoSuchName']);
    expect(name.problem).toMatchObject({ cell: 2, line: 2 });
    expect(name.problem?.message).toBe('"wetside" has no export named noSuchName');
    const local = await failure(['import a from "./nothing.ts";\na']);
    expect(local.problem).toMatchObject({ cell: 1, line: 1 });
  });
  it("names a promise that nothing waited for", async () => {
    const { problem } = await failure([
      'Promise.reject(new Error("late"));\nawait new Promise((done) => setTimeout(done, 50));',
    ]);
    expect(problem).toMatchObject({ cell: 1 });
    expect(problem?.message).toMatch(/late .*write await before it/);
  });
  it("stops a cell that never ends and says which", async () => {
    const { problem } = await failure(
      ["1", "let n = 0;\nwhile (true) n++;\nn"],
      {},
      { timeoutSeconds: 20 },
    );
    expect(problem).toMatchObject({ cell: 2 });
    expect(problem?.message).toMatch(/had not ended after 20 s and was stopped/);
  });
  it("names a cell that waits for what never comes", async () => {
    const { problem } = await failure(["1", "await new Promise(() => {});"]);
    expect(problem).toMatchObject({ cell: 2 });
    expect(problem?.message).toMatch(/waits for something that never comes/);
  });
  it("does not let a cell end the process", async () => {
    const { problem } = await failure(['1;\nglobalThis["process"].exit(0);']);
    expect(problem).toMatchObject({ cell: 1, line: 2 });
    expect(problem?.message).toMatch(/cannot end the process/);
  });
  it("says so when a timer that a cell started goes on for ever", async () => {
    const { problem } = await failure(
      ["setInterval(() => {}, 10);\n1"],
      {},
      { timeoutSeconds: 20 },
    );
    expect(problem?.message).toMatch(/^all cells ran, but something they started goes on/);
  });
  it("says so when a cell tagged raises-exception raises none", async () => {
    const { problem } = await failure([{ source: "1;", tags: ["raises-exception"] }]);
    expect(problem).toMatchObject({ cell: 1 });
    expect(problem?.message).toMatch(/but raised none/);
  });
  it("shows a value that is thrown and is no error", async () => {
    expect((await failure(['throw "plain words";'])).problem?.message).toMatch(/plain words/);
  });
  it("reports everything a rule forbids before any cell runs", async () => {
    const { message } = await failure([
      'throw new Error("not reached");',
      'import fs from "node:fs";',
      "for (;;) {}",
    ]);
    expect(message).toMatch(/^FILE cannot be run\n {2}cell 2 .*\n.*\n.*node:fs.*\n {2}cell 3 /s);
    expect(message).not.toContain("not reached\n");
  });
  it("reports a display method that fails at its cell", async () => {
    const bad = '({ [Symbol.for("Jupyter.display")]() { throw new Error("cannot draw"); } })';
    expect((await failure(["1", bad])).problem).toMatchObject({ cell: 2 });
  });
  it("reports a figure that cannot be drawn, by cell", async () => {
    const bad =
      '({ kind: "vega-lite", title: "T", description: "D", specification: { mark: "nonsense" } })';
    const { problem } = await failure(["1", bad]);
    expect(problem).toMatchObject({ cell: 2 });
    expect(problem?.message).toMatch(/figure cannot be drawn/);
  });
});

describe("a file that is no notebook", () => {
  it("is refused by name", async () => {
    const { file } = await notebookFile([]);
    await writeFile(file, "PK");
    await expect(runNotebook({ file })).rejects.toThrow(/that is not a notebook/);
  });
});
