import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { checkNotebookTypes } from "../../lib/notebook/check-types.ts";
import { type Draft, notebookFile } from "./fixture.ts";

const SLOW = 300_000;

async function faults(drafts: readonly Draft[], beside = {}): Promise<readonly string[]> {
  const { file } = await notebookFile(drafts, beside);
  const [report] = await checkNotebookTypes([file]);
  return (report?.problems ?? []).map(({ cell, line, message }) => `${cell}:${line} ${message}`);
}

describe("the types in a notebook's cells", { timeout: SLOW }, () => {
  it("pass when they are right, across cells, also where one ends without a semicolon", async () => {
    const first =
      'import { requireNumber } from "wetside";\nimport { readText } from "wetside/notebook";';
    const again =
      'import { requireNumber } from "wetside";\nconst n: number = requireNumber("f", "a", 1, {})';
    expect(await faults([first, again, "(n + 1)", "await readText('a')"])).toEqual([]);
  });
  it("are named by cell and line when they are wrong", async () => {
    const found = await faults([
      "const a = 1;",
      "# text",
      "a;\nconst b: string = a;",
      "(b.nothing)",
    ]);
    expect(found).toEqual([
      "2:2 Type 'number' is not assignable to type 'string'. (TS2322)",
      "3:1 Property 'nothing' does not exist on type 'string'. (TS2339)",
    ]);
  });
  it("follow the settings of the nearest tsconfig.json", async () => {
    const cells = ["const list: number[] = [];\nconst first: number = list[0];"];
    const loose = JSON.stringify({ compilerOptions: { strict: true, module: "NodeNext" } });
    expect(await faults(cells, { "tsconfig.json": loose })).toEqual([]);
    const strict = JSON.stringify({
      compilerOptions: { strict: true, module: "NodeNext", noUncheckedIndexedAccess: true },
    });
    expect(await faults(cells, { "tsconfig.json": strict })).toHaveLength(1);
  });
  it("do not take a parameter's value in the notebook for the only one", async () => {
    const parameters = { source: 'let line: "film" | "paper" = "film";', tags: ["parameters"] };
    expect(await faults([parameters, 'line === "paper"'])).toEqual([]);
    expect(await faults([parameters, 'line === "glass"'])).toHaveLength(1);
  });
  it("know what a browser has, and no name that only Node has", async () => {
    expect(await faults(["document.title"])).toEqual([]);
    expect((await faults(["process.cwd()"]))[0]).toMatch(/^1:1 .*process/);
  });
  it("are checked for several files at once, in order, faulty syntax included", async () => {
    const good = await notebookFile(["1"]);
    const bad = await notebookFile(["const a = ;"]);
    const other = join(good.folder, "other.ipynb");
    await writeFile(other, '{"cells":[],"metadata":{},"nbformat":4,"nbformat_minor":5}');
    const reports = await checkNotebookTypes([good.file, bad.file, other]);
    expect(reports.map(({ file, problems }) => [file, problems.length])).toEqual([
      [good.file, 0],
      [bad.file, 1],
      [other, 0],
    ]);
  });
});
