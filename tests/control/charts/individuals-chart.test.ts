import { describe, expect, it } from "vitest";
import { individualsChart, prespecifiedLimits } from "wetside/control";
import { frozen } from "../example-strips.ts";

const limits = prespecifiedLimits({ centre: 0, sigma: 1 });

describe("the individuals chart", () => {
  it("takes a point on a limit as within it and one past it as beyond", () => {
    const chart = individualsChart(frozen([3, -3, 3.0001, -3.0001]), { limits });
    expect(chart.beyond).toEqual([2, 3]);
  });
  it("takes a decimal on a decimal limit as on it, in spite of binary rounding", () => {
    const on = prespecifiedLimits({ centre: 0.1, sigma: 0.1 });
    expect((0.4 - 0.1) / 0.1).toBeGreaterThan(3);
    expect(individualsChart([0.4], { limits: on }).beyond).toEqual([]);
  });
  it("charts one reading, which has no moving range", () => {
    const chart = individualsChart([0.5], { limits });
    expect(chart.movingRange.values).toEqual([]);
    expect(chart.beyond).toEqual([]);
  });
  it("gives each moving range to the later of its readings, and none across a restart", () => {
    const chart = individualsChart([0, 1, 5, 6], { limits, restartAt: [2] });
    expect(chart.movingRange.rows).toEqual([1, 3]);
    expect(chart.movingRange.values).toEqual([1, 1]);
  });
  it("lists moving ranges beyond their limit of 3.686 sigma", () => {
    const chart = individualsChart([0, 3.68, 0, 3.69], { limits });
    expect(chart.movingRange.upperLimit).toBeCloseTo(
      2 / Math.sqrt(Math.PI) + 3 * Math.sqrt(2 - 4 / Math.PI),
      12,
    );
    expect(chart.movingRange.beyond).toEqual([3]);
  });
  it("applies run rules only if they are switched on", () => {
    const run = new Array(9).fill(0.5);
    expect(individualsChart(run, { limits }).signals).toEqual([]);
    const on = individualsChart(run, { limits, runRules: { rules: ["nelson-2"] } });
    expect(on.signals.map((signal) => signal.at)).toEqual([8]);
  });
  it("says how often the two charts signal falsely together", () => {
    expect(individualsChart([0], { limits }).assumptions.join()).toMatch(/once in about 105/);
  });
  it("is safe to write as JSON", () => {
    const chart = individualsChart([0, 1, 5], { limits, runRules: {} });
    expect(JSON.parse(JSON.stringify(chart))).toEqual(chart);
  });
  it("refuses an empty series", () => {
    expect(() => individualsChart([], { limits })).toThrow(/at least 1 reading/);
  });
});
