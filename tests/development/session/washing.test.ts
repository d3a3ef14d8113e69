import { describe, expect, it } from "vitest";
import {
  coldFixerFactor,
  coldWashFactor,
  fillAndDumpFraction,
  InputError,
  runningWashFraction,
  washByChanges,
  washByFlow,
  washChangesNeeded,
  washMinutesNeeded,
  washRules,
} from "wetside";

const wash = Object.freeze({ areaM2: 0.1134, waterMl: 600 });
/** Left digits of a sum of a few products of doubles. */
const ROUNDING = 12;

describe("the factors of cold water", () => {
  it("are 1 at and above 20 °C and never fall as it grows colder", () => {
    expect(coldWashFactor(20)).toBe(1);
    expect(coldWashFactor(45)).toBe(1);
    expect(coldFixerFactor(30)).toBe(1);
    let before = 1;
    for (let t = 20; t >= 0; t -= 0.5) {
      expect(coldWashFactor(t)).toBeGreaterThanOrEqual(before);
      before = coldWashFactor(t);
    }
    expect(coldFixerFactor(0)).toBeCloseTo(4, ROUNDING);
  });

  it("refuse temperatures no wash has", () => {
    for (const t of [-1, 68, Number.NaN]) {
      expect(() => coldWashFactor(t)).toThrow(InputError);
      expect(() => coldFixerFactor(t)).toThrow(InputError);
    }
  });
});

describe("washByChanges", () => {
  it("becomes the fill-and-dump law when each change stands long", () => {
    const kept = 70 * wash.areaM2 + 6;
    const { residualGPerM2 } = washByChanges(wash, [600, 600]);
    const first = (residualGPerM2[1] ?? 0) / (residualGPerM2[0] ?? 1);
    expect(first).toBeCloseTo(fillAndDumpFraction(kept, 600, 1), ROUNDING);
    const second = (residualGPerM2[2] ?? 0) / (residualGPerM2[0] ?? 1);
    expect(second).toBeCloseTo(fillAndDumpFraction(kept, 600, 2), ROUNDING);
  });

  it("begins with what the film carries and falls with every change", () => {
    const { residualGPerM2, waterMl } = washByChanges(wash, [3, 3, 3]);
    expect(residualGPerM2[0]).toBeCloseTo(120 * 0.07, ROUNDING);
    for (let i = 1; i < residualGPerM2.length; i++) {
      expect(residualGPerM2[i]).toBeLessThan(residualGPerM2[i - 1] ?? 0);
    }
    expect(waterMl).toBe(1800);
  });

  it("removes less in the cold and more after a wash aid", () => {
    const last = (more: object) =>
      washByChanges({ ...wash, ...more }, [3, 3]).residualGPerM2[2] ?? 0;
    expect(last({ temperatureC: 10 })).toBeGreaterThan(last({}));
    expect(last({ washAid: true })).toBeLessThan(last({}));
  });

  it("refuses no change at all, and changes of no length", () => {
    expect(() => washByChanges(wash, [])).toThrow("such as [3, 3, 3, 3]");
    expect(() => washByChanges(wash, [3, 0])).toThrow(InputError);
    expect(() => washByChanges({ ...wash, areaM2: 0 }, [3])).toThrow(InputError);
    expect(() => washByChanges({ ...wash, waterMl: Number.NaN }, [3])).toThrow(InputError);
  });
});

describe("washByFlow", () => {
  it("halves every minute where much water runs", () => {
    const { residualGPerM2 } = washByFlow(wash, { mlPerMin: 1e9, minutes: 5 });
    // 1e9 mL/min is not without end: the tank still holds 1e-8 of what leaves the film.
    expect((residualGPerM2[1] ?? 0) / (residualGPerM2[0] ?? 1)).toBeCloseTo(1 / 32, 6);
  });

  it("agrees with stepping the same two compartments finely", () => {
    const minutes = 7;
    const mlPerMin = 300;
    const film = 70 * wash.areaM2;
    const volume = 606;
    const k = Math.LN2;
    let m = (120 * film) / 1000;
    let c = (120 * 6) / 1000 / volume;
    const steps = 200_000;
    const h = minutes / steps;
    // Midpoint rule, error of the order of h².
    for (let i = 0; i < steps; i++) {
      const dm = -k * (m - film * c);
      const dc = (-dm - mlPerMin * c) / volume;
      const m2 = m + (h / 2) * dm;
      const c2 = c + (h / 2) * dc;
      const dm2 = -k * (m2 - film * c2);
      m += h * dm2;
      c += (h * (-dm2 - mlPerMin * c2)) / volume;
    }
    const exact = washByFlow(wash, { mlPerMin, minutes }).residualGPerM2[1] ?? 0;
    expect(exact).toBeCloseTo(m / wash.areaM2, 8);
  });

  it("leaves what balance leaves where hardly any water runs", () => {
    const { residualGPerM2 } = washByFlow(wash, { mlPerMin: 1e-9, minutes: 500 });
    const kept = 70 * wash.areaM2 + 6;
    const balance = fillAndDumpFraction(kept, 600, 1);
    expect((residualGPerM2[1] ?? 0) / (residualGPerM2[0] ?? 1)).toBeCloseTo(balance, 8);
  });
});

describe("what a wash needs", () => {
  it("is the smallest number of changes that keeps a half of the limit", () => {
    const needed = washChangesNeeded(wash);
    const limit = washRules.thiosulfateLimit.gPerM2 / 2;
    const left = (changes: number) =>
      washByChanges(wash, new Array(changes).fill(3)).residualGPerM2.at(-1) ?? 0;
    expect(left(needed)).toBeLessThanOrEqual(limit);
    expect(left(needed - 1)).toBeGreaterThan(limit);
  });

  it("is the minutes at which a flow arrives there", () => {
    const minutes = washMinutesNeeded(wash, { mlPerMin: 500, margin: 1 });
    const left = washByFlow(wash, { mlPerMin: 500, minutes }).residualGPerM2[1] ?? 0;
    expect(left).toBeCloseTo(washRules.thiosulfateLimit.gPerM2, 6);
  });

  it("says so where no number of changes or minutes would do", () => {
    expect(() => washChangesNeeded(wash, { minutesEach: 0.1 })).toThrow("more water");
    expect(() => washMinutesNeeded(wash, { mlPerMin: 0.01 })).toThrow("more water");
    expect(() => washChangesNeeded(wash, { margin: 0.5 })).toThrow(InputError);
  });

  it("is nothing where the fixer was nearly water", () => {
    expect(washMinutesNeeded({ ...wash, thiosulfateGPerL: 0.01 }, { mlPerMin: 500 })).toBeLessThan(
      0.01,
    );
  });
});

describe("simple washing fractions", () => {
  it("are 1 before anything is done", () => {
    expect(runningWashFraction(0)).toBe(1);
    expect(fillAndDumpFraction(10, 500, 0)).toBe(1);
  });

  it("refuse negative times, volumes and broken counts", () => {
    expect(() => runningWashFraction(-1)).toThrow(InputError);
    expect(() => fillAndDumpFraction(0, 500, 1)).toThrow(InputError);
    expect(() => fillAndDumpFraction(10, 500, 1.5)).toThrow(InputError);
  });
});

describe("the wash rules", () => {
  it("carry a source each", () => {
    for (const rule of Object.values(washRules)) {
      expect(rule.source).not.toBe("");
      expect(rule.howObtained).not.toBe("");
    }
  });
});
