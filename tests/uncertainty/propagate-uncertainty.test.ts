import { describe, expect, it } from "vitest";
import { InputError } from "wetside/input";
import {
  coverageFactor,
  degreesOfFreedomFromReliability,
  effectiveDegreesOfFreedom,
  type InputQuantity,
  numericalDerivative,
  propagateUncertainty,
} from "wetside/uncertainty";

const DERIVATIVE = 1e-9; // relative; central differences extrapolated in doubles
const normal = (name: string, mean: number, standardUncertainty: number): InputQuantity =>
  Object.freeze({ name, distribution: { kind: "normal", mean, standardUncertainty } as const });

describe("numericalDerivative", () => {
  it.each([
    ["exp at 1", Math.exp, 1, Math.E],
    ["sin at 0", Math.sin, 0, 1],
    ["1/x at 0.001", (x: number) => 1 / x, 0.001, -1e6],
    ["a straight line", (x: number) => 3 * x - 7, 1e6, 3],
    ["a constant", () => 5, 2, 0],
  ] as const)("of %s is right, with an honest error", (_, f, x, expected) => {
    const { derivative, errorBound } = numericalDerivative(f, x, Math.max(1e-4, Math.abs(x) / 10));
    expect(Math.abs(derivative - expected)).toBeLessThanOrEqual(
      Math.max(DERIVATIVE * Math.abs(expected), 20 * errorBound),
    );
    expect(errorBound).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(expected)));
  });

  it("halves a step that leaves the function's domain", () => {
    const { derivative } = numericalDerivative(Math.log, 0.1, 5);
    expect(Math.abs(derivative - 10)).toBeLessThan(1e-6);
  });

  it("refuses a function that is nowhere finite", () => {
    expect(() => numericalDerivative(() => Number.NaN, 1, 0.1)).toThrow(InputError);
  });
});

describe("propagateUncertainty", () => {
  it("adds in quadrature for a sum and relatively for a product", () => {
    const inputs = [normal("a", 10, 0.3), normal("b", 20, 0.4)];
    const sum = propagateUncertainty(({ a = 0, b = 0 }) => a + b, inputs);
    expect(sum.combinedStandardUncertainty).toBeCloseTo(0.5, 10);
    const product = propagateUncertainty(({ a = 0, b = 0 }) => a * b, inputs);
    expect(product.relativeStandardUncertainty).toBeCloseTo(Math.hypot(0.03, 0.02), 10);
  });

  it("cancels a common error that enters a difference with r = 1", () => {
    const inputs = [normal("a", 10, 0.3), normal("b", 9, 0.3)];
    const correlations = [{ between: ["a", "b"] as const, coefficient: 1 }];
    const result = propagateUncertainty(({ a = 0, b = 0 }) => a - b, inputs, { correlations });
    expect(result.combinedStandardUncertainty).toBeLessThan(1e-6);
  });

  it("has rows whose shares sum to 100 %, correlated or not", () => {
    const inputs = [normal("a", 10, 0.3), normal("b", 20, 0.4), normal("c", 5, 0.1)];
    const correlations = [{ between: ["a", "b"] as const, coefficient: -0.5 }];
    for (const options of [{}, { correlations }]) {
      const { rows } = propagateUncertainty(
        ({ a = 0, b = 0, c = 1 }) => (a * b) / c,
        inputs,
        options,
      );
      expect(rows.reduce((total, row) => total + row.variancePercent, 0)).toBeCloseTo(100, 9);
    }
  });

  it("gives a zero uncertainty for constants, and no relative one at zero", () => {
    const inputs: InputQuantity[] = [{ name: "a", distribution: { kind: "constant", mean: 0 } }];
    const result = propagateUncertainty(({ a = 0 }) => a, inputs);
    expect(result).toMatchObject({
      value: 0,
      combinedStandardUncertainty: 0,
      relativeStandardUncertainty: null,
      effectiveDegreesOfFreedom: "infinite",
      interval: [0, 0],
    });
  });

  it("warns where the first order vanishes", () => {
    const { warnings } = propagateUncertainty(({ x = 0 }) => x * x, [normal("x", 0, 1)]);
    expect(warnings.join(" ")).toContain("use Monte Carlo");
  });

  it("gives the exact variance of a product at second order", () => {
    const inputs = [normal("a", 2, 0.5), normal("b", 3, 0.7)];
    const { combinedStandardUncertainty } = propagateUncertainty(
      ({ a = 0, b = 0 }) => a * b,
      inputs,
      { order: 2 },
    );
    const exact = Math.sqrt((2 * 0.7) ** 2 + (3 * 0.5) ** 2 + (0.5 * 0.7) ** 2);
    expect(combinedStandardUncertainty).toBeCloseTo(exact, 10);
  });

  it("gives the exact variance of a square of a normal at second order", () => {
    const { combinedStandardUncertainty: u } = propagateUncertainty(
      ({ x = 0 }) => x * x,
      [normal("x", 1, 0.5)],
      { order: 2 },
    );
    expect(u).toBeCloseTo(Math.sqrt(4 * 0.25 + 2 * 0.0625), 10);
  });

  it("widens k when a large part rests on few readings", () => {
    const few: InputQuantity = {
      name: "a",
      distribution: { kind: "t", mean: 1, standardUncertainty: 0.1, degreesOfFreedom: 3 },
    };
    const result = propagateUncertainty(({ a = 0, b = 0 }) => a + b, [few, normal("b", 1, 0.01)]);
    expect(result.coverageFactor).toBeGreaterThan(3.1);
    expect(result.coverageFactor).toBeLessThan(3.19); // t₉₅(3) = 3.18
  });

  it("can be saved as JSON and read back unchanged", () => {
    const result = propagateUncertainty(({ a = 0 }) => 2 * a, [normal("a", 1, 0.1)]);
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });

  it.each([
    ["no inputs", [], {}, "at least one"],
    ["a name given twice", [normal("a", 1, 1), normal("a", 2, 1)], {}, "given twice"],
    [
      "an unknown name in a correlation",
      [normal("a", 1, 1)],
      { correlations: [{ between: ["a", "q"], coefficient: 0.5 }] },
      "write one of",
    ],
    [
      "a correlation beyond 1",
      [normal("a", 1, 1), normal("b", 1, 1)],
      { correlations: [{ between: ["a", "b"], coefficient: 1.5 }] },
      "at most 1",
    ],
    [
      "a probability in per cent",
      [normal("a", 1, 1)],
      { coverageProbability: 95 },
      "0.95 for 95 %",
    ],
    [
      "second order with correlations",
      [normal("a", 1, 1), normal("b", 1, 1)],
      { order: 2, correlations: [{ between: ["a", "b"], coefficient: 0.5 }] },
      "Monte Carlo",
    ],
    [
      "coefficients that contradict each other",
      [normal("a", 1, 1), normal("b", 1, 1), normal("c", 1, 1)],
      {
        correlations: [
          { between: ["a", "b"], coefficient: 1 },
          { between: ["b", "c"], coefficient: 1 },
          { between: ["a", "c"], coefficient: -1 },
        ],
      },
      "contradict",
    ],
  ])("refuses %s", (_, inputs, options, message) => {
    expect(() => propagateUncertainty(({ a = 0 }) => a, inputs, options as never)).toThrow(message);
  });

  it("refuses a model without a finite value and shows where", () => {
    const bad = () => propagateUncertainty(({ a = 0 }) => 1 / a, [normal("a", 0, 1)]);
    expect(bad).toThrow("no finite number at a = 0");
  });
});

describe("degrees of freedom and coverage", () => {
  it("of one contribution are its own", () => {
    expect(effectiveDegreesOfFreedom([{ contribution: -3, degreesOfFreedom: 7 }])).toBeCloseTo(
      7,
      12,
    );
  });

  it("lie between the smallest and the sum", () => {
    const nu = effectiveDegreesOfFreedom([
      { contribution: 1, degreesOfFreedom: 4 },
      { contribution: 2, degreesOfFreedom: 9 },
    ]);
    expect(nu).toBeGreaterThan(4);
    expect(nu).toBeLessThan(13);
  });

  it("survive contributions in absurd units", () => {
    for (const scale of [1e-200, 1e200]) {
      const nu = effectiveDegreesOfFreedom([
        { contribution: scale, degreesOfFreedom: 5 },
        { contribution: scale, degreesOfFreedom: 5 },
      ]);
      expect(nu).toBeCloseTo(10, 9);
    }
  });

  it("are infinite where nothing varies", () => {
    expect(effectiveDegreesOfFreedom([{ contribution: 0, degreesOfFreedom: 3 }])).toBe("infinite");
  });

  it("from reliability: 10 % is 50", () => {
    expect(degreesOfFreedomFromReliability(0.1)).toBeCloseTo(50, 10);
    expect(() => degreesOfFreedomFromReliability(0)).toThrow("greater than 0");
  });

  it("make the coverage factor fall to the normal one", () => {
    const ks = [1, 2, 5, 20, 1000].map((nu) => coverageFactor(0.95, nu));
    expect([...ks].sort((a, b) => b - a)).toEqual(ks);
    expect(ks.at(-1)).toBeGreaterThan(coverageFactor(0.95, "infinite"));
  });

  it.each([0, 1, -0.1, 95, Number.NaN])("refuse a probability of %d", (p) => {
    expect(() => coverageFactor(p, 5)).toThrow("0.95 for 95 %");
  });

  it("refuse degrees of freedom below 1", () => {
    expect(() => coverageFactor(0.95, 0.5)).toThrow('or "infinite"');
  });
});
