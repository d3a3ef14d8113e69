import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  LogError,
  parseStripBatchRegister,
  parseStripLog,
  problemMessage,
  requireCleanLog,
} from "wetside/records";

const folder = new URL("fixtures/", import.meta.url);
const REGISTER = "strip-batches.csv";
const batches = requireCleanLog(parseStripBatchRegister(readAsText(REGISTER), { file: REGISTER }));

function readAsText(name: string): string {
  return new TextDecoder().decode(readFileSync(new URL(name, folder)));
}

function read(name: string, decimalComma = false) {
  return parseStripLog(readAsText(name), { file: name, batches, decimalComma });
}

function thrownMessage(work: () => unknown): string {
  try {
    work();
  } catch (error) {
    return error instanceof Error ? error.message : "not an Error";
  }
  return "nothing thrown";
}

const EXPORT = "open it where it was made and export (save a copy) as CSV, UTF-8";
const ROWS = "1 of 2 rows cannot be used";

/** The whole message that each file must get. */
const messages: Readonly<Record<string, readonly string[]>> = {
  "good.csv": [],
  "byte-order-mark-crlf.csv": [],
  "carriage-returns.csv": [],
  "tabs.csv": [],
  "decimal-comma.csv": [
    `decimal-comma.csv: 1 problem; ${ROWS}`,
    '  line 3, ld_r "0,79": a decimal comma; write 0.79, or pass decimalComma: true if the whole file is written so',
  ],
  "missing-column.csv": [
    "missing-column.csv: 2 problems; 1 of 1 rows cannot be used",
    '  line 1, strip_batch: the column is missing; add a column "strip_batch" to the header and every row, or pass columns: { strip_batch: "…" } if it is one of those not used ("batch of strips")',
    '  line 1, hd_b: the column is missing; add a column "hd_b" to the header and every row, or pass columns: { hd_b: "…" } if it is one of those not used ("batch of strips")',
  ],
  "same-minute.csv": [
    "same-minute.csv: 1 problem; 1 of 3 rows cannot be used",
    '  line 4, taken_at "2026-08-14T07:10": two strips of one process at the same minute (the other is on line 3); write the minute at which each was taken, or delete the one that is wrong',
  ],
  "unregistered-batch.csv": [
    `unregistered-batch.csv: 1 problem; ${ROWS}`,
    '  line 3, strip_batch "P-99": a strip batch nobody registered; write P-18, or register the batch: its reference strip and its correction',
  ],
  "density-of-12.csv": [
    `density-of-12.csv: 1 problem; ${ROWS}`,
    '  line 3, ld_b "12": outside the range of a density; write a number from 0 to 4.5; is it 1.2 or 0.12 without its point?',
  ],
  "out-of-order.csv": [
    "out-of-order.csv: 1 problem; 0 of 2 rows cannot be used",
    '  line 3, taken_at "2026-08-13T07:10": earlier than the row before it (2026-08-14T07:10 on line 2); correct whichever of the two is wrong, or put the rows in order of time',
  ],
  "ragged.csv": [
    `ragged.csv: 1 problem; ${ROWS}`,
    '  line 3 "2026-08-14T07:10,colour-paper,P-18,OW,0.10,0.11,0.10,0.79,0…": the row has 9 cells, the header 13; write every cell, also at the end of the row',
  ],
  "empty.csv": [
    "empty.csv: 1 problem",
    "  line 1: the file is empty; write the header line and one line a reading",
  ],
  "header-only.csv": [
    "header-only.csv: 1 problem",
    "  line 1: the file holds a header and no rows; add one line a reading",
  ],
  "spreadsheet-renamed.csv": [
    "spreadsheet-renamed.csv: 1 problem",
    `  line 1: the file is a spreadsheet (or another ZIP archive), not CSV; ${EXPORT}`,
  ],
  "old-spreadsheet-renamed.csv": [
    "old-spreadsheet-renamed.csv: 1 problem",
    `  line 1: the file is an old binary spreadsheet, not CSV; ${EXPORT}`,
  ],
  "utf-16.csv": [
    "utf-16.csv: 1 problem",
    `  line 1: the file is UTF-16 text, not UTF-8; ${EXPORT}`,
  ],
};

describe("files as labs hand them in", () => {
  for (const [name, lines] of Object.entries(messages)) {
    const fate = lines.length === 0 ? "is read without a complaint" : "gets its whole message";
    it(`${name} ${fate}`, () => {
      expect(problemMessage(read(name))).toBe(lines.join("\n"));
    });
    if (lines.length === 0) continue;
    it(`${name} stops strict work with that message and nothing else`, () => {
      const strict = () => requireCleanLog(read(name));
      expect(strict).toThrow(LogError);
      expect(thrownMessage(strict)).toBe(lines.join("\n"));
    });
  }

  it("every file in the folder has its message here, but the register; the semicolon one below", () => {
    const named = [...Object.keys(messages), "decimal-comma-semicolons.csv", REGISTER].sort();
    const files = readdirSync(folder).filter((name) => name.endsWith(".csv"));
    expect(files.sort()).toEqual(named);
  });

  it("keeps the good row beside every bad one", () => {
    for (const name of ["decimal-comma.csv", "density-of-12.csv", "ragged.csv"]) {
      expect(read(name).rows.map((strip) => strip.takenAt)).toEqual(["2026-08-13T07:10"]);
    }
  });

  it("reads byte order mark, blank lines and every kind of line end to the same strips", () => {
    const bare = (name: string) => read(name).rows.map(({ source, ...strip }) => strip);
    const good = bare("good.csv");
    expect(good).toHaveLength(2);
    for (const name of ["byte-order-mark-crlf.csv", "carriage-returns.csv", "tabs.csv"]) {
      expect(bare(name)).toEqual(good);
    }
  });

  it("counts lines as an editor does, blank lines and all", () => {
    expect(read("byte-order-mark-crlf.csv").rows.map((strip) => strip.source?.line)).toEqual([
      2, 4,
    ]);
  });

  it("says that a file is separated by semicolons, and complains of every decimal comma", () => {
    const log = read("decimal-comma-semicolons.csv");
    expect(log.warnings).toEqual([
      "decimal-comma-semicolons.csv: cells are separated by semicolons, not commas",
    ]);
    expect(log.rows).toHaveLength(1);
    expect(log.problems).toHaveLength(9);
    expect(new Set(log.problems.map(({ line, problem }) => `${line} ${problem}`))).toEqual(
      new Set(["3 a decimal comma"]),
    );
    expect(log.problems[0]).toMatchObject({ column: "dmin_r", value: "0,10" });
  });

  it("reads decimal commas when the caller states them, and then refuses points", () => {
    const log = read("decimal-comma-semicolons.csv", true);
    expect(log.rows).toHaveLength(1);
    expect(log.rows[0]?.patches.ld).toEqual({ red: 0.79, green: 0.81, blue: 0.77 });
    expect(log.problems[0]).toMatchObject({
      line: 2,
      value: "0.10",
      problem: "a decimal point in a file said to use decimal commas",
      advice: "write 0,10, or leave out decimalComma: true",
    });
  });
});
