import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as records from "wetside/records";

const text = readFileSync(new URL("../../docs/data-dictionary.md", import.meta.url), "utf8");
const examples = [...text.matchAll(/```csv (\w+)\n([\s\S]*?)```/g)].map(
  ([, reader = "", csv = ""]) => ({ reader, csv }),
);

const readers: Readonly<Record<string, (csv: string) => records.ParsedLog<unknown>>> = {
  parseStripLog: (csv) => records.parseStripLog(csv, { file: "x.csv" }),
  parseStripBatchRegister: (csv) => records.parseStripBatchRegister(csv, { file: "x.csv" }),
  parseProductionLog: (csv) => records.parseProductionLog(csv, { file: "x.csv" }),
  parsePumpLog: (csv) => records.parsePumpLog(csv, { file: "x.csv" }),
  parseTemperatureLog: (csv) => records.parseTemperatureLog(csv, { file: "x.csv" }),
  parseRemakesLog: (csv) => records.parseRemakesLog(csv, { file: "x.csv" }),
  parseCheckLog: (csv) => records.parseCheckLog(csv, { file: "x.csv" }),
  parseWorkLog: (csv) => records.parseWorkLog(csv, { file: "x.csv" }),
};

/** The part of the page under a heading of the second level. */
function section(title: string): string {
  const start = text.indexOf(`\n## ${title}\n`);
  const end = text.indexOf("\n## ", start + 4);
  return start < 0 ? "" : text.slice(start, end < 0 ? undefined : end);
}

describe("the data dictionary", () => {
  it("has an example to copy for every reader of a log", () => {
    expect(examples.map((each) => each.reader)).toEqual(Object.keys(readers));
  });

  for (const { reader, csv } of examples) {
    it(`its example for ${reader} is read without a problem or a warning`, () => {
      const log = readers[reader]?.(csv);
      expect(log?.problems).toEqual([]);
      expect(log?.warnings).toEqual([]);
      expect(log?.rows.length).toBeGreaterThan(0);
    });
  }

  it("explains every column that a reader asks for when it finds none", () => {
    const titles: Readonly<Record<string, string>> = {
      parseStripLog: "Control-strip log",
      parseStripBatchRegister: "Strip-batch register",
      parseProductionLog: "Production log",
      parsePumpLog: "Pump log",
      parseTemperatureLog: "Bath-temperature log",
      parseRemakesLog: "Remakes log",
      parseCheckLog: "Check log",
      parseWorkLog: "Work log",
    };
    for (const [reader, read] of Object.entries(readers)) {
      const advice = read("x,y\n1,2\n").problems[0]?.advice ?? "";
      const asked = /above it: ([^;]+);/.exec(advice)?.[1]?.split(",") ?? [];
      const told = section(titles[reader] ?? "");
      const patches = section("Control-strip log");
      expect(asked.length).toBeGreaterThan(2);
      for (const column of asked) {
        const where = column.startsWith("remade_") ? "`remade_…`" : `\`${column}\``;
        expect(told.includes(where) || patches.includes(where), `${reader}: ${column}`).toBe(true);
      }
    }
  });

  it("explains the header of every example", () => {
    for (const { csv } of examples) {
      for (const column of csv.split("\n")[0]?.split(",") ?? []) {
        const where = column.startsWith("remade_") ? "`remade_…`" : `\`${column}\``;
        expect(text).toContain(where);
      }
    }
  });
});
