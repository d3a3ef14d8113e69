import { describe, expect, it } from "vitest";
import {
  areaByDay,
  machineRun,
  publishedRates,
  ratePerAreaFromFormat,
  rateTable,
  replenisherForecast,
  replenisherUse,
  splicedLength,
} from "wetside/replenishment";
import { stockForecast } from "wetside/solutions";
import { areaRateFromFilmLength, convertAreaRate, convertLength } from "wetside/units";

// Products of a few doubles.
const ROUNDING = 1e-12;

describe("published rates", () => {
  it("are kept in mL/m² exactly as their print converts", () => {
    for (const { id, printed, mlPerM2 } of publishedRates) {
      const computed =
        printed.per === "ft²"
          ? convertAreaRate(printed.value, "mL/ft2", "mL/m2")
          : areaRateFromFilmLength({
              volumeMl: printed.value,
              lengthM: convertLength(100, "ft", "m"),
              widthMm: 35,
            });
      expect(Math.abs(mlPerM2 / computed - 1), id).toBeLessThan(ROUNDING);
    }
  });
  it("each say where they come from, under a name of their own", () => {
    expect(new Set(publishedRates.map(({ id }) => id)).size).toBe(publishedRates.length);
    for (const { source, howObtained } of publishedRates) {
      expect(source.length).toBeGreaterThan(10);
      expect(howObtained).toBe("read in a copy");
    }
  });
  it("per roll give the published rate per area back", () => {
    for (const { mlPerM2 } of publishedRates) {
      for (const format of ["135-36", "120", "35mm-metre"]) {
        const [each] = rateTable({ mlPerM2, formats: [format] }).formats;
        const back = ratePerAreaFromFormat(each?.mlEach ?? Number.NaN, format);
        expect(Math.abs(back / mlPerM2 - 1)).toBeLessThan(ROUNDING);
      }
    }
  });
  it("of print film fall on a metre of 35 mm film as the table has them", () => {
    const developer = publishedRates.find(({ id }) => id === "print-film-developer");
    const [metre] = rateTable({
      mlPerM2: developer?.mlPerM2 ?? 0,
      formats: ["35mm-metre"],
    }).formats;
    // 690 mL for 30.48 m.
    expect(metre?.mlEach).toBeCloseTo(690 / 30.48, 10);
  });
});

describe("a rate table", () => {
  it("shows one rate in every way it is written", () => {
    const table = rateTable({
      mlPerM2: 600,
      formats: ["135-36"],
      areaM2PerHour: 2,
      mlPerStroke: 5,
    });
    expect(table.mlPerFt2).toBeCloseTo(55.74, 2);
    expect(table.mlPerHour).toBe(1200);
    expect(table.mlPerMin).toBe(20);
    expect(table.strokesPerM2).toBe(120);
    expect(table.m2PerStroke).toBeCloseTo(1 / 120, 15);
    expect(table.formats[0]?.strokesEach).toBeCloseTo(6.804, 12);
  });
  it("knows that the trade counts a 135-36 smaller than it is", () => {
    const [trade] = rateTable({ mlPerM2: 600, formats: ["135-36"], reading: "trade" }).formats;
    const [true_] = rateTable({ mlPerM2: 600, formats: ["135-36"] }).formats;
    expect((trade?.mlEach ?? 0) / (true_?.mlEach ?? 1)).toBeCloseTo(0.0516128 / 0.0567, 10);
  });
  it("leaves out what it was not told, and needs no strokes for no rate", () => {
    const table = rateTable({ mlPerM2: 0, mlPerStroke: 5 });
    expect([table.mlPerHour, table.mlPerMin, table.m2PerStroke]).toEqual([null, null, null]);
    expect(table.strokesPerM2).toBe(0);
    expect(table.formats).toEqual([]);
  });
  it("refuses negative rates, strokes of nothing and formats nobody knows", () => {
    expect(() => rateTable({ mlPerM2: -600 })).toThrow("mlPerM2 is -600");
    expect(() => rateTable({ mlPerM2: 600, mlPerStroke: 0 })).toThrow("mlPerStroke is 0");
    expect(() => rateTable({ mlPerM2: 600, formats: ["135–36"] })).toThrow("135-36");
  });
});

describe("a spliced length", () => {
  it("is the sum of its films, leader and trailer", () => {
    const spliced = splicedLength({
      films: [
        { format: "135-36", count: 30 },
        { format: "135-24", count: 10 },
      ],
      leaderMm: 3000,
      trailerMm: 1500,
      overlapMm: 10,
    });
    expect(spliced.lengthM).toBeCloseTo(3 + 1.5 + 30 * 1.62 + 10 * 1.164 - 39 * 0.01, 12);
    expect(spliced.passedAreaM2).toBeCloseTo(spliced.filmAreaM2 + spliced.leaderAreaM2, 12);
    expect(spliced.leaderFraction).toBeCloseTo(spliced.leaderAreaM2 / spliced.filmAreaM2, 12);
  });
  it("of one film without leader is the film", () => {
    const { lengthM, passedAreaM2, leaderFraction } = splicedLength({
      films: [{ format: "120", count: 1 }],
    });
    expect(lengthM).toBe(0.825);
    expect(passedAreaM2).toBeCloseTo(0.0507375, 12);
    expect(leaderFraction).toBe(0);
  });
  it("takes one width at a time, whole films, and splices shorter than the film", () => {
    const films = [
      { format: "135-36", count: 1 },
      { format: "120", count: 1 },
    ];
    expect(() => splicedLength({ films })).toThrow("35 mm and 61.5 mm");
    expect(() => splicedLength({ films: [] })).toThrow("number of films is 0");
    expect(() => splicedLength({ films: [{ format: "120", count: 1.5 }] })).toThrow("whole number");
    const tight = { films: [{ format: "135-12", count: 2 }], overlapMm: 400 };
    expect(() => splicedLength(tight)).toThrow("overlapMm is 400");
  });
});

describe("area by day", () => {
  const rows = [
    { date: "2026-03-02", process: "film", format: "135-36", count: 10 },
    { date: "2026-03-02", process: "film", format: "120", count: 4 },
    { date: "2026-03-02", process: "paper", format: "10x15cm", count: 100 },
    { date: "2026-03-04", process: "film", format: "120", count: 2 },
  ];
  it("adds the formats of a process and fills days of rest, by name", () => {
    const { days, daysWithout, areaM2, warnings } = areaByDay(rows, { process: "film" });
    expect(days.map((day) => day.date)).toEqual(["2026-03-02", "2026-03-03", "2026-03-04"]);
    expect(days[0]?.areaM2).toBeCloseTo(0.76995, 12);
    expect(days[1]).toEqual({ date: "2026-03-03", areaM2: 0, leaderM2: 0, logged: false });
    expect(daysWithout).toEqual(["2026-03-03"]);
    expect(warnings[0]).toContain("2026-03-03");
    expect(areaM2).toBeCloseTo(0.76995 + 0.101475, 12);
  });
  it("counts leaders for each started length of each width", () => {
    const { days } = areaByDay(rows, {
      process: "film",
      splice: { filmsPerLength: 6, leaderMm: 2000 },
    });
    // Two lengths of 35 mm, one of 61.5 mm.
    expect(days[0]?.leaderM2).toBeCloseTo(2 * (2 * 0.035) + 2 * 0.0615, 12);
    const paper = areaByDay(rows, {
      process: "paper",
      splice: { filmsPerLength: 6, leaderMm: 2000 },
    });
    expect(paper.days[0]?.leaderM2).toBe(0);
  });
  it("runs over the days asked for", () => {
    const { days } = areaByDay(rows, { process: "film", from: "2026-03-01", to: "2026-03-05" });
    expect(days).toHaveLength(5);
    expect(days.at(-1)?.areaM2).toBe(0);
  });
  it("counts sizes of the lab's own beside the listed ones, leaders of their rolls included", () => {
    const own = [
      { id: "panorama", widthMm: 100, lengthMm: 250 },
      { id: "long roll", widthMm: 46, lengthMm: 3000, form: "roll" as const },
    ];
    const log = [
      { date: "2026-03-02", format: "panorama", count: 10 },
      { date: "2026-03-02", format: "120", count: 4 },
      { date: "2026-03-03", format: "long roll", count: 3 },
    ];
    const splice = { filmsPerLength: 2, leaderMm: 1000 };
    const { days } = areaByDay(log, { ownFormats: own, splice });
    // 0.25 + 0.20295 m² and 4 films of 120 in two lengths; 0.414 m² in two lengths.
    expect(days[0]?.areaM2).toBeCloseTo(0.45295, 12);
    expect(days[0]?.leaderM2).toBeCloseTo(2 * 0.0615, 12);
    expect(days[1]?.areaM2).toBeCloseTo(0.414, 12);
    expect(days[1]?.leaderM2).toBeCloseTo(2 * 0.046, 12);
    const taken = [{ id: "120", widthMm: 60, lengthMm: 800 }];
    expect(() => areaByDay(log, { ownFormats: taken })).toThrow("this name is taken");
    expect(() => areaByDay(log)).toThrow('format is "panorama"');
    const flat = [{ id: "panorama", widthMm: 0, lengthMm: 250 }];
    expect(() => areaByDay(log, { ownFormats: flat })).toThrow("ownFormats[0].widthMm is 0");
  });
  it("names the processes there are when one is misspelt", () => {
    expect(() => areaByDay(rows, { process: "films" })).toThrow("write one of film, paper");
    expect(() => areaByDay([])).toThrow("at least one row");
    expect(() => areaByDay([{ date: "2026-13-01", format: "120", count: 1 }])).toThrow(
      "a date that exists",
    );
    expect(() => areaByDay([{ date: "2026-03-01", format: "120", count: -1 }])).toThrow(
      "count of 120 is -1",
    );
  });
});

describe("a machine", () => {
  it("gives speed and time for each other", () => {
    const baths = [
      { name: "developer", pathM: 9.144 },
      { name: "fixer", pathM: 4.5 },
    ];
    const bySpeed = machineRun({ widthMm: 35, speedMPerMin: 3.048, baths });
    const byTime = machineRun({ widthMm: 35, timeIn: { bath: "developer", timeMin: 3 }, baths });
    expect(byTime.speedMPerMin).toBeCloseTo(bySpeed.speedMPerMin, 12);
    expect(bySpeed.throughMin).toBeCloseTo(13.644 / 3.048, 12);
  });
  it("takes strands side by side as area, not as speed", () => {
    const one = machineRun({ widthMm: 100, speedMPerMin: 1 });
    const two = machineRun({
      widthMm: 100,
      speedMPerMin: 1,
      strands: 2,
      reelM: 80,
      rateMlPerM2: 160,
    });
    expect(two.areaM2PerHour).toBe(2 * one.areaM2PerHour);
    expect(two.reelMin).toBe(80);
    expect(two.reelM2).toBe(8);
    expect(two.replenisherMlPerMin).toBeCloseTo(32, 12);
    expect([one.reelMin, one.reelM2, one.replenisherMlPerMin]).toEqual([null, null, null]);
  });
  it("wants a speed or a time, not both, and a bath it knows", () => {
    const baths = [{ name: "developer", pathM: 9 }];
    expect(() => machineRun({ widthMm: 35 })).toThrow("either speedMPerMin, or timeIn");
    const both = { widthMm: 35, baths, speedMPerMin: 1, timeIn: { bath: "developer", timeMin: 3 } };
    expect(() => machineRun(both)).toThrow("either speedMPerMin, or timeIn");
    const stop = { widthMm: 35, baths, timeIn: { bath: "stop", timeMin: 3 } };
    expect(() => machineRun(stop)).toThrow('"developer"');
    expect(() => machineRun({ widthMm: 35, speedMPerMin: -1 })).toThrow("speedMPerMin is -1");
  });
});

describe("replenisher and money", () => {
  const replenishers = [
    { name: "developer", rateMlPerM2: 600, pricePerL: 2.5 },
    { name: "fixer", rateMlPerM2: 800, pricePerL: 1 },
    { name: "rinse", rateMlPerM2: 800 },
  ];
  it("cost per roll adds up to cost per area", () => {
    const use = replenisherUse({ replenishers, areaM2: 10, formats: ["135-36"] });
    expect(use.cost).toBeCloseTo(10 * (1.5 + 0.8), 12);
    expect(use.costEach[0]?.cost).toBeCloseTo(0.0567 * 2.3, 12);
    expect(use.unpriced).toEqual(["rinse"]);
    expect(use.lines.map((line) => line.volumeMl)).toEqual([6000, 8000, 8000]);
  });
  it("without any price has no cost, and nothing from nothing", () => {
    const use = replenisherUse({ replenishers: [{ name: "rinse", rateMlPerM2: 800 }], areaM2: 0 });
    expect([use.cost, use.costPerM2]).toEqual([null, null]);
    expect(use.lines[0]?.volumeMl).toBe(0);
  });
  it("forecasts the shelf as the mixing room does", () => {
    const areaM2ByWeekday = [3, 3, 3, 3, 4, 0, 0];
    const shelf = { onShelfMl: 4000, from: "2026-03-02", leadDays: 5 };
    const forecast = replenisherForecast({
      ...shelf,
      rateMlPerM2: 600,
      areaM2ByWeekday,
      share: 0.1,
    });
    const weekUseMl = areaM2ByWeekday.map((area) => area * 60);
    expect(forecast.emptyOn).toBe(stockForecast({ ...shelf, weekUseMl }).emptyOn);
  });
  it("refuses negative rates and prices and a week of six days", () => {
    expect(() =>
      replenisherUse({ replenishers: [{ name: "x", rateMlPerM2: -1 }], areaM2: 1 }),
    ).toThrow("rateMlPerM2 of x is -1");
    const shelf = { onShelfMl: 4000, from: "2026-03-02", leadDays: 5, rateMlPerM2: 600 };
    expect(() => replenisherForecast({ ...shelf, areaM2ByWeekday: [1, 1, 1] })).toThrow(
      "seven areas",
    );
  });
});
