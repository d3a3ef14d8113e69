import { describe, expect, it } from "vitest";
import { formatCheckLog, formatWorkLog, parseCheckLog, parseWorkLog } from "wetside/records";

const checks = (...rows: string[]) =>
  parseCheckLog(["read_at,line,check,value", ...rows].join("\n"), {
    file: "checks.csv",
    lines: ["film", "paper"],
  });
const work = (...rows: string[]) =>
  parseWorkLog(["done_at,line,work", ...rows].join("\n"), {
    file: "work.csv",
    kinds: ["developer-mixed", "fixer-handled"],
  });

describe("a check log", () => {
  it("keeps the good rows and says what is wrong with the others", () => {
    const log = checks(
      "2026-08-13T07:04,film,developer-time,195.4",
      "2026-08-13T07:04,flm,developer-time,195.4",
      "2026-08-13T07:05,film,developer-time,3:15",
      "2026-08-13T07:04,film,developer-time,195.9",
    );
    expect(log.rows).toHaveLength(1);
    expect(log.problems.map(({ line, column }) => [line, column])).toEqual([
      [3, "line"],
      [4, "value"],
      [5, "read_at"],
    ]);
    expect(log.problems[0]?.advice).toContain("film");
  });
  it("comes back as it was written", () => {
    const { rows } = checks("2026-08-13T07:04,film,developer-time,195.4");
    expect(checks(...formatCheckLog(rows).trim().split("\n").slice(1)).rows).toEqual(rows);
  });
  it("reports an empty file and missing columns", () => {
    expect(parseCheckLog("", { file: "checks.csv" }).problems).toHaveLength(1);
    const { problems } = parseCheckLog("read_at,line,value\n2026-08-13T07:04,film,1", {
      file: "checks.csv",
    });
    expect(problems.map(({ column }) => column)).toEqual(["check"]);
  });
});

describe("a work log", () => {
  it("keeps the good rows and names the nearest kind of work", () => {
    const log = work("2026-08-13T06:40,film,fixer-handled", "2026-08-13T06:40,film,fixer-handeld");
    expect(log.rows).toHaveLength(1);
    expect(log.problems[0]?.advice).toContain("fixer-handled");
  });
  it("comes back as it was written", () => {
    const { rows } = work("2026-08-13T06:40,film,fixer-handled");
    expect(work(...formatWorkLog(rows).trim().split("\n").slice(1)).rows).toEqual(rows);
  });
});
