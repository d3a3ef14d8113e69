import { describe, expect, it } from "vitest";
import { InputError } from "wetside";
import { LogError, parseProductionLog, problemMessage, requireCleanLog } from "wetside/records";

const rows = (n: number) =>
  Array.from({ length: n }, (_, i) => `2026-08-14,colour-paper,format-${i},x${i}`).join("\n");
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

  it("tells once, with its lines, what is wrong in the same way with the same value", () => {
    const told = (cells: readonly string[]) => {
      const all = cells.map((cell, i) => `2026-08-14,colour-paper,format-${i},${cell}`);
      const text = `date,process,format,count\n${all.join("\n")}\n`;
      return problemMessage(parseProductionLog(text, { file: "production.csv" })).split("\n");
    };
    const same = ["x", "x", "x"];
    expect(told(same)[0]).toBe("production.csv: 3 problems; 3 of 3 rows cannot be used");
    expect(told(same)[1]).toContain('  lines 2 to 4, count "x": text where');
    expect(told(same)).toHaveLength(2);
    expect(told(["x", "9", "x"])[1]).toContain('  lines 2 and 4, count "x": ');
    expect(told(["x", "x"])[1]).toContain('  lines 2 and 3, count "x": ');
    expect(told(["x", "9", "x", "x", "y"])[1]).toContain('  lines 2, 4 and 5, count "x": ');
    expect(told(["x", "9", "x", "x", "y"])[2]).toContain('  line 6, count "y": ');
    const scattered = Array.from({ length: 20 }, (_, i) => (i % 2 === 0 ? "x" : "9"));
    expect(told(scattered)[1]).toContain('  lines 2, 4, 6, 8, 10 and 5 more, count "x": ');
  });

  it("counts in the rest every problem that is not told", () => {
    const different = Array.from({ length: 25 }, (_, i) => `a,colour-paper,format,x${i % 22}`);
    const text = `date,process,format,count\n${different.join("\n")}\n`;
    const log = parseProductionLog(text, { file: "production.csv" });
    const lines = problemMessage(log, 2).split("\n");
    expect(lines[1]).toContain('  lines 2 to 26, date "a": ');
    expect(lines[3]).toBe(`  … and ${log.problems.length - 25 - 2} more`);
  });

  it("names line, column, value, what is wrong and what to write", () => {
    expect(problemMessage(log(1)).split("\n")[1]).toBe(
      '  line 2, count "x0": text where a number belongs; write the count, or leave out the row',
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
