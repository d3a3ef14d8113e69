import { describe, expect, it } from "vitest";
import { InputError } from "wetside/input";
import { simulatedLines, simulateLab } from "wetside/simulate";
import { costInMatrixProducts } from "../processor-time.ts";
import { dateOf, logsBetween } from "./labs.ts";

// Measured: a year of two lines costs some 90 to 110. Tenfold, so that only a real loss shows.
const YEAR_IN_MATRIX_PRODUCTS = 1000;

const anything = (options: unknown) => simulateLab(options as Parameters<typeof simulateLab>[0]);
const [film, paper] = simulatedLines;
if (film === undefined || paper === undefined) throw new Error("the lab has two lines");

const refused: readonly (readonly [words: string, options: unknown, message: string])[] = [
  [
    "nothing at all",
    undefined,
    "simulateLab: options is missing; write an object with seed, days, from, lines",
  ],
  ["no seed", {}, "seed is missing; write a whole number"],
  ["half a seed", { seed: 1.5 }, "seed is 1.5; write a whole number"],
  ["a seed that is no number", { seed: Number.NaN }, "seed is NaN; write a whole number"],
  [
    "an option written wrong",
    { seed: 1, day: 30 },
    'a key of options is "day"; its keys are seed, days,',
  ],
  ["no days", { seed: 1, days: 0 }, "days is 0; write a whole number at least 1 and at most 3660"],
  ["days that are no number", { seed: 1, days: Number.NaN }, "days is NaN; write a whole number"],
  ["too many days", { seed: 1, days: 3661 }, "days is 3661; write a whole number at least 1"],
  [
    "a date that does not exist",
    { seed: 1, from: "2026-02-30" },
    'from is "2026-02-30"; write a date that exists, as YYYY-MM-DD',
  ],
  [
    "a date written otherwise",
    { seed: 1, from: "30/02/2026" },
    "write a date that exists, as YYYY-MM-DD",
  ],
  [
    "days that run out of the calendar",
    { seed: 1, from: "9999-12-30" },
    'from is "9999-12-30"; 90 days from there go beyond the year 9999',
  ],
  [
    "a negative standard deviation",
    { seed: 1, noise: { readingSd: -0.01 } },
    "noise.readingSd is -0.01; write a finite number at least 0 and at most 0.2 (a standard deviation, in density)",
  ],
  [
    "a standard deviation by a wrong name",
    { seed: 1, noise: { readingsSd: 0.01 } },
    'a key of noise is "readingsSd"; its keys are stripSd, layerSd, readingSd, wanderSd (did you mean "readingSd"?)',
  ],
  ["mixes that differ wildly", { seed: 1, mixSd: 2 }, "mixSd is 2; write a finite number at least"],
  ["mixes for no days", { seed: 1, mixEveryDays: 0 }, "mixEveryDays is 0; write a whole number"],
  ["no list of faults", { seed: 1, faults: "rand" }, 'write a list of faults, or "random"'],
  ["no lines", { seed: 1, lines: [] }, "write a list of lines, such as simulatedLines"],
];

describe("a simulated lab", () => {
  for (const [words, options, message] of refused) {
    it(`refuses ${words}`, () => {
      expect(() => anything(options)).toThrow(InputError);
      expect(() => anything(options)).toThrow(message);
    });
  }

  it("may be one day long", () => {
    const lab = simulateLab({ seed: 1, days: 1 });
    const dates = new Set(lab.strips.map(({ takenAt }) => takenAt.slice(0, 10)));
    expect([...dates]).toEqual(["2026-05-17"]);
    expect(lab.remakes).toHaveLength(1);
    expect(lab.pumps).toHaveLength(7);
  });

  it("may begin on a leap day", () => {
    const lab = simulateLab({ seed: 1, days: 2, from: "2028-02-29" });
    expect(lab.remakes.map(({ date }) => date)).toEqual(["2028-02-29", "2028-03-01"]);
  });

  it("may stand still: no work, and the strips still run", () => {
    const lab = simulateLab({ seed: 1, days: 7, lines: [{ ...film, areaM2PerDay: 0 }] });
    expect(lab.production.every(({ count }) => count === 0)).toBe(true);
    const counters = lab.pumps.filter(({ pump }) => pump === "film-developer");
    expect(new Set(counters.map(({ counterStrokes }) => counterStrokes)).size).toBe(1);
    expect(lab.strips.length).toBeGreaterThan(7);
  });

  it("has no remakes without a line that prints", () => {
    expect(simulateLab({ seed: 1, days: 3, lines: [film] }).remakes).toEqual([]);
  });

  it("is the same, byte for byte, for the same seed", () => {
    const options = Object.freeze({ seed: 11, days: 40, faults: "random" as const });
    expect(JSON.stringify(simulateLab(options))).toBe(JSON.stringify(simulateLab(options)));
  });

  it("is another in every log for another seed", () => {
    const [a, b] = [simulateLab({ seed: 11, days: 40 }), simulateLab({ seed: 12, days: 40 })];
    for (const log of ["strips", "production", "pumps", "temperatures", "remakes"] as const) {
      expect(JSON.stringify(a[log]), log).not.toBe(JSON.stringify(b[log]));
    }
  });

  it("is another for seeds below zero, side by side, and beyond 32 bits", () => {
    const seeds = [
      -(2 ** 32),
      -2,
      -1,
      0,
      1,
      2,
      2 ** 31,
      2 ** 32 - 1,
      2 ** 32,
      2 ** 32 + 1,
      2 ** 52,
    ];
    const labs = seeds.map((seed) => JSON.stringify(simulateLab({ seed, days: 2 }).strips));
    expect(new Set(labs).size).toBe(seeds.length);
  });

  it("begins with the same days, however long it goes on", () => {
    const [short, long] = [simulateLab({ seed: 3, days: 25 }), simulateLab({ seed: 3, days: 60 })];
    const all = logsBetween(short, short.from, dateOf(short, 25));
    expect(all.strips).toEqual(short.strips);
    expect(logsBetween(long, short.from, dateOf(short, 25))).toEqual(all);
  });

  it("gives a line the same strips, whatever other lines there are", () => {
    const both = simulateLab({ seed: 5, days: 30 });
    const alone = simulateLab({ seed: 5, days: 30, lines: [paper] });
    expect(both.strips.filter(({ process }) => process === "colour-paper")).toEqual(alone.strips);
    expect(both.remakes).toEqual(alone.remakes);
  });

  it("changes nothing of what it was given", () => {
    const freeze = <T>(value: T): T => {
      if (typeof value === "object" && value !== null) {
        Object.freeze(value);
        for (const each of Object.values(value)) freeze(each);
      }
      return value;
    };
    const lines = freeze(structuredClone(simulatedLines));
    const faults = freeze([{ kind: "bleach-weak", line: "film", fromDay: 3, untilDay: 6 }]);
    expect(simulateLab({ seed: 1, days: 8, lines, faults }).lines).toEqual(simulatedLines);
  });

  it("survives being saved as JSON", () => {
    const lab = simulateLab({ seed: 1, days: 20, faults: "random" });
    expect(JSON.parse(JSON.stringify(lab))).toEqual(lab);
  });

  it("costs little processor time for a year of two lines", () => {
    const year = () => simulateLab({ seed: 1, days: 365 });
    expect(costInMatrixProducts(year, 3, 1)).toBeLessThan(YEAR_IN_MATRIX_PRODUCTS);
    expect(year().strips.length).toBeGreaterThan(1400);
  });
});

describe("the work log of a simulated lab", () => {
  it("enters a bath mixed afresh at its own time, beside the mixes of replenisher", () => {
    const { work } = simulateLab({
      seed: 5,
      days: 12,
      mixEveryDays: 6,
      events: [{ kind: "fresh-bath", line: "film", day: 3, at: "11:30" }],
    });
    const mixes = work.filter(
      ({ line, work: kind }) => line === "film" && kind === "developer-mixed",
    );
    const after = mixes.map(({ doneAt }) => [doneAt.slice(0, 10), doneAt.slice(11)]);
    const day = (i: number) => {
      const first = Date.parse(`${mixes[0]?.doneAt.slice(0, 10)}T00:00Z`);
      return new Date(first + i * 86_400_000).toISOString().slice(0, 10);
    };
    expect(after).toEqual([
      [day(0), "06:40"],
      [day(3), "11:30"],
      [day(6), "06:40"],
    ]);
  });
});
