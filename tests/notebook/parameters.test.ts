import { describe, expect, it } from "vitest";
import { codeCells } from "../../lib/notebook/code-cells.ts";
import { injectSettings } from "../../lib/notebook/inject.ts";
import { parametersOf } from "../../lib/notebook/parameters.ts";
import { parseSetting } from "../../lib/notebook/setting.ts";
import { draftNotebook } from "./fixture.ts";

const SOURCE = `let days: number = 30; // d, 1 to 90
let log: string = "../data/strips.csv"; // path
let strict: boolean = false; // yes or no
let line: "film" | "paper" = "film"; // which line
let aims: readonly number[] = [0.5, 1]; // densities
// kept above
let name = "x", cap = -0.5;
let until: string | null = null; // date
let rows: { a: number }[] = []; // anything`;
const notebook = draftNotebook(["# T", { source: SOURCE, tags: ["parameters"] }, "days"]);
const read = parametersOf((await codeCells(notebook)).cells);

function set(name: string, text: string): unknown {
  const parameter = read.parameters.find((each) => each.name === name);
  if (parameter === undefined) throw new Error(`no parameter ${name}`);
  return parseSetting(parameter, text);
}
function inject(settings: Readonly<Record<string, string>>) {
  return injectSettings(notebook, read, new Map(Object.entries(settings)));
}

describe("the parameters of a notebook", () => {
  it("are read with value and comment", () => {
    expect(read.problems).toEqual([]);
    expect(read.parameters.map(({ name }) => name).join(" ")).toBe(
      "days log strict line aims name cap until rows",
    );
    expect(read.parameters[0]).toMatchObject({ written: "30", comment: "d, 1 to 90" });
    expect(read.parameters[5]).toMatchObject({ name: "name", comment: "kept above" });
  });
  it("take values of their declared type", () => {
    expect(set("days", "7")).toBe(7);
    expect(set("days", "-1.5e2")).toBe(-150);
    expect(set("days", "+3")).toBe(3);
    expect(set("days", ".5")).toBe(0.5);
    expect(set("log", "30")).toBe("30");
    expect(set("log", "")).toBe("");
    expect(set("strict", "true")).toBe(true);
    expect(set("line", "paper")).toBe("paper");
    expect(set("aims", "[0.4, 2]")).toEqual([0.4, 2]);
    expect(set("cap", "-1")).toBe(-1);
    expect(set("until", "null")).toBe(null);
    expect(set("until", "2024-05-01")).toBe("2024-05-01");
    expect(set("rows", '[{"a":1}]')).toEqual([{ a: 1 }]);
  });
  it("refuse values of another type and say what to write", () => {
    expect(() => set("days", "many")).toThrow('--set: days is "many"; write a number (d, 1 to 90)');
    expect(() => set("days", "")).toThrow(/write a number/);
    expect(() => set("days", "1e999")).toThrow(/write a number/);
    expect(() => set("days", "0x10")).toThrow(/write a number/);
    expect(() => set("days", "37,5")).toThrow(/decimals with a point: 37.5/);
    expect(() => set("strict", "yes")).toThrow(/write true or false/);
    expect(() => set("line", "papr")).toThrow(/write "film" or "paper"/);
    expect(() => set("aims", "0.5")).toThrow(/a list in brackets, each item a number/);
    expect(() => set("aims", '["a"]')).toThrow(/a list in brackets/);
  });
  it("are set by a cell of plain assignments after their own", () => {
    const changed = inject({ days: "7", line: "paper" });
    expect(changed.cells.map(({ id }) => id)).toEqual([
      "cell-1",
      "cell-2",
      "injected-parameters",
      "cell-3",
    ]);
    expect(changed.cells[2]).toMatchObject({
      source: 'days = 7;\nline = "paper";',
      metadata: { tags: ["injected-parameters"] },
    });
    expect(injectSettings(changed, read, new Map([["days", "8"]])).cells).toHaveLength(4);
    expect(injectSettings(notebook, read, new Map())).toBe(notebook);
  });
  it("refuse a name that is none of them, with the list and the nearest", () => {
    expect(() => inject({ dayz: "7" })).toThrow(
      /its parameters are days, log, .* \(did you mean days\?\)/,
    );
    const none = { cell: undefined, parameters: [], problems: [] };
    expect(() => injectSettings(notebook, none, new Map([["a", "1"]]))).toThrow(
      /no parameters cell/,
    );
  });
  it("stand in one cell of let declarations", async () => {
    const bad = { source: "const a = 1;\nlet b;\nconsole.log(b);", tags: ["parameters"] };
    const { cells } = await codeCells(
      draftNotebook([bad, { source: "let c = 1;", tags: ["parameters"] }]),
    );
    const lines = parametersOf(cells).problems.map(({ cell, line }) => `${cell}:${line}`);
    expect(lines).toEqual(["2:0", "1:1", "1:2", "1:3"]);
  });
});
