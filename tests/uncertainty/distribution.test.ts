import { describe, expect, it } from "vitest";
import { seededRandom } from "wetside/numerics";
import { type Distribution, standardUncertainty } from "wetside/uncertainty";
import { drawFrom } from "../../lib/uncertainty/sample-distribution.ts";

const CLOSE = 1e-12; // formulas of a few operations
const DRAWS = 200_000;
const DRAWN = 0.01; // standard deviation of a drawn sd of 1 is 0.0016; of the t case 0.004

const shapes: readonly (readonly [Distribution, number])[] = [
  [{ kind: "constant", mean: 3 }, 0],
  [{ kind: "normal", mean: 1, standardUncertainty: 1 }, 1],
  [{ kind: "rectangular", mean: 1, halfWidth: Math.sqrt(3) }, 1],
  [{ kind: "triangular", mean: 1, halfWidth: Math.sqrt(6) }, 1],
  [{ kind: "arcsine", mean: 1, halfWidth: Math.SQRT2 }, 1],
  [{ kind: "trapezoidal", mean: 1, halfWidth: 2, topHalfWidth: Math.SQRT2 }, 1],
  [
    {
      kind: "sum",
      mean: 1,
      parts: [
        { kind: "normal", mean: 0, standardUncertainty: 0.6 },
        { kind: "rectangular", mean: 0, halfWidth: 0.8 * Math.sqrt(3) },
      ],
    },
    1,
  ],
];

describe("standardUncertainty", () => {
  it.each(shapes)("of %o is %d", (distribution, expected) => {
    expect(standardUncertainty(Object.freeze(distribution))).toBeCloseTo(expected, 12);
  });

  it("of a trapezoid runs from triangle to rectangle", () => {
    const at = (topHalfWidth: number) =>
      standardUncertainty({ kind: "trapezoidal", mean: 0, halfWidth: 1, topHalfWidth });
    expect(Math.abs(at(0) - 1 / Math.sqrt(6))).toBeLessThan(CLOSE);
    expect(Math.abs(at(1) - 1 / Math.sqrt(3))).toBeLessThan(CLOSE);
  });

  it("of t is the scale that the law of propagation uses", () => {
    const t: Distribution = { kind: "t", mean: 0, standardUncertainty: 2, degreesOfFreedom: 4 };
    expect(standardUncertainty(t)).toBe(2);
  });

  it.each([
    [{ kind: "rectangular", mean: 0, halfWidth: -1 }, "halfWidth is -1"],
    [{ kind: "normal", mean: Number.NaN, standardUncertainty: 1 }, "mean is NaN"],
    [{ kind: "t", mean: 0, standardUncertainty: 1, degreesOfFreedom: 0 }, "degreesOfFreedom is 0"],
    [{ kind: "trapezoidal", mean: 0, halfWidth: 1, topHalfWidth: 2 }, "topHalfWidth is 2"],
    [{ kind: "sum", mean: 0, parts: [] }, "at least one distribution"],
    [{ kind: "triangle", mean: 0, halfWidth: 1 }, 'did you mean "triangular"'],
    [null, "write a distribution"],
  ])("refuses %o", (distribution, message) => {
    expect(() => standardUncertainty(distribution as never)).toThrow(message);
  });
});

describe("draws", () => {
  it.each(shapes)("from %o have its mean and standard deviation", (distribution, expected) => {
    const random = seededRandom(8);
    const values = Array.from({ length: DRAWS }, () => drawFrom(distribution, random));
    const mean = values.reduce((sum, x) => sum + x, 0) / DRAWS;
    const sd = Math.sqrt(values.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (DRAWS - 1));
    expect(Math.abs(mean - distribution.mean)).toBeLessThan(DRAWN);
    expect(Math.abs(sd - expected)).toBeLessThan(DRAWN);
  });

  it.each([0.8, 3, 10])("from t with %d degrees of freedom have its quantiles", (nu) => {
    const random = seededRandom(9);
    const t: Distribution = { kind: "t", mean: 0, standardUncertainty: 1, degreesOfFreedom: nu };
    const beyond = { 0.8: 1.1112, 3: 0.7649, 10: 0.6998 }[nu] ?? 0; // SciPy 1.10: t.ppf(0.75, nu)
    const count = Array.from({ length: DRAWS }, () => drawFrom(t, random)).filter(
      (x) => x > beyond,
    ).length;
    expect(Math.abs(count / DRAWS - 0.25)).toBeLessThan(0.005);
  });
});
