import { describe, expect, it } from "vitest";
import { minimizeScalar } from "../../lib/numerics/index.ts";

describe("minimizeScalar", () => {
  it("finds a smooth, a kinked and an end minimum", () => {
    expect(minimizeScalar((x) => Math.cosh(x - 2), { lower: -5, upper: 9 }).x).toBeCloseTo(2, 6);
    expect(minimizeScalar((x) => Math.abs(x - 0.4), { lower: 0, upper: 1 }).x).toBeCloseTo(0.4, 6);
    expect(minimizeScalar((x) => x, { lower: 3, upper: 4 }).x).toBeCloseTo(3, 6);
    expect(minimizeScalar((x) => -x, { lower: 3, upper: 4 }).x).toBeCloseTo(4, 6);
  });
  it("never returns more than the function's value at a grid of points", () => {
    const f = (x: number) => (x - 1) ** 4 + 0.1 * x;
    const least = minimizeScalar(f, { lower: -3, upper: 3 }).value;
    for (let x = -3; x <= 3; x += 0.01) expect(f(x)).toBeGreaterThanOrEqual(least - 1e-12);
  });
  it("refuses an empty interval", () => {
    expect(() => minimizeScalar((x) => x, { lower: 1, upper: 1 })).toThrow("lower < upper");
  });
});

describe("minimizeScalar at the door", () => {
  it("answers a flat function with a place inside and the function's value", () => {
    const { x, value } = minimizeScalar(() => 3, { lower: 0, upper: 1 });
    expect(value).toBe(3);
    expect(x >= 0 && x <= 1).toBe(true);
  });
  it("refuses a tolerance that is no number", () => {
    const f = (x: number) => x * x;
    for (const tolerance of [Number.NaN, -1, "0.1" as unknown as number]) {
      expect(() => minimizeScalar(f, { lower: -1, upper: 1, tolerance })).toThrow("tolerance");
    }
    expect(() => minimizeScalar(3 as never, { lower: -1, upper: 1 })).toThrow("a function of x");
  });
});
