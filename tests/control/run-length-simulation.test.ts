import { describe, expect, it } from "vitest";
import {
  cusumRunLength,
  driftRunLength,
  ewmaRunLength,
  falseAlarmsPerYear,
  type RunLengthChart,
  runLengthDistribution,
  simulateRunLengths,
  westernElectricZoneRules,
  zoneRulesRunLength,
} from "wetside/control";

/** Four standard errors: one honest case in 16,000 fails, and the seeds are fixed. */
const STANDARD_ERRORS = 4;
const RUNS = 4000;

const ewma = { chart: "ewma", lambda: 0.1, limitWidth: 2.7 } as const;
const cusum = { chart: "cusum", referenceValue: 0.5, decisionInterval: 5 } as const;
const three = { chart: "individuals", limitWidth: 3 } as const;
const zones = { chart: "zone rules", rules: westernElectricZoneRules } as const;
const upper = { sides: "upper" } as const;

const cases: readonly (readonly [string, RunLengthChart, object, () => number])[] = [
  ["EWMA at 1 sigma", ewma, { shift: 1 }, () => ewmaRunLength(ewma, { shift: 1 }).zeroState],
  ["EWMA in control", ewma, {}, () => ewmaRunLength(ewma).zeroState],
  [
    "CUSUM at 1 sigma",
    cusum,
    { shift: 1 },
    () => cusumRunLength(cusum, { ...upper, shift: 1 }).zeroState,
  ],
  ["3 sigma at 2 sigma", three, { shift: 2 }, () => 6.30296],
  [
    "zone rules in control",
    zones,
    {},
    () => zoneRulesRunLength(westernElectricZoneRules).zeroState,
  ],
  [
    "zone rules at 1 sigma",
    zones,
    { shift: 1 },
    () => zoneRulesRunLength(westernElectricZoneRules, { shift: 1 }).zeroState,
  ],
  ["EWMA under drift", ewma, { driftPerReading: 0.02 }, () => driftRunLength(ewma, 0.02)],
  ["CUSUM under drift", cusum, { driftPerReading: 0.02 }, () => driftRunLength(cusum, 0.02)],
  ["3 sigma under drift", three, { driftPerReading: 0.02 }, () => driftRunLength(three, 0.02)],
];

describe("simulated run lengths", () => {
  it.each(cases)(
    "have the computed mean within their Monte Carlo error: %s",
    (_, chart, course, computed) => {
      const { mean, standardError } = simulateRunLengths(chart, course, { runs: RUNS, seed: 11 });
      expect(Math.abs(mean - computed())).toBeLessThan(STANDARD_ERRORS * standardError);
    },
  );

  it.each(cases)("follow the computed distribution: %s", (_, chart, course) => {
    const { runLengths } = simulateRunLengths(chart, course, { runs: RUNS, seed: 12 });
    const by = runLengthDistribution(chart, course, 60);
    for (const t of [1, 5, 20, 60]) {
      const share = runLengths.filter((n) => n <= t).length / RUNS;
      const p = by[t - 1] ?? 0;
      const sd = Math.sqrt(Math.max(p * (1 - p), 1 / RUNS) / RUNS);
      expect(Math.abs(share - p)).toBeLessThan(STANDARD_ERRORS * sd);
    }
  });

  it("are the same for the same seed and differ for another", () => {
    const runs = (seed: number) =>
      simulateRunLengths(ewma, { shift: 1 }, { runs: 50, seed }).runLengths;
    expect(runs(3)).toEqual(runs(3));
    expect(runs(3)).not.toEqual(runs(4));
  });

  it.each([
    [() => simulateRunLengths(three, {}, { runs: 5 }), "runs"],
    [() => simulateRunLengths({ ...ewma, lambda: 0 }), "lambda"],
    [() => simulateRunLengths(three, { shift: Number.NaN }), "shift"],
    [
      () => simulateRunLengths({ chart: "individuals", limitWidth: 5.9 }, {}, { runs: 10 }),
      "a million",
    ],
    [() => simulateRunLengths({ chart: "zone rules", rules: [] }), "number of rules"],
  ])("refuse what cannot be meant (%#)", (make, message) => {
    expect(make).toThrow(message);
  });
});

describe("the distribution of the run length", () => {
  /** Sums of some thousand terms of double precision. */
  const ROUNDING = 1e-8;

  it.each(cases)("has the computed mean: %s", (_, chart, course, computed) => {
    const by = runLengthDistribution(chart, course, 6000);
    const survived = by.reduce((sum, p) => sum + (1 - p), 1);
    const last = 1 - (by.at(-1) ?? 1);
    // What is left after 6,000 readings is a geometric tail.
    const ratio = last / (1 - (by.at(-2) ?? 1));
    const tail = last > 1e-12 ? (last * ratio) / (1 - ratio) : 0;
    expect(survived + tail).toBeCloseTo(computed(), 4);
  });

  it("is geometric for 3 sigma limits in control", () => {
    const by = runLengthDistribution(three, {}, 100);
    const p = by[0] ?? 0;
    by.forEach((each, i) => {
      expect(Math.abs(each - (1 - (1 - p) ** (i + 1)))).toBeLessThan(ROUNDING);
    });
  });

  it("never falls and stays below 1", () => {
    const by = runLengthDistribution(zones, { shift: 0.5 }, 400);
    by.forEach((each, i) => {
      expect(each).toBeGreaterThanOrEqual(by[i - 1] ?? 0);
      expect(each).toBeLessThanOrEqual(1);
    });
  });

  it("refuses no readings and too many", () => {
    expect(() => runLengthDistribution(three, {}, 0)).toThrow("upTo");
    expect(() => runLengthDistribution(three, {}, 1e6)).toThrow("upTo");
  });
});

describe("false alarms a year", () => {
  it("are readings a year over the run length, for every series", () => {
    expect(falseAlarmsPerYear(365, { stripsPerDay: 1 })).toBe(1);
    expect(falseAlarmsPerYear(100, { stripsPerDay: 2, daysPerYear: 300, series: 12 })).toBe(72);
  });

  it("refuse no strips and half a series", () => {
    expect(() => falseAlarmsPerYear(370, { stripsPerDay: 0 })).toThrow("stripsPerDay");
    expect(() => falseAlarmsPerYear(370, { stripsPerDay: 1, series: 1.5 })).toThrow("series");
    expect(() => falseAlarmsPerYear(0, { stripsPerDay: 1 })).toThrow("inControlRunLength");
  });
});
