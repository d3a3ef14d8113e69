import { describe, expect, it } from "vitest";
import { compareRateLaws, publishedTimeTables } from "wetside/development";

const steep = [10, 15, 20, 25, 30, 35].map((temperatureC) => ({
  temperatureC,
  timeMin: 5 * Math.exp(9000 * (1 / (temperatureC + 273.15) - 1 / 293.15)),
}));

describe("compareRateLaws", () => {
  it("finds no error in the law that made the times, nor in a table read on the same axes", () => {
    const comparison = compareRateLaws({ rows: steep, roundingMin: 0 });
    expect([...comparison.asGood].sort()).toEqual(["activation-energy", "published-table"]);
    for (const each of comparison.ranking.slice(0, 2)) {
      expect(each.leaveOneOutPercent).toBeLessThan(1e-9);
    }
    expect(comparison.ranking[2]?.law).toBe("factor-per-10-degrees");
  });
  it("tells the two laws apart the other way round too", () => {
    const rows = steep.map((row) => ({ ...row, timeMin: 5 * 3 ** ((20 - row.temperatureC) / 10) }));
    const comparison = compareRateLaws({ rows, roundingMin: 0 });
    expect(comparison.asGood).toEqual(["factor-per-10-degrees"]);
    expect(comparison.verdict).toContain("foretells unseen rows best");
  });
  it("does not pretend to tell the laws apart where the rounding hides the difference", () => {
    for (const { rows, roundingMin } of publishedTimeTables) {
      const comparison = compareRateLaws({ rows, roundingMin });
      expect(comparison.asGood).toContain("activation-energy");
      expect(comparison.asGood).toContain("factor-per-10-degrees");
      expect(comparison.asGood).not.toContain("no temperature effect");
      expect(comparison.verdict).toContain("cannot be told apart");
    }
  });
  it("ranks from the best to the worst and leaves none out", () => {
    const errors = compareRateLaws({ rows: steep }).ranking.map((each) => each.leaveOneOutPercent);
    expect(errors).toHaveLength(4);
    expect([...errors].sort((a, b) => a - b)).toEqual(errors);
  });
  it("needs four rows", () => {
    expect(() => compareRateLaws({ rows: steep.slice(0, 3) })).toThrow("at least four rows");
  });
});
