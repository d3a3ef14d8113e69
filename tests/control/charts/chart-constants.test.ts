import { describe, expect, it } from "vitest";
import { chartConstants } from "wetside/control";

// Integration by the trapezoid rule and Gauss–Legendre: measured error below 4e-12 up to n = 25.
const integrationError = 1e-11;

describe("chart constants", () => {
  it("give 2/√π and √(2 − 4/π) for two readings", () => {
    expect(chartConstants(2).d2).toBeCloseTo(2 / Math.sqrt(Math.PI), 13);
    expect(chartConstants(2).d3).toBeCloseTo(Math.sqrt(2 - 4 / Math.PI), 13);
    expect(chartConstants(2).c4).toBeCloseTo(Math.sqrt(2 / Math.PI), 13);
  });
  it("give 3/(2·√π)·… for three readings in closed form", () => {
    expect(Math.abs(chartConstants(3).d2 - 3 / Math.sqrt(Math.PI))).toBeLessThan(integrationError);
  });
  it("grow or fall as they must with the size of the subgroup", () => {
    for (let n = 3; n <= 40; n++) {
      const [a, b] = [chartConstants(n - 1), chartConstants(n)];
      expect(b.d2).toBeGreaterThan(a.d2);
      expect(b.c4).toBeGreaterThan(a.c4);
      expect(b.c4).toBeLessThan(1);
      expect(b.A2).toBeLessThan(a.A2);
      expect(b.D4).toBeLessThan(a.D4);
    }
  });
  it("never give a lower limit below zero", () => {
    const { B3, D1, D3, B5 } = chartConstants(2);
    expect([B3, D1, D3, B5]).toEqual([0, 0, 0, 0]);
  });
  it("refuse a subgroup of one, a broken number and one beyond the range", () => {
    for (const n of [0, 1, 2.5, 101, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => chartConstants(n)).toThrow(/chartConstants: n is .*at least 2/);
    }
  });
});
