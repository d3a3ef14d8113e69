import { describe, expect, it } from "vitest";
import { parseProductionLog, parseStripLog, parseTemperatureLog } from "wetside/records";

const HEADER = "taken_at,process,strip_batch,operator,ld_r,ld_g,ld_b";
const strip = (time: string, process = "colour-paper", density = "0.80") =>
  `2026-08-${time},${process},B-1,MB,${density},0.80,0.80`;
const read = (...rows: string[]) =>
  parseStripLog(`${[HEADER, ...rows].join("\n")}\n`, { file: "strips.csv" });

describe("strips in order of time", () => {
  it("stay in the order of the file, lines of two processes side by side or one after the other", () => {
    const mixed = read(strip("13T07:10"), strip("13T07:10", "colour-negative"), strip("14T07:10"));
    expect(mixed.problems).toEqual([]);
    const blocks = read(strip("13T07:10"), strip("14T07:10"), strip("13T07:10", "colour-negative"));
    expect(blocks.problems).toEqual([]);
    expect(blocks.rows.map((each) => each.source?.line)).toEqual([2, 3, 4]);
  });

  it("one that is too early is one problem; all rows are kept, sorted, and a warning says so", () => {
    const log = read(strip("12T07:10"), strip("14T07:10"), strip("13T07:10"), strip("15T07:10"));
    expect(log.problems).toHaveLength(1);
    expect(log.problems[0]).toMatchObject({ line: 4, column: "taken_at", rowUsed: true });
    expect(log.problems[0]?.problem).toContain("2026-08-14T07:10 on line 3");
    expect(log.rows.map((each) => each.source?.line)).toEqual([2, 4, 3, 5]);
    expect(log.warnings).toEqual([
      "strips.csv: 1 row was out of order; the rows are sorted by time",
    ]);
    expect([log.rowsRead, log.rowsRefused]).toEqual([4, 0]);
  });

  it("one mistyped far ahead does not drag all rows after it along", () => {
    const log = read(
      strip("12T07:10"),
      strip("31T07:10"),
      ...["13", "14", "15"].map((day) => strip(`${day}T07:10`)),
    );
    expect(log.problems.map((each) => each.line)).toEqual([4]);
  });
});

describe("what the file calls its times", () => {
  it("stands in the message, whether renamed or in two columns", () => {
    const rows =
      "2026-08-14T07:10,colour-paper,B,MB,1,1,1\n2026-08-13T07:10,colour-paper,B,MB,1,1,1";
    const renamed = parseStripLog(`${HEADER.replace("taken_at", "Read on")}\n${rows}\n`, {
      file: "strips.csv",
      columns: { taken_at: "Read on" },
    });
    expect(renamed.problems[0]?.column).toBe("Read on");
    const apart = parseStripLog(
      `${HEADER.replace("taken_at", "Date,Time")}\n${rows.replaceAll("T07", ",07")}\n`,
      { file: "strips.csv" },
    );
    expect(apart.problems[0]?.column).toBe("Date");
  });
});

describe("two rows at one time", () => {
  it("the second is left out and names the line of the first", () => {
    const log = read(strip("14T07:10"), strip("14T07:10", "colour-paper", "0.83"));
    expect(log.rows.map((each) => each.patches.ld?.red)).toEqual([0.8]);
    expect(log.problems[0]?.problem).toBe(
      "two strips of one process at the same minute (the other is on line 2)",
    );
    expect(log.problems[0]?.rowUsed).toBe(false);
  });

  it("an exact copy is told from another reading", () => {
    const log = read(strip("14T07:10"), strip("14T07:10"));
    expect(log.problems[0]).toMatchObject({
      problem: "the same row as on line 2",
      advice: "delete one of the two",
    });
  });

  it("a third at the same time is left out too", () => {
    const log = read(
      strip("14T07:10"),
      strip("14T07:10", "colour-paper", "0.83"),
      strip("14T07:10", "colour-paper", "0.84"),
    );
    expect([log.rows.length, log.rowsRefused]).toEqual([1, 2]);
  });

  it("are found when they stand far apart in a file out of order", () => {
    const log = read(
      strip("14T07:10"),
      strip("15T07:10"),
      strip("14T07:10", "colour-paper", "0.9"),
    );
    expect(log.rows).toHaveLength(2);
    expect(log.problems.map((each) => [each.line, each.rowUsed])).toEqual([
      [4, true],
      [4, false],
    ]);
    expect(log.rowsRead - log.rowsRefused).toBe(log.rows.length);
  });

  it("a repeat strip some minutes later is no duplicate", () => {
    expect(read(strip("14T07:10"), strip("14T07:24")).problems).toEqual([]);
  });

  it("is a format on a day in production, a bath and instrument in the temperatures", () => {
    const day = "2026-08-14,colour-paper,10x15cm";
    const production = parseProductionLog(`date,process,format,count\n${day},9\n${day},8\n`, {
      file: "production.csv",
    });
    expect(production.problems[0]?.advice).toBe("add the two counts and write one row");
    const at = "2026-08-14T07:05,film-developer";
    const temperatures = parseTemperatureLog(
      `read_at,bath,instrument,temperature_c\n${at},controller,37.8\n${at},thermometer,37.9\n${at},thermometer,38.0\n`,
      { file: "temperatures.csv" },
    );
    expect(temperatures.rows).toHaveLength(2);
    expect(temperatures.problems[0]?.line).toBe(4);
  });
});
