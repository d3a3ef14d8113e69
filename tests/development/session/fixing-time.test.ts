import { describe, expect, it } from "vitest";
import { fixingTime, InputError } from "wetside";

describe("fixingTime", () => {
  it("is twice the clearing time, three times for modern films", () => {
    expect(fixingTime({ clearingTimeFreshS: 45 }).fixS).toBe(90);
    expect(fixingTime({ clearingTimeFreshS: 45, modernFilm: true }).fixS).toBe(135);
  });

  it("calls a fixer used up when the clearing time has doubled, not before", () => {
    expect(fixingTime({ clearingTimeFreshS: 60, clearingTimeNowS: 119 }).exhausted).toBe(false);
    const done = fixingTime({ clearingTimeFreshS: 60, clearingTimeNowS: 120 });
    expect(done.exhausted).toBe(true);
    expect(done.spent).toBe(1);
    expect(done.warnings.join()).toContain("used up");
  });

  it("warns before the end, and counts a faster test as fresh", () => {
    const near = fixingTime({ clearingTimeFreshS: 60, clearingTimeNowS: 110 });
    expect(near.warnings.join()).toContain("nears its end");
    expect(fixingTime({ clearingTimeFreshS: 60, clearingTimeNowS: 50 }).spent).toBe(0);
  });

  it("takes longer in a bath colder than the test, not in a warmer one above 20 °C", () => {
    const at = (temperatureC: number) =>
      fixingTime({ clearingTimeFreshS: 60, testedAtC: 20, temperatureC }).fixS;
    expect(at(10)).toBeCloseTo(240, 10);
    expect(at(24)).toBe(120);
  });

  it("refuses times that cannot be", () => {
    for (const clearingTimeFreshS of [0, -5, Number.NaN]) {
      expect(() => fixingTime({ clearingTimeFreshS })).toThrow(InputError);
    }
    expect(() => fixingTime({ clearingTimeFreshS: 60, clearingTimeNowS: 20 })).toThrow("warmer");
    expect(() => fixingTime({ clearingTimeFreshS: 60, temperatureC: 68 })).toThrow(InputError);
  });
});
