import { describe, expect, it } from "vitest";
import {
  checkTable,
  productionTable,
  pumpTable,
  temperatureTable,
  workTable,
} from "../../lib/figures/index.ts";
import {
  parseCheckLog,
  parseProductionLog,
  parsePumpLog,
  parseTemperatureLog,
  parseWorkLog,
} from "../../lib/records/index.ts";

const plain = (value: unknown): string => {
  const display = (value as Record<symbol, () => Record<string, string>>)[
    Symbol.for("Jupyter.display")
  ];
  return display?.()["text/plain"] ?? "";
};
const days = ["2026-08-12", "2026-08-13"];
const temperatures = (rows: readonly string[]) =>
  parseTemperatureLog(["read_at,bath,instrument,temperature_c", ...rows].join("\n"), {
    file: "temperatures.csv",
  });
const pumps = (rows: readonly string[]) =>
  parsePumpLog(
    ["read_at,pump,counter_strokes,setting_ml_per_stroke,delivered_ml,counter_reset", ...rows].join(
      "\n",
    ),
    { file: "pumps.csv" },
  );

describe("temperatures of some days", () => {
  const log = temperatures([
    "2026-08-12T07:00,film-developer,controller,37.8",
    "2026-08-12T12:00,film-developer,controller,38.1",
    "2026-08-13T07:00,film-developer,controller,37.9",
    "2026-08-13T17:00,film-developer,controller,39.0",
    "2026-08-14T07:00,film-developer,controller,20.0",
  ]);
  it("are told lowest to highest, a column a day, with the set temperature if it is known", () => {
    const baths = [{ id: "film-developer", setTemperatureC: 37.8 }];
    const { rows } = temperatureTable(log, { days, asOf: "2026-08-13T12:00", baths });
    expect(rows).toEqual([
      {
        bath: "film-developer",
        instrument: "controller",
        setC: 37.8,
        "2026-08-12": "37.8 to 38.1",
        "2026-08-13": "37.9",
      },
    ]);
    expect(plain(temperatureTable(log, { days }))).not.toContain("Set");
  });
  it("are a sentence where none were kept or none fall on the days", () => {
    expect(plain(temperatureTable(undefined, { days }))).toBe(
      "No log of bath temperatures is kept here.",
    );
    expect(plain(temperatureTable(log, { days: ["2026-01-01"] }))).toBe(
      "temperatures.csv: no bath temperatures of these days.",
    );
  });
  it("keep the good rows of a log with bad ones, and say what is wrong below", () => {
    const mixed = temperatures([
      "2026-08-12T07:00,film-developer,controller,37.8",
      "2026-08-12T12:00,film-developer,controller,100",
    ]);
    const shown = temperatureTable(mixed, { days });
    expect(shown.rows).toHaveLength(1);
    expect(plain(shown)).toMatch(
      /37\.8[\s\S]+temperatures\.csv: 1 problem[\s\S]+100 °F is 37\.8 °C/,
    );
  });
});

describe("pumps of some days", () => {
  const log = pumps([
    "2026-08-11T18:00,film-developer,100,5,,",
    "2026-08-12T18:00,film-developer,460,5,1600,",
    "2026-08-13T18:00,film-developer,10,5,1600,yes",
  ]);
  it("are told as set and measured, with the difference in per cent of the set volume", () => {
    const [row, ...more] = pumpTable(log, { days }).rows;
    expect(more).toEqual([]);
    expect(row).toMatchObject({ setMl: 1800, deliveredMl: 1600, to: "2026-08-12 18:00" });
    expect(row?.off).toBeCloseTo((100 * (1600 - 1800)) / 1800, 12);
  });
  it("name an interval that a counter set back makes impossible", () => {
    expect(pumpTable(log, { days }).notes.join()).toMatch(/^film-developer, .*was set back$/);
    expect(pumpTable(log, { days: ["2026-08-12"] }).notes).toEqual([]);
  });
  it("say when volumes are read too coarsely for one day's work", () => {
    const daily = (volumes: readonly number[]) =>
      pumps(
        volumes.map(
          (ml, i) => `2026-08-${String(i + 7).padStart(2, "0")}T18:00,a,${1 + 60 * i},5,${ml},`,
        ),
      );
    const shown = { days: ["2026-08-09"] };
    const coarse = daily([300, 300, 350, 250, 300, 350]);
    expect(pumpTable(coarse, shown).notes.join()).toMatch(/^a: .*50 mL, up to 17 %/);
    expect(pumpTable(daily([300, 301, 350, 250, 302, 351]), shown).notes).toEqual([]);
    expect(pumpTable(daily([300, 350, 250]), shown).notes).toEqual([]);
  });
  it("show no empty column where nothing was measured, and no difference from nothing set", () => {
    const unmeasured = pumps(["2026-08-11T18:00,a,1,5,,", "2026-08-12T18:00,a,1,5,,"]);
    expect(plain(pumpTable(unmeasured, { days }))).not.toContain("Measured");
    const still = pumps(["2026-08-11T18:00,a,1,5,,", "2026-08-12T18:00,a,1,5,20,"]);
    expect(pumpTable(still, { days }).rows[0]?.off).toBeNull();
    expect(plain(pumpTable(undefined, { days }))).toBe("No log of pump readings is kept here.");
  });
});

describe("production of some days", () => {
  it("is told by process and format, a column a day", () => {
    const log = parseProductionLog(
      "date,process,format,count\n2026-08-12,colour-paper,10x15cm,980\n2026-08-13,colour-paper,10x15cm,0\n2026-08-13,colour-negative,120,9",
      { file: "production.csv" },
    );
    expect(productionTable(log, { days }).rows).toEqual([
      { process: "colour-paper", format: "10x15cm", "2026-08-12": 980, "2026-08-13": 0 },
      { process: "colour-negative", format: "120", "2026-08-12": null, "2026-08-13": 9 },
    ]);
    expect(plain(productionTable(undefined, { days }))).toBe("No log of production is kept here.");
  });
});

describe("checks of the lines", () => {
  const log = parseCheckLog(
    [
      "read_at,line,check,value",
      "2026-08-03T07:04,film,specific-gravity,1.038",
      "2026-08-06T07:04,film,specific-gravity,1.0385",
      "2026-08-10T07:04,film,specific-gravity,1.037",
      "2026-08-10T07:05,paper,specific-gravity,1.04",
      "2026-08-10T07:06,film,clearing-time,39",
      "2026-08-13T07:04,film,specific-gravity,1.031",
    ].join("\n"),
    { file: "checks.csv" },
  );
  it("are told as the latest beside the median of what came before, as exactly as written", () => {
    expect(checkTable(log).rows).toEqual([
      {
        line: "film",
        check: "specific-gravity",
        usual: "1.0380",
        latest: "1.0310",
        readAt: "2026-08-13 07:04",
      },
      {
        line: "paper",
        check: "specific-gravity",
        usual: "–",
        latest: "1.04",
        readAt: "2026-08-10 07:05",
      },
      {
        line: "film",
        check: "clearing-time",
        usual: "–",
        latest: "39",
        readAt: "2026-08-10 07:06",
      },
    ]);
  });
  it("know nothing of what was read later", () => {
    const [first, ...others] = checkTable(log, { asOf: "2026-08-06T12:00" }).rows;
    expect(first).toMatchObject({ usual: "1.0380", latest: "1.0385" });
    expect(others).toEqual([]);
  });
  it("are a sentence where none were kept, and say what is wrong below", () => {
    expect(plain(checkTable(undefined))).toBe("No log of checks is kept here.");
    const bad = parseCheckLog(
      "read_at,line,check,value\n2026-08-13T07:04,film,clearing-time,soon",
      {
        file: "checks.csv",
      },
    );
    expect(plain(checkTable(bad))).toMatch(/no checks[\s\S]+checks\.csv: 1 problem/);
  });
});

describe("work at the lines", () => {
  const log = parseWorkLog(
    [
      "done_at,line,work",
      "2026-08-11T23:59,film,fixer-handled",
      "2026-08-12T06:40,film,developer-mixed",
      "2026-08-13T06:40,paper,bleach-handled",
      "2026-08-14T06:40,film,fixer-handled",
    ].join("\n"),
    { file: "work.csv" },
  );
  it("is told from the first of the days on, the days between included", () => {
    const shown = workTable(log, { days: ["2026-08-12", "2026-08-14"], asOf: "2026-08-13T12:00" });
    expect(shown.rows).toEqual([
      { doneAt: "2026-08-12 06:40", line: "film", work: "developer-mixed" },
      { doneAt: "2026-08-13 06:40", line: "paper", work: "bleach-handled" },
    ]);
  });
  it("is a sentence where none was written down", () => {
    expect(plain(workTable(undefined, { days }))).toBe("No log of work is kept here.");
    expect(plain(workTable(log, { days: ["2027-01-01"] }))).toBe(
      "work.csv: no work of these days.",
    );
  });
});
