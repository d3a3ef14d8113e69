import { describe, expect, it } from "vitest";
import { parseDensitometerLog } from "wetside/records";

const HEADER = "read_at,operator,patch,density";
const parse = (...rows: string[]) =>
  parseDensitometerLog([HEADER, ...rows].join("\n"), { file: "gauge.csv" });

describe("a densitometer log", () => {
  it("gives one reading a row, also below zero", () => {
    const log = parse("2026-07-06T09:12,MB,strip 1,0.752", "2026-07-06T09:13,MB,white,-0.003");
    expect(log.problems).toEqual([]);
    expect(log.rows.map((row) => row.density)).toEqual([0.752, -0.003]);
  });

  it("keeps the good rows and says what is wrong with the others", () => {
    const log = parse(
      "2026-07-06T09:12,MB,strip 1,0.752",
      "2026-07-06T09:13,MB,strip 2,752",
      "2026-07-06T09:14,,strip 3,0.75",
      "2026-07-06T09:12,MB,strip 1,0.751",
    );
    expect(log.rows).toHaveLength(1);
    expect(log.rowsRefused).toBe(3);
    expect(log.problems.map((each) => [each.line, each.column])).toEqual([
      [3, "density"],
      [4, "operator"],
      [5, "read_at"],
    ]);
  });

  it("takes date and time from two columns, and names a missing one", () => {
    const text = "date,time,operator,patch,density\n2026-07-06,09:12,MB,strip 1,0.75";
    expect(parseDensitometerLog(text, { file: "g.csv" }).rows[0]?.readAt).toBe("2026-07-06T09:12");
    const { problems } = parseDensitometerLog("read_at,operator,density\n", { file: "g.csv" });
    expect(problems.map((each) => JSON.stringify(each)).join()).toContain("patch");
  });
});
