import { describe, expect, it } from "vitest";
import { seededRandom } from "../../lib/numerics/index.ts";

describe("seededRandom", () => {
  it("repeats itself for a seed and differs between seeds", () => {
    const draw = (seed: number) => Array.from({ length: 5 }, seededRandom(seed).uniform);
    expect(draw(1)).toEqual(draw(1));
    expect(draw(1)).not.toEqual(draw(2));
  });
  it("has uniform and normal moments within five standard errors", () => {
    const n = 200_000;
    const { uniform, normal } = seededRandom(11);
    let [u, z, z2] = [0, 0, 0];
    for (let i = 0; i < n; i++) {
      u += uniform();
      const value = normal();
      z += value;
      z2 += value * value;
    }
    expect(Math.abs(u / n - 0.5)).toBeLessThan(5 * Math.sqrt(1 / 12 / n));
    expect(Math.abs(z / n)).toBeLessThan(5 / Math.sqrt(n));
    expect(Math.abs(z2 / n - 1)).toBeLessThan(5 * Math.sqrt(2 / n));
  });
  it("draws every whole number of a range and none outside", () => {
    const { integer } = seededRandom(3);
    const seen = new Set(Array.from({ length: 500 }, () => integer(1, 6)));
    expect([...seen].sort()).toEqual([1, 2, 3, 4, 5, 6]);
  });
  it("refuses a seed that is not a whole number", () => {
    expect(() => seededRandom(1.5)).toThrow("whole number");
  });
});

describe("a range of whole numbers", () => {
  it("is refused if it is empty or has broken ends", () => {
    const { integer } = seededRandom(1);
    expect(integer(4, 4)).toBe(4);
    expect(() => integer(5, 1)).toThrow("max is 1; write a whole number at least 5");
    expect(() => integer(Number.NaN, 1)).toThrow("min");
    expect(() => integer(0.5, 3)).toThrow("min");
  });
});
