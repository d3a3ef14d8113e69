import { describe, expect, it } from "vitest";
import {
  type InputQuantity,
  monteCarloUncertainty,
  propagateUncertainty,
} from "wetside/uncertainty";
import fc from "./fast-check.ts";

const RELATIVE = 1e-6; // derivative and rounding
const DRAWN = 0.03; // 20 000 draws: the standard deviation of u is 0.5 %

const coefficient = fc.double({ min: -100, max: 100, noNaN: true });
const uncertainty = fc.double({ min: 1e-3, max: 10, noNaN: true });

const linearCase = fc.array(fc.record({ c: coefficient, mean: coefficient, u: uncertainty }), {
  minLength: 1,
  maxLength: 5,
});

const toInputs = (terms: readonly { mean: number; u: number }[]): InputQuantity[] =>
  terms.map(({ mean, u }, i) => ({
    name: `x${i}`,
    distribution: { kind: "normal", mean, standardUncertainty: u },
  }));

describe("laws of uncertainty", () => {
  it("a linear model's uncertainty is the root of the sum of squares", () => {
    fc.assert(
      fc.property(linearCase, (terms) => {
        const model = (x: Readonly<Record<string, number>>) =>
          terms.reduce((sum, { c }, i) => sum + c * (x[`x${i}`] ?? 0), 0);
        const result = propagateUncertainty(model, toInputs(terms));
        const expected = Math.hypot(...terms.map(({ c, u }) => c * u));
        const slack = RELATIVE * (expected + 1e-6);
        expect(Math.abs(result.combinedStandardUncertainty - expected)).toBeLessThanOrEqual(slack);
      }),
    );
  });

  it("Monte Carlo agrees with propagation for a linear model", () => {
    fc.assert(
      fc.property(linearCase, fc.integer({ min: 0, max: 1e6 }), (terms, seed) => {
        const model = (x: Readonly<Record<string, number>>) =>
          terms.reduce((sum, { c }, i) => sum + c * (x[`x${i}`] ?? 0), 0);
        const inputs = toInputs(terms);
        const budget = propagateUncertainty(model, inputs);
        const drawn = monteCarloUncertainty(model, inputs, { seed, trials: 20_000 });
        const u = budget.combinedStandardUncertainty;
        expect(Math.abs(drawn.standardUncertainty - u)).toBeLessThanOrEqual(DRAWN * u + 1e-9);
        expect(Math.abs(drawn.value - budget.value)).toBeLessThanOrEqual(DRAWN * u * 2 + 1e-9);
      }),
      { numRuns: 25 },
    );
  });

  it("scaling the result scales its uncertainty", () => {
    fc.assert(
      fc.property(uncertainty, fc.double({ min: 0.01, max: 100, noNaN: true }), (u, scale) => {
        const inputs = toInputs([{ mean: 20, u: u / 10 }]);
        const base = propagateUncertainty(({ x0 = 0 }) => Math.log(x0), inputs);
        const scaled = propagateUncertainty(({ x0 = 0 }) => scale * Math.log(x0), inputs);
        const ratio = scaled.combinedStandardUncertainty / base.combinedStandardUncertainty;
        expect(Math.abs(ratio / scale - 1)).toBeLessThan(RELATIVE);
      }),
    );
  });

  it("no finite input gives a number that is not finite", () => {
    const finite = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(finite, fc.double({ min: 0, max: 1e6, noNaN: true }), (mean, halfWidth) => {
        const inputs: InputQuantity[] = [
          { name: "x", distribution: { kind: "rectangular", mean, halfWidth } },
        ];
        const result = propagateUncertainty(({ x = 0 }) => x / 3, inputs);
        const numbers = [result.value, result.combinedStandardUncertainty, ...result.interval];
        expect(numbers.every(Number.isFinite)).toBe(true);
      }),
    );
  });
});
