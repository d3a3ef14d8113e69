import { describe, expect, it } from "vitest";
import { formatPumpLog, parsePumpLog, problemMessage, pumpIntervals } from "wetside/records";

const file = "pumps.csv";
const HEADER =
  "read_at,pump,counter_strokes,setting_ml_per_stroke,delivered_ml,counter_reset,cylinder_strokes,cylinder_ml";
const read = (...rows: string[]) =>
  parsePumpLog(`${[HEADER, ...rows].join("\n")}\n`, {
    file,
    pumps: ["film-developer", "film-fixer"],
  });
const day = (date: number, counter: number | string, rest = ",,,") =>
  `2026-08-${date}T18:00,film-developer,${counter},5,${rest}`;
const kept = (log: ReturnType<typeof read>) => log.rows.map((each) => each.counterStrokes);

describe("a pump log", () => {
  it("answers a volume in gallons with millilitres, never with the number alone", () => {
    const text = [
      "read_at,pump,counter_strokes,setting_ml_per_stroke,delivered_ml",
      "2026-08-01T18:00,film-developer,100,5,",
      "2026-08-02T18:00,film-developer,200,5,0.2 gal",
      "2026-08-03T18:00,film-developer,300,5,1 L",
      "2026-08-04T18:00,film-developer,400,5,500 ml",
    ].join("\n");
    const { rows, problems } = parsePumpLog(text, { file: "pumps.csv" });
    expect(rows).toHaveLength(1);
    expect(problems.map(({ advice }) => advice)).toEqual([
      "write millilitres: 757.08 for US gallons, 909.22 for imperial gallons",
      "write millilitres, the number alone: 1000",
      "write millilitres, the number alone: 500",
    ]);
  });
  it("reads all columns, and leaves out what a row leaves empty", () => {
    const log = read("2026-08-13T18:00,film-developer,100,5,,,,", day(14, 180, "350,no,20,99.5"));
    expect(log.problems).toEqual([]);
    expect(log.rows[0]).toEqual({
      readAt: "2026-08-13T18:00",
      pump: "film-developer",
      counterStrokes: 100,
      settingMlPerStroke: 5,
      counterReset: false,
      source: { file, line: 2 },
    });
    expect(log.rows[1]).toMatchObject({
      deliveredMl: 350,
      cylinder: { strokes: 20, volumeMl: 99.5 },
    });
  });

  it("needs only four columns", () => {
    const text =
      "read_at,pump,counter_strokes,setting_ml_per_stroke\n2026-08-14T18:00,film-developer,9,5\n";
    expect(parsePumpLog(text, { file }).rows).toHaveLength(1);
  });

  it("tells every wrong cell", () => {
    const log = read("2026-08-14T18:00,film-developper,12.5,-5,abc,maybe,0,");
    expect(log.problems.map((each) => each.column)).toEqual([
      "pump",
      "counter_strokes",
      "setting_ml_per_stroke",
      "delivered_ml",
      "counter_reset",
      "cylinder_strokes",
      "cylinder_ml",
    ]);
    expect(log.problems[4]?.advice).toBe("write yes, no, or nothing");
  });

  it("refuses half a calibration, whichever half", () => {
    expect(read(day(14, 1, ",,20,")).problems[0]).toMatchObject({
      column: "cylinder_ml",
      problem: "half a calibration",
    });
    expect(read(day(14, 1, ",,,99")).problems[0]?.column).toBe("cylinder_strokes");
  });
});

describe("a counter that runs backwards", () => {
  it("is reported with both readings", () => {
    const log = read(day(10, 100), day(11, 200), day(12, 150), day(13, 300));
    expect(kept(log)).toEqual([100, 200, 300]);
    expect(problemMessage(log)).toBe(
      [
        "pumps.csv: 1 problem; 1 of 4 rows cannot be used",
        '  line 4, counter_strokes "150": the counter of film-developer runs backwards, 200 on line 3 to 150 on line 4; correct the counter, or write yes in counter_reset if it was set back',
      ].join("\n"),
    );
  });

  it("costs the one reading that is too high, not those after it", () => {
    expect(kept(read(day(10, 100), day(11, 2000), day(12, 300), day(13, 400)))).toEqual([
      100, 300, 400,
    ]);
  });

  it("after a lasting drop costs one reading, and its interval is not formed", () => {
    const log = read(day(10, 9000), day(11, 9100), day(12, 50), day(13, 150), day(14, 250));
    expect(kept(log)).toEqual([9000, 9100, 150, 250]);
    const { intervals, warnings } = pumpIntervals(log);
    expect(intervals.map((each) => each.strokes)).toEqual([100, 100]);
    expect(warnings).toEqual([
      "film-developer, 2026-08-11T18:00 to 2026-08-13T18:00: the counter runs backwards",
    ]);
  });

  it("is no problem when the reset is marked", () => {
    const log = read(day(10, 9000), day(11, 40, ",yes,,"), day(12, 90));
    expect(log.problems).toEqual([]);
    expect(pumpIntervals(log).warnings[0]).toContain("the counter was set back");
  });

  it("is watched pump by pump, and may stand still", () => {
    const fixer = "2026-08-11T18:00,film-fixer,7,5,,,,";
    expect(read(day(10, 100), fixer, day(12, 100)).problems).toEqual([]);
  });
});

describe("intervals between pump readings", () => {
  it("give strokes, set volume and what was measured", () => {
    const { intervals } = pumpIntervals(read(day(13, 100), day(14, 180, "350,,,")));
    expect(intervals).toEqual([
      {
        pump: "film-developer",
        from: "2026-08-13T18:00",
        to: "2026-08-14T18:00",
        strokes: 80,
        setMl: 400,
        deliveredMl: 350,
      },
    ]);
  });

  it("are not formed over a line that was left out, for its volume would be lost", () => {
    const log = read(day(12, 100), day(13, "1?0"), day(14, 300, "500,,,"), day(15, 350));
    const { intervals, warnings } = pumpIntervals(log);
    expect(intervals.map((each) => each.to)).toEqual(["2026-08-15T18:00"]);
    expect(warnings[0]).toContain("line 3 between them was left out");
  });

  it("of no reading or one are none", () => {
    expect(pumpIntervals(read(day(14, 1))).intervals).toEqual([]);
  });
});

describe("a pump log that is written", () => {
  it("refuses a number that is not finite", () => {
    const reading = {
      readAt: "2026-08-14T18:00",
      pump: "film-developer",
      counterStrokes: Number.NaN,
      settingMlPerStroke: 5,
      counterReset: false,
    };
    expect(() => formatPumpLog([reading])).toThrow("a finite number");
  });
});
