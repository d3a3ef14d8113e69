import { describe, expect, it } from "vitest";
import { formatStripLog, parseStripLog } from "wetside/records";

const file = "strips.csv";
const HEADER = "taken_at,process,strip_batch,operator,ld_r,ld_g,ld_b";
const row = (process: string, batch: string) =>
  `${HEADER}\n2026-08-14T07:10,${process},${batch},MB,0.80,0.81,0.79\n`;
const batches = [
  { id: "N-42", process: "colour-negative" },
  { id: "P-18", process: "colour-paper" },
];

describe("a control-strip log", () => {
  it("gives strips with their densities and where they stood", () => {
    expect(parseStripLog(row("colour-paper", "P-18"), { file, batches }).rows).toEqual([
      {
        takenAt: "2026-08-14T07:10",
        process: "colour-paper",
        stripBatch: "P-18",
        operator: "MB",
        patches: { ld: { red: 0.8, green: 0.81, blue: 0.79 } },
        source: { file, line: 2 },
      },
    ]);
  });

  it("reports a batch registered for another process", () => {
    expect(parseStripLog(row("colour-paper", "N-42"), { file, batches }).problems).toMatchObject([
      {
        column: "strip_batch",
        value: "N-42",
        problem: "a batch registered for colour-negative, not colour-paper",
      },
    ]);
  });

  it("does not check batches it was not told of", () => {
    expect(parseStripLog(row("colour-paper", "Q"), { file }).problems).toEqual([]);
  });

  it("reports a batch when none at all is registered", () => {
    const { problems } = parseStripLog(row("colour-paper", "Q"), {
      file,
      batches: [],
      processes: ["colour-paper"],
    });
    expect(problems[0]?.advice).toContain("write a registered strip batch, or register the batch");
  });

  it("knows the usual two processes, and the lab's own when they are named", () => {
    expect(parseStripLog(row("colour-nagative", "Q"), { file }).problems[0]).toMatchObject({
      problem: "a process nobody registered",
      advice: 'write colour-negative, or name the lab\'s own with processes: ["…"]',
    });
    const processes = ["reversal"];
    expect(parseStripLog(row("reversal", "Q"), { file, processes }).problems).toEqual([]);
    expect(parseStripLog(row("colour-paper", "Q"), { file, processes }).rows).toEqual([]);
  });

  it("leaves its arguments as they were", () => {
    const options = Object.freeze({ file, batches: Object.freeze([...batches]) });
    expect(() => parseStripLog(row("colour-paper", "P-18"), options)).not.toThrow();
  });

  it("a patch whose name cannot be a column is refused when it is written", () => {
    const strip = {
      takenAt: "2026-08-14T07:10",
      process: "colour-paper",
      stripBatch: "P-18",
      operator: "MB",
    };
    const grey = { red: 0.8, green: 0.8, blue: 0.8 };
    expect(() => formatStripLog([{ ...strip, patches: { LD: grey } }])).toThrow("name patches as");
    expect(() => formatStripLog([{ ...strip, patches: { dmin: grey } }])).toThrow("dMin");
    const bad = { ld: { ...grey, red: Number.NaN } };
    expect(() => formatStripLog([{ ...strip, patches: bad }])).toThrow("a finite number");
    expect(() => formatStripLog([{ ...strip, patches: { ld: grey } }], { decimals: -1 })).toThrow(
      "decimals",
    );
  });
});
