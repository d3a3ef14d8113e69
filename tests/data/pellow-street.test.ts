import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { faultLogKinds, faultWorkKinds } from "wetside/control";
import {
  parseCheckLog,
  parseProductionLog,
  parsePumpLog,
  parseRemakesLog,
  parseStripBatchRegister,
  parseStripLog,
  parseTemperatureLog,
  parseWorkLog,
  problemMessage,
  pumpIntervals,
  requireCleanLog,
} from "wetside/records";
import { demoLabFiles } from "../../data/pellow-street/make/files.ts";
import { lab } from "../../data/pellow-street/make/lab.ts";
import * as plan from "../../data/pellow-street/make/plan.ts";

const folder = new URL("../../data/pellow-street/", import.meta.url);
const onDisk = (name: string) => readFileSync(new URL(name, folder), "utf8");
const made = demoLabFiles();

const processes = lab.lines.map((line) => line.process);
const baths = lab.lines.flatMap((line) => [...line.baths, line.dryer]);
const patches = Object.fromEntries(lab.lines.map((line) => [line.process, line.patches]));
const batches = requireCleanLog(
  parseStripBatchRegister(onDisk("strip-batches.csv"), { file: "strip-batches.csv" }),
);
const strips = (file: string) =>
  parseStripLog(onDisk(file), { file, batches, processes, patches, today: plan.TODAY });
const today = plan.TODAY;

describe("the demo lab", () => {
  for (const [name, text] of Object.entries(made)) {
    it(`makes ${name} again byte for byte`, () => {
      expect(onDisk(name)).toBe(text);
    });
  }

  it("has no file that nobody makes", () => {
    const others = ["hidden-faults.md", "make", "make.ts"];
    expect(readdirSync(folder).sort()).toEqual([...Object.keys(made), ...others].sort());
  });

  it("is read without a single problem or warning", () => {
    const logs = [
      strips("film-strips.csv"),
      strips("paper-strips.csv"),
      parseProductionLog(onDisk("production.csv"), {
        file: "production.csv",
        formats: lab.lines.flatMap((line) => [...line.formats]),
        today,
      }),
      parsePumpLog(onDisk("pumps.csv"), {
        file: "pumps.csv",
        pumps: lab.pumps.map((pump) => pump.id),
        today,
      }),
      parseTemperatureLog(onDisk("temperatures.csv"), { file: "temperatures.csv", baths, today }),
      parseRemakesLog(onDisk("remakes.csv"), { file: "remakes.csv", today }),
      parseCheckLog(onDisk("checks.csv"), {
        file: "checks.csv",
        lines: lab.lines.map(({ id }) => id),
        checks: faultLogKinds.map(({ id }) => id),
        today,
      }),
      parseWorkLog(onDisk("work.csv"), {
        file: "work.csv",
        lines: lab.lines.map(({ id }) => id),
        kinds: faultWorkKinds.map(({ id }) => id),
        today,
      }),
    ];
    expect(logs.map((log) => problemMessage(log)).join("")).toBe("");
    expect(logs.flatMap((log) => log.warnings)).toEqual([]);
  });

  it("runs strips on each of ninety days on both lines, two a day or more", () => {
    for (const file of ["film-strips.csv", "paper-strips.csv"]) {
      const rows = strips(file).rows;
      expect(new Set(rows.map((strip) => strip.takenAt.slice(0, 10))).size).toBe(90);
      expect(rows.length / 90).toBeGreaterThan(2);
      expect(rows.at(-1)?.takenAt.slice(0, 10)).toBe(plan.TODAY);
    }
  });

  it("has four baths on each line, a dryer at 71 °C for two minutes at the end of paper", () => {
    expect(lab.lines.map((line) => line.baths.length)).toEqual([4, 4]);
    expect(lab.lines[1].dryer).toMatchObject({ setTemperatureC: 71, timeMin: 2 });
    expect(lab.lines[0].finish).toContain("strips of four");
  });

  it("runs old and new strips side by side at three separate times or more", () => {
    for (const [file, days] of [
      ["film-strips.csv", plan.CROSSOVERS.film],
      ["paper-strips.csv", plan.CROSSOVERS.paper],
    ] as const) {
      expect(days.length).toBeGreaterThanOrEqual(3);
      for (const day of days) {
        const used = strips(file).rows.filter((strip) => strip.takenAt.startsWith(day));
        expect(new Set(used.map((strip) => strip.stripBatch)).size).toBe(2);
      }
    }
  });

  it("counts in the remakes the prints of the production", () => {
    const production = requireCleanLog(
      parseProductionLog(onDisk("production.csv"), { file: "production.csv" }),
    );
    for (const day of requireCleanLog(
      parseRemakesLog(onDisk("remakes.csv"), { file: "remakes.csv" }),
    )) {
      const prints = production
        .filter((row) => row.date === day.date && row.process === "colour-paper")
        .reduce((sum, row) => sum + row.count, 0);
      expect(day.printsMade).toBe(prints);
    }
  });
});

describe("the hidden faults", () => {
  const log = parsePumpLog(onDisk("pumps.csv"), { file: "pumps.csv" });
  const { intervals } = pumpIntervals(log);
  const ratio = (pump: string, from: string, until: string) => {
    const some = intervals.filter(
      (each) => each.pump === pump && each.to >= from && each.to < until,
    );
    const sum = (of: (each: (typeof some)[number]) => number) =>
      some.reduce((total, each) => total + of(each), 0);
    return sum((each) => each.deliveredMl ?? 0) / sum((each) => each.setMl);
  };
  /** The levels are read to 50 mL, over some weeks of about 2 L a day. */
  const LEVEL_TOLERANCE = 0.02;

  it("the faulty pump delivers what the plan says, and the right volume before", () => {
    const { pump, from, error } = plan.PUMP_FAULT;
    expect(ratio(pump, from, "2027")).toBeGreaterThan(1 + error - LEVEL_TOLERANCE);
    expect(ratio(pump, from, "2027")).toBeLessThan(1 + error + LEVEL_TOLERANCE);
    expect(Math.abs(ratio(pump, "2026", from) - 1)).toBeLessThan(LEVEL_TOLERANCE);
  });

  it("no other developer pump does", () => {
    expect(Math.abs(ratio("paper-developer", plan.PUMP_FAULT.from, "2027") - 1)).toBeLessThan(
      LEVEL_TOLERANCE,
    );
  });

  it("the cylinder shows it once, and rightly before, read to some 1 %", () => {
    const checks = log.rows.filter((each) => each.pump === plan.PUMP_FAULT.pump && each.cylinder);
    expect(checks.map((each) => each.cylinder?.volumeMl)).toEqual([99, 100, 83]);
  });

  it("the heater offset shows on the thermometer and not on the controller", () => {
    const { bath, from, until, offsetC } = plan.HEATER_FAULT;
    const rows = parseTemperatureLog(onDisk("temperatures.csv"), { file: "t", baths }).rows;
    const mean = (instrument: string) => {
      const some = rows.filter(
        (each) =>
          each.bath === bath &&
          each.instrument === instrument &&
          each.readAt >= from &&
          each.readAt < until,
      );
      return some.reduce((sum, each) => sum + each.temperatureC, 0) / some.length;
    };
    /** Sixteen mornings read to 0.1 °C with some 0.07 °C of noise. */
    const MEAN_TOLERANCE_C = 0.06;
    expect(Math.abs(mean("controller") - 35)).toBeLessThan(MEAN_TOLERANCE_C);
    expect(Math.abs(mean("thermometer") - 35 - offsetC)).toBeLessThan(MEAN_TOLERANCE_C);
  });

  it("are told with their dates in the one file about them", () => {
    const told = onDisk("hidden-faults.md");
    const dates = [
      plan.PUMP_FAULT.from,
      plan.HEATER_FAULT.from,
      plan.HEATER_FAULT.until,
      plan.CONTAMINATION.day,
      plan.FALSE_ALARMS.film.day,
      plan.FALSE_ALARMS.paper.day,
      plan.CROSSOVERS.film[0],
      plan.CROSSOVERS.paper[0],
      plan.COUNTER_RESET.day,
    ];
    for (const date of dates) expect(told).toContain(date);
    expect(told).toContain(`${Math.round(-100 * plan.PUMP_FAULT.error)} %`);
    expect(told).toContain(`${plan.HEATER_FAULT.offsetC} °C`);
  });
});
