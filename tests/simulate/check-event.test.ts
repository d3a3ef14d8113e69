import { describe, expect, it } from "vitest";
import { InputError } from "wetside/input";
import { formatPumpLog, parsePumpLog, pumpIntervals } from "wetside/records";
import { type SimulatedEvent, simulateLab } from "wetside/simulate";
import { dateOf, difference } from "./labs.ts";

const run = (...events: readonly unknown[]) =>
  simulateLab({ seed: 71, days: 30, events: events as readonly SimulatedEvent[] });
const clean = run();

const fresh = { kind: "fresh-bath", line: "film", day: 12, at: "11:30" } as const;
const setting = {
  kind: "pump-setting",
  bath: "film-developer",
  day: 12,
  settingMlPerStroke: 6,
} as const;

const refused: readonly (readonly [words: string, event: unknown, message: string])[] = [
  ["nothing", null, "events[0] is null"],
  ["an unknown kind", { ...fresh, kind: "fresh-bat" }, '(did you mean "fresh-bath"?)'],
  ["an unknown line", { ...fresh, line: "slides" }, "events[0].line is"],
  ["a day outside the period", { ...fresh, day: 30 }, "events[0].day is 30"],
  ["a day that is no number", { ...fresh, day: Number.NaN }, "events[0].day is NaN"],
  ["a bath at night", { ...fresh, at: "23:50" }, "write a clock time while the line works"],
  ["a time that is none", { ...fresh, at: "11.30" }, "write a clock time while the line works"],
  [
    "a bath without a pump",
    { ...setting, bath: "paper-wash" },
    'events[0].bath is "paper-wash"; write one of "film-developer"',
  ],
  [
    "a setting of nothing",
    { ...setting, settingMlPerStroke: 0 },
    "events[0].settingMlPerStroke is 0; write a finite number greater than 0 mL",
  ],
  ["a word too many", { ...setting, at: "11:30" }, 'a key of events[0] is "at"'],
];

describe("an event of a simulated lab", () => {
  for (const [words, event, message] of refused) {
    it(`refuses ${words}`, () => {
      expect(() => run(event)).toThrow(InputError);
      expect(() => run(event)).toThrow(message);
    });
  }

  it("changes nothing before its day", () => {
    for (const event of [
      fresh,
      setting,
      { kind: "counter-reset", bath: "film-fixer", day: 12 },
      { kind: "cylinder-check", day: 12 },
    ]) {
      const until = dateOf(clean, 12);
      const earlier = (lab: typeof clean) => [
        lab.strips.filter(({ takenAt }) => takenAt < until),
        lab.pumps.filter(({ readAt }) => readAt < until),
        lab.production.filter(({ date }) => date < until),
      ];
      expect(earlier(run(event)), event.kind).toEqual(earlier(clean));
    }
  });
});

describe("a fresh bath", () => {
  const lab = run(fresh);
  const filmOn = (each: typeof clean, day: number) =>
    each.strips.filter(
      ({ takenAt, process }) =>
        process === "colour-negative" && takenAt.startsWith(dateOf(each, day)),
    );

  it("is cleared by two strips, 12 and 25 minutes later", () => {
    const times = filmOn(lab, 12).map(({ takenAt }) => takenAt.slice(11));
    expect(times).toContain("11:42");
    expect(times).toContain("11:55");
    expect(times).toHaveLength(filmOn(clean, 12).length + 2);
  });

  it("costs the hours until then", () => {
    const made = (each: typeof clean) =>
      each.production
        .filter((row) => row.process === "colour-negative" && row.date === dateOf(each, 12))
        .reduce((sum, { count }) => sum + count, 0);
    // From eight to half past eleven are 35 % of a day.
    expect(made(lab) / made(clean)).toBeGreaterThan(0.5);
    expect(made(lab) / made(clean)).toBeLessThan(0.8);
  });

  it("ends what was wrong with the contents: strips before it show it, strips after it do not", () => {
    const noise = { stripSd: 0, layerSd: 0, readingSd: 0, wanderSd: 0 };
    const options = { seed: 71, days: 30, events: [fresh], noise, mixSd: 0 };
    const faults = [
      { kind: "contaminated-with-fixer", line: "film", fromDay: 12, untilDay: 13, size: 2 },
    ];
    const [without, dirty] = [simulateLab(options), simulateLab({ ...options, faults })];
    const [first, second] = [filmOn(without, 12), filmOn(dirty, 12)];
    const hd = (at: number) => difference(second[at], first[at]).hd?.[0] ?? Number.NaN;
    expect(hd(0)).toBeGreaterThan(0.3);
    expect(second.length).toBe(first.length);
    for (let at = 1; at < first.length; at++) expect(hd(at)).toBe(0);
  });
});

describe("a pump set anew", () => {
  it("says so in its log, fires as often and delivers more", () => {
    const pump = (each: typeof clean) =>
      each.pumps.filter((row) => row.pump === "film-developer" && row.readAt >= dateOf(each, 12));
    const [before, after] = [pump(clean), pump(run(setting))];
    expect(after.every(({ settingMlPerStroke }) => settingMlPerStroke === 6)).toBe(true);
    expect(after.map(({ counterStrokes }) => counterStrokes)).toEqual(
      before.map(({ counterStrokes }) => counterStrokes),
    );
    const sum = (rows: typeof before) =>
      rows.reduce((total, { deliveredMl = Number.NaN }) => total + deliveredMl, 0);
    expect(sum(after) / sum(before)).toBeGreaterThan(1.19);
    expect(sum(after) / sum(before)).toBeLessThan(1.21);
  });
});

describe("a counter set back", () => {
  it("is marked, and costs one day's strokes and no other", () => {
    const lab = run({ kind: "counter-reset", bath: "film-fixer", day: 12 });
    const pump = lab.pumps.filter((row) => row.pump === "film-fixer");
    expect(
      pump.map(({ counterReset }, day) => (counterReset ? day : -1)).filter((d) => d >= 0),
    ).toEqual([12]);
    expect(pump[12]?.counterStrokes).toBeLessThan(2000);
    const log = parsePumpLog(formatPumpLog(lab.pumps), { file: "pumps.csv" });
    const { intervals, warnings } = pumpIntervals(log);
    expect(warnings).toEqual([expect.stringContaining("the counter was set back")]);
    const own = intervals.filter((each) => each.pump === "film-fixer");
    expect(own).toHaveLength(28);
    expect(own.every(({ strokes }) => strokes >= 0 && strokes < 2000)).toBe(true);
  });
});

describe("a strip beyond a control limit", () => {
  it("is run again 13 minutes later where repeats are asked for, and only then", () => {
    const faults = [{ kind: "strip-mishandled", line: "film", fromDay: 8, size: 3 }];
    const options = { seed: 71, days: 30, faults };
    const [once, again] = [simulateLab(options), simulateLab({ ...options, repeatStrips: true })];
    const on = (each: typeof clean) =>
      each.strips.filter(
        ({ takenAt, process }) =>
          process === "colour-negative" && takenAt.startsWith(dateOf(each, 8)),
      );
    expect(on(again)).toHaveLength(on(once).length + 1);
    const [bad, repeat] = on(again);
    const minutes = (at = "") => 60 * Number(at.slice(11, 13)) + Number(at.slice(14));
    expect(minutes(repeat?.takenAt) - minutes(bad?.takenAt)).toBe(13);
    const off = (bad?.patches.ld?.red ?? 0) - (repeat?.patches.ld?.red ?? 0);
    expect(off).toBeGreaterThan(0.25);
  });
});

describe("a lab that ends in the morning", () => {
  it("has start-up strips on its last day and no work", () => {
    const lab = simulateLab({ seed: 71, days: 10, endsInTheMorning: true });
    const last = dateOf(lab, 9);
    expect(lab.strips.filter(({ takenAt }) => takenAt.startsWith(last))).toHaveLength(2);
    expect(lab.production.some(({ date }) => date === last)).toBe(false);
    expect(lab.pumps.some(({ readAt }) => readAt.startsWith(last))).toBe(false);
    expect(lab.remakes.some(({ date }) => date === last)).toBe(false);
  });
});
