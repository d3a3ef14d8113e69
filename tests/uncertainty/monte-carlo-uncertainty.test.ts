import { describe, expect, it } from "vitest";
import {
  coverageIntervals,
  type InputQuantity,
  monteCarloUncertainty,
  numericalTolerance,
  propagateUncertainty,
  validatePropagation,
} from "wetside/uncertainty";

const normal = (name: string, mean: number, standardUncertainty: number): InputQuantity => ({
  name,
  distribution: { kind: "normal", mean, standardUncertainty },
});
const sum = ({ a = 0, b = 0 }: Readonly<Record<string, number>>) => a + b;
const two = [normal("a", 1, 0.3), normal("b", 2, 0.4)];

describe("monteCarloUncertainty", () => {
  it("gives the same bytes for the same seed and others for another", () => {
    const at = (seed: number) => monteCarloUncertainty(sum, two, { seed, trials: 20_000 });
    expect(JSON.stringify(at(1))).toBe(JSON.stringify(at(1)));
    expect(at(1).value).not.toBe(at(2).value);
  });

  it("stops by itself when the asked digits are stable, and they are right", () => {
    const result = monteCarloUncertainty(sum, two, { seed: 4, significantDigits: 2 });
    expect(result.stable).toBe(true);
    expect(result.tolerance).toBe(0.005);
    expect(result.trials % 10_000).toBe(0);
    expect(result.trials).toBeGreaterThanOrEqual(20_000);
    expect(Math.abs(result.standardUncertainty - 0.5)).toBeLessThan(result.tolerance);
    expect(Math.abs(result.symmetricInterval[1] - (3 + 0.98))).toBeLessThan(2 * result.tolerance);
  });

  it("takes more draws for more digits", () => {
    const draws = (significantDigits: number) =>
      monteCarloUncertainty(sum, two, { seed: 4, significantDigits }).trials;
    expect(draws(2)).toBeGreaterThan(draws(1));
  });

  it("says when the draws ran out first", () => {
    const result = monteCarloUncertainty(sum, two, {
      seed: 4,
      significantDigits: 4,
      maximumTrials: 30_000,
    });
    expect(result.stable).toBe(false);
    expect(result.trials).toBe(30_000);
    expect(result.warnings).toHaveLength(1);
  });

  it("uses passes of 100/(1 − p) draws where that is more than ten thousand", () => {
    const { trials } = monteCarloUncertainty(sum, two, {
      seed: 1,
      significantDigits: 1,
      coverageProbability: 0.999,
    });
    expect(trials % 100_000).toBe(0);
  });

  it("draws correlated normals with their correlation, also ±1", () => {
    for (const coefficient of [-1, -0.6, 0.5, 1]) {
      const correlations = [{ between: ["a", "b"] as const, coefficient }];
      const { standardUncertainty } = monteCarloUncertainty(sum, two, {
        seed: 6,
        trials: 200_000,
        correlations,
      });
      const expected = Math.sqrt(0.09 + 0.16 + 2 * coefficient * 0.12);
      expect(Math.abs(standardUncertainty - expected)).toBeLessThan(0.005);
    }
  });

  it("has no shorter interval than the shortest", () => {
    const result = monteCarloUncertainty(({ a = 0 }) => Math.exp(a), [normal("a", 0, 0.5)], {
      seed: 2,
      trials: 50_000,
    });
    const length = ([low, high]: readonly [number, number]) => high - low;
    expect(length(result.shortestInterval)).toBeLessThan(length(result.symmetricInterval));
  });

  it("treats constants as constants", () => {
    const constant: InputQuantity = { name: "a", distribution: { kind: "constant", mean: 3 } };
    const result = monteCarloUncertainty(({ a = 0 }) => a, [constant], { seed: 1 });
    expect(result).toMatchObject({
      value: 3,
      standardUncertainty: 0,
      symmetricInterval: [3, 3],
      stable: true,
    });
  });

  it.each([
    ["a seed that is not whole", { seed: 1.5 }, "whole number"],
    ["too few draws for the probability", { seed: 1, trials: 50 }, "at least 200"],
    ["room for less than two passes", { seed: 1, maximumTrials: 15_000 }, "two passes"],
    ["a probability of 1", { seed: 1, coverageProbability: 1 }, "less than 1"],
  ])("refuses %s", (_, options, message) => {
    expect(() => monteCarloUncertainty(sum, two, options)).toThrow(message);
  });

  it("refuses correlated inputs that are not normal", () => {
    const flat: InputQuantity = {
      name: "a",
      distribution: { kind: "rectangular", mean: 0, halfWidth: 1 },
    };
    const correlations = [{ between: ["a", "b"] as const, coefficient: 0.5 }];
    const bad = () =>
      monteCarloUncertainty(sum, [flat, normal("b", 0, 1)], { seed: 1, correlations });
    expect(bad).toThrow("only normal inputs");
  });

  it("shows the draw at which the model breaks", () => {
    const wide: InputQuantity = {
      name: "x",
      distribution: { kind: "rectangular", mean: 0, halfWidth: 1 },
    };
    const bad = () => monteCarloUncertainty(({ x = 0 }) => Math.log(x), [wide], { seed: 1 });
    expect(bad).toThrow("no finite number at x = -");
  });
});

describe("coverageIntervals", () => {
  const sorted = [0, 1, 2, 3, 4, 5, 6, 7, 8, 20];

  it("leaves as many values below as above, or one fewer", () => {
    expect(coverageIntervals(sorted, 0.8).symmetric).toEqual([0, 8]);
    expect(coverageIntervals(sorted, 0.5).symmetric).toEqual([2, 7]);
  });

  it("finds the shortest", () => {
    expect(coverageIntervals([0, 10, 11, 12, 13, 40], 0.5).shortest).toEqual([10, 13]);
  });

  it("refuses more probability than the values can show", () => {
    expect(() => coverageIntervals(sorted, 0.99)).toThrow("give at least 101 values");
    expect(() => coverageIntervals([], 0.5)).toThrow("0 values");
  });
});

describe("numericalTolerance and validatePropagation", () => {
  it("is half a unit of the last digit", () => {
    expect(numericalTolerance(0.0996, 1)).toBeCloseTo(0.05, 12);
    expect(numericalTolerance(123, 2)).toBe(5);
    expect(() => numericalTolerance(0, 2)).toThrow("greater than 0");
  });

  it("validates a linear model and not a strongly curved one", () => {
    const compare = (model: (x: Readonly<Record<string, number>>) => number, u: number) => {
      const inputs = [normal("x", 1, u)];
      const budget = propagateUncertainty(model, inputs);
      return validatePropagation(budget, monteCarloUncertainty(model, inputs, { seed: 3 }), 1);
    };
    expect(compare(({ x = 0 }) => 3 * x, 0.1).validated).toBe(true);
    expect(compare(({ x = 0 }) => Math.exp(x), 0.5).validated).toBe(false);
  });
});
