import { describe, expect, it } from "vitest";
import { InputError } from "wetside";
import { LogError, parseProductionLog, problemMessage, requireCleanLog } from "wetside/records";

const rows = (n: number) =>
  Array.from({ length: n }, (_, i) => `2026-08-14,colour-paper,format-${i},x`).join("\n");
const log = (n: number) =>
  parseProductionLog(`date,process,format,count\n${rows(n)}\n`, { file: "production.csv" });

describe("the message of a log's problems", () => {
  it("is empty when there are none", () => {
    const clean = parseProductionLog(
      "date,process,format,count\n2026-08-14,colour-paper,10x15cm,9\n",
      { file: "production.csv" },
    );
    expect(problemMessage(clean)).toBe("");
    expect(requireCleanLog(clean)).toBe(clean.rows);
  });

  it("lists so many and counts all, while the list itself keeps all", () => {
    const lines = problemMessage(log(5000)).split("\n");
    expect(lines[0]).toBe("production.csv: 5000 problems; 5000 of 5000 rows cannot be used");
    expect(lines).toHaveLength(22);
    expect(lines[21]).toBe("  … and 4980 more");
    expect(log(5000).problems).toHaveLength(5000);
    expect(problemMessage(log(30), 30).split("\n")).toHaveLength(31);
    expect(problemMessage(log(3), 0).split("\n")).toHaveLength(3);
  });

  it("names line, column, value, what is wrong and what to write", () => {
    expect(problemMessage(log(1)).split("\n")[1]).toBe(
      '  line 2, count "x": text where a number belongs; write the count, or leave out the row',
    );
  });

  it("is the message of the error that strict work stops with", () => {
    try {
      requireCleanLog(log(2));
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
      expect(error).toBeInstanceOf(LogError);
      if (!(error instanceof LogError)) return;
      expect(error.message).toBe(problemMessage(log(2)));
      expect(error.problems).toHaveLength(2);
      expect(error.name).toBe("LogError");
    }
  });
});
