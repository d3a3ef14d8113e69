import { describe, expect, it } from "vitest";
import { findRoot } from "../../lib/numerics/index.ts";

describe("findRoot", () => {
  it("finds roots of awkward functions to double precision", () => {
    expect(findRoot((x) => x ** 3, { lower: -1, upper: 2 })).toBeCloseTo(0, 5);
    expect(findRoot((x) => Math.exp(x) - 1e-6, { lower: -100, upper: 5 })).toBeCloseTo(
      Math.log(1e-6),
      12,
    );
    expect(findRoot((x) => Math.atan(50 * (x - 0.3)), { lower: -10, upper: 10 })).toBeCloseTo(
      0.3,
      14,
    );
  });
  it("takes an end that is a root, and the ends in either order", () => {
    expect(findRoot((x) => x - 1, { lower: 1, upper: 4 })).toBe(1);
    expect(findRoot((x) => x - 4, { lower: 1, upper: 4 })).toBe(4);
    expect(findRoot((x) => x * x - 2, { lower: 2, upper: 0 })).toBeCloseTo(Math.SQRT2, 14);
  });
  it("stays within the bracket for a step function", () => {
    const root = findRoot((x) => (x < 0.7 ? -1 : 1), { lower: 0, upper: 1 });
    expect(root).toBeCloseTo(0.7, 14);
  });
  it("spends few evaluations on a smooth function", () => {
    let calls = 0;
    findRoot(
      (x) => {
        calls++;
        return Math.cos(x) - x;
      },
      { lower: 0, upper: 1 },
    );
    expect(calls).toBeLessThan(12);
  });
  it("refuses ends of the same sign and values that are not finite", () => {
    expect(() => findRoot((x) => x * x + 1, { lower: -1, upper: 1 })).toThrow("signs differ");
    expect(() => findRoot((x) => 1 / x, { lower: 0, upper: 1 })).toThrow("f(0) is Infinity");
  });
});

describe("findRoot at the door", () => {
  it("takes equal ends only if the root is there", () => {
    expect(findRoot((x) => x, { lower: 0, upper: 0 })).toBe(0);
    expect(() => findRoot((x) => x, { lower: 1, upper: 1 })).toThrow("signs differ");
  });
  it("finds a step between the widest ends, where only halving helps", () => {
    const step = (x: number) => (x < Math.PI ? -1e-300 : 1);
    expect(findRoot(step, { lower: -1e300, upper: 1e300 })).toBeCloseTo(Math.PI, 12);
  });
  it("says what to write instead of what is no function and no interval", () => {
    expect(() => findRoot(undefined as never, { lower: 0, upper: 1 })).toThrow("f is missing");
    expect(() => findRoot((x) => x, undefined as never)).toThrow("with lower and upper");
    expect(() => findRoot((x) => x, { lower: -1e308, upper: 1e308 })).toThrow("upper − lower");
  });
});
