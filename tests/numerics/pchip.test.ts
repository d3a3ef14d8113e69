import { describe, expect, it } from "vitest";
import { pchip } from "../../lib/numerics/index.ts";
import fc from "../properties/fast-check.ts";

describe("pchip", () => {
  it("passes through its points and is a straight line between two", () => {
    const curve = pchip([0, 2, 3], [1, 5, 4]);
    expect([0, 2, 3].map(curve.evaluate)).toEqual([1, 5, 4]);
    expect(pchip([0, 2], [1, 5]).evaluate(0.5)).toBe(2);
  });
  it("never leaves the range of the two neighbouring values", () => {
    const values = fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 2, maxLength: 8 });
    fc.assert(
      fc.property(values, fc.double({ min: 0, max: 1, noNaN: true }), (y, part) => {
        const x = y.map((_, i) => i * i + i);
        const curve = pchip(x, y);
        for (let i = 0; i + 1 < y.length; i++) {
          const [a, b] = [y[i] ?? 0, y[i + 1] ?? 0];
          const [from, to] = [x[i] ?? 0, x[i + 1] ?? 0];
          const value = curve.evaluate(Math.min(to, from + part * (to - from)));
          expect(value).toBeGreaterThanOrEqual(Math.min(a, b) - 1e-9);
          expect(value).toBeLessThanOrEqual(Math.max(a, b) + 1e-9);
        }
      }),
    );
  });
  it("refuses points out of order, too few points and x outside them", () => {
    expect(() => pchip([0, 0], [1, 2])).toThrow("x[1] is 0");
    expect(() => pchip([0], [1])).toThrow("at least 2");
    expect(() => pchip([0, 1], [1])).toThrow("write 2");
    expect(() => pchip([0, 1], [1, 2]).evaluate(1.1)).toThrow("at most 1");
  });
});

describe("pchip at the door", () => {
  it("refuses what is no list and a slope too steep for a number", () => {
    expect(() => pchip(undefined as never, [1, 2])).toThrow("x is missing");
    expect(() => pchip([0, 1], 3 as never)).toThrow("y is 3");
    expect(() => pchip([0, 1], [-1e308, 1e308])).toThrow("slope after x[0]");
  });
  it("keeps the slope of the smallest values", () => {
    expect(pchip([0, 1, 2], [0, 1e-200, 2e-200]).slopes).toEqual([1e-200, 1e-200, 1e-200]);
  });
});
