import { describe, expect, it } from "vitest";
import { cusumChart } from "wetside/control";

const plain = { target: 0, sigma: 1, k: 0.5, h: 4 };

describe("the tabular CUSUM", () => {
  it("takes a sum on the decision interval as within it", () => {
    expect(cusumChart([4.5], plain).beyond).toEqual([]);
    expect(cusumChart([4.5001], plain).beyond).toEqual([0]);
  });
  it("tells once for each excursion from zero, with the readings since", () => {
    const chart = cusumChart([0, 3, 3, 3, -9, 3, 3, 3], plain);
    expect(chart.beyond).toEqual([2, 3, 4, 5, 6, 7]);
    const up = chart.signals.filter((signal) => signal.side === "above");
    expect(up.map((signal) => signal.at)).toEqual([2, 6]);
    expect(up[0]?.rows).toEqual([1, 2]);
    expect(up[1]?.rows).toEqual([5, 6]);
    expect(chart.signals.map((signal) => signal.side)).toEqual(["above", "below", "above"]);
  });
  it("finds a shift sooner with a head start", () => {
    const shifted = new Array(10).fill(1.5);
    const cold = cusumChart(shifted, plain).signals[0]?.at ?? 99;
    const warm = cusumChart(shifted, { ...plain, headStart: 0.5 }).signals[0]?.at ?? 99;
    expect(warm).toBeLessThan(cold);
    expect(cusumChart(shifted, { ...plain, headStart: 0.5 }).headStart).toBe(2);
  });
  it("starts again after a signal if asked", () => {
    const chart = cusumChart([5, 5, 0], { ...plain, afterSignal: "start again" });
    expect(chart.signals.map((signal) => signal.at)).toEqual([0, 1]);
    expect(chart.upperSums).toEqual([4.5, 4.5, 0]);
  });
  it("starts afresh at a restart", () => {
    const chart = cusumChart([3, 1, 3], { ...plain, restartAt: [2] });
    expect(chart.upperSums).toEqual([2.5, 3, 2.5]);
  });
  it("stays at zero on a series that stands on target", () => {
    const chart = cusumChart(new Float64Array(50), plain);
    expect(new Set([...chart.upperSums, ...chart.lowerSums])).toEqual(new Set([0]));
    expect(chart.signals).toEqual([]);
  });
  it("keeps its signals' rows in proportion to the readings on a series that hovers at h", () => {
    const hover = Array.from({ length: 20_000 }, (_, i) => (i < 10 ? 3 : i % 2 === 0 ? 1.6 : -0.6));
    const rows = cusumChart(hover, plain).signals.reduce((sum, each) => sum + each.rows.length, 0);
    expect(rows).toBeLessThan(2 * hover.length);
  });
  it("refuses a head start of the whole interval, negative k, h of zero and an empty series", () => {
    expect(() => cusumChart([1], { ...plain, headStart: 1 })).toThrow(/headStart is 1/);
    expect(() => cusumChart([1], { ...plain, k: -0.1 })).toThrow(/k is -0.1/);
    expect(() => cusumChart([1], { ...plain, h: 0 })).toThrow(/h is 0/);
    expect(() => cusumChart([], plain)).toThrow(/at least 1 reading/);
  });

  describe("whose sums start again once a shift is over", () => {
    const shift = [...new Array(20).fill(3), ...new Array(30).fill(0)];
    const chart = (afterSignal: "carry on" | "start again once over", values: readonly number[]) =>
      cusumChart(values, { target: 0, sigma: 1, afterSignal });

    it("is the same chart up to the highest sum", () => {
      const over = chart("start again once over", shift);
      const on = chart("carry on", shift);
      expect(over.upperSums.slice(0, 20)).toEqual(on.upperSums.slice(0, 20));
      expect(over.signals).toEqual(on.signals);
    });
    it("stops signalling when the sum has fallen by more than the decision interval", () => {
      // From 50 it falls by k = 0.5 a reading: 5 after ten of them, more than 5 after eleven.
      const over = chart("start again once over", shift);
      expect(over.beyond.at(-1)).toBe(20 + 10 - 1);
      expect(over.upperSums[30]).toBe(0);
      expect(chart("carry on", shift).beyond.at(-1)).toBe(49);
    });
    it("tells a second shift as a new one, which a sum still high would hide", () => {
      const twice = [...shift, 3, 3, 3];
      expect(chart("carry on", twice).signals.map((one) => one.at)).toEqual([2]);
      const over = chart("start again once over", twice);
      expect(over.signals.map((one) => one.at)).toEqual([2, 52]);
      expect(over.signals[1]?.rows).toEqual([50, 51, 52]);
    });
    it("lets a sum that has not signalled run its course", () => {
      const quiet = [4, -3, 4, -5, 0];
      expect(chart("start again once over", quiet)).toEqual(chart("carry on", quiet));
    });
  });
});
