import { describe, expect, it } from "vitest";
import { ewmaChart } from "wetside/control";

const plain = { centre: 0, sigma: 1 };

describe("the EWMA chart", () => {
  it("is the chart of individuals when λ is 1", () => {
    const chart = ewmaChart([1, -2, 3.5], { ...plain, lambda: 1, widthSigma: 3 });
    expect(chart.values).toEqual([1, -2, 3.5]);
    expect(chart.upperLimits).toEqual([3, 3, 3]);
    expect(chart.beyond).toEqual([2]);
  });
  it("begins with limits of L λ sigma and widens them to the asymptotic ones", () => {
    const values = new Array(400).fill(0);
    const exact = ewmaChart(values, { ...plain, lambda: 0.2, widthSigma: 3 });
    const far = ewmaChart(values, {
      ...plain,
      lambda: 0.2,
      widthSigma: 3,
      limitForm: "asymptotic",
    });
    expect(exact.upperLimits[0]).toBeCloseTo(0.6, 12);
    expect(exact.upperLimits.at(-1)).toBeCloseTo(far.upperLimits[0] ?? 0, 12);
    for (let i = 1; i < 400; i++) {
      expect(exact.upperLimits[i]).toBeGreaterThanOrEqual(exact.upperLimits[i - 1] ?? 0);
    }
  });
  it("takes an average on its limit as within it", () => {
    const on = ewmaChart([3], { ...plain, lambda: 0.2, widthSigma: 3 });
    expect(on.values[0]).toBeCloseTo(on.upperLimits[0] ?? 0, 12);
    expect(on.beyond).toEqual([]);
  });
  it("forgets what came before at a restart, limits included", () => {
    const again = ewmaChart([1, 1, 1, 1], { ...plain, restartAt: [2] });
    expect(again.values.slice(2)).toEqual(again.values.slice(0, 2));
    expect(again.upperLimits.slice(2)).toEqual(again.upperLimits.slice(0, 2));
  });
  it("starts where it is told", () => {
    expect(ewmaChart([0], { ...plain, lambda: 0.5, start: 4 }).values).toEqual([2]);
  });
  it("refuses weights outside 0 to 1, a sigma of zero and unknown words", () => {
    expect(() => ewmaChart([1], { ...plain, lambda: 0 })).toThrow(/lambda is 0/);
    expect(() => ewmaChart([1], { ...plain, lambda: 1.1 })).toThrow(/lambda is 1.1/);
    expect(() => ewmaChart([1], { centre: 0, sigma: 0 })).toThrow(/sigma is 0/);
    const wrong = { ...plain, limitForm: "exakt" as "exact" };
    expect(() => ewmaChart([1], wrong)).toThrow(/did you mean "exact"/);
    expect(() => ewmaChart([1, Number.NaN], plain)).toThrow(/values\[1\]/);
    expect(() => ewmaChart([1], { ...plain, restartAt: [1] })).toThrow(/restartAt\[0\] is 1/);
  });
});
