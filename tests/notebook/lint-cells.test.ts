import { describe, expect, it } from "vitest";
import { codeCells } from "../../lib/notebook/code-cells.ts";
import { lintCells } from "../../lib/notebook/lint-cells.ts";
import { type Draft, draftNotebook } from "./fixture.ts";

async function faults(...drafts: readonly Draft[]): Promise<readonly string[]> {
  const { cells, problems } = await codeCells(draftNotebook(drafts));
  return [...problems, ...lintCells(cells)].map(
    ({ cell, line, message }) => `${cell}:${line} ${message}`,
  );
}

describe("the rules for cells", () => {
  it("let ordinary cells pass", async () => {
    const first = 'import { dilute } from "wetside";\nimport { readText } from "wetside/notebook";';
    const second = "for (const a of [1]) console.log(a);\nconst process = 1;\nprocess";
    expect(await faults(first, second, "({ Buffer: 1, require: 2 }).Buffer")).toEqual([]);
  });
  it("name an error of syntax by cell and line", async () => {
    const [fault] = await faults("1", "const a = 2;\nlet b = ;");
    expect(fault).toMatch(/^2:2 Unexpected token/);
  });
  it("refuse Node's own modules, also by their bare names, and addresses", async () => {
    const [a, b, c, d] = await faults(
      'import fs from "node:fs";\nimport { join } from "path";',
      'import x from "npm:danfojs";',
      'const m = await import("node:os");',
    );
    expect(a).toMatch(/^1:1 import from "node:fs": that module is Node's own/);
    expect(b).toMatch(/^1:2 import from "path"/);
    expect(c).toMatch(/^2:1 .*"npm:danfojs".* bare name/);
    expect(d).toMatch(/^3:1 .*"node:os"/);
  });
  it("refuse what a browser does not have", async () => {
    const found = await faults(
      "Deno.readTextFile('a')",
      "1;\nprocess.env.HOME",
      "import.meta.url",
      "require('x')",
    );
    expect(found.map((each) => each.split(" ").slice(0, 2).join(" "))).toEqual([
      "1:1 Deno",
      "2:2 process",
      "3:1 import.meta",
      "4:1 require",
    ]);
  });
  it("refuse a name declared in two cells and say where it was first", async () => {
    expect(
      await faults("const rate = 1;", "const { a, rate } = { a: 1, rate: 2 };\nfunction a() {}"),
    ).toEqual([
      '2:1 the name "rate" is already declared in cell 1; give this one another name',
      '2:2 the name "a" is already declared above in this cell; give this one another name',
    ]);
    expect(await faults("interface A {}", "type A = 1;")).toHaveLength(1);
  });
  it("let the same import stand in several cells, but not the same name for two things", async () => {
    const same = 'import { dilute } from "wetside";';
    expect(await faults(same, same, 'import { dilute, other } from "wetside";')).toEqual([]);
    expect(await faults(same, 'import { blend as dilute } from "wetside";')).toHaveLength(1);
    expect(await faults(same, "const dilute = 1;")).toHaveLength(1);
  });
  it("refuse a loop as last statement", async () => {
    expect((await faults("1;\nfor (const a of []) a;"))[0]).toMatch(
      /^1:2 a loop as last statement/,
    );
    expect(await faults("while (false) {}")).toHaveLength(1);
    expect(await faults("for (const a of []) a;\n1")).toEqual([]);
  });
  it("refuse exports", async () => {
    expect((await faults("export const a = 1;"))[0]).toMatch(/^1:1 a cell cannot export/);
  });
  it("count only cells with code in them, as Jupyter does, and not the injected one", async () => {
    const injected = { source: "days = 1;", tags: ["injected-parameters"] };
    const found = await faults("# title", "let days = 2;", injected, "  ", "while (false) {}");
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/^2:1 /);
  });
});
