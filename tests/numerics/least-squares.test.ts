import { describe, expect, it } from "vitest";
import { InputError } from "../../lib/input/index.ts";
import { leastSquares } from "../../lib/numerics/index.ts";

describe("leastSquares", () => {
  it("leaves residuals orthogonal to every column", () => {
    const rows = [0, 1, 2, 3, 4, 5].map((x) => [1, x, x * x]);
    const fit = leastSquares({ rows, y: [1, 0, 3, 2, 7, 4] });
    for (const j of [0, 1, 2]) {
      const dot = rows.reduce((s, row, i) => s + (row[j] ?? 0) * (fit.residuals[i] ?? 0), 0);
      expect(dot).toBeCloseTo(0, 10);
    }
    expect(fit.degreesOfFreedom).toBe(3);
  });
  it("weights a row as if it stood several times", () => {
    const once = leastSquares({
      rows: [
        [1, 0],
        [1, 1],
        [1, 2],
      ],
      y: [0, 1, 4],
      weights: [1, 2, 1],
    });
    const twice = leastSquares({
      rows: [
        [1, 0],
        [1, 1],
        [1, 1],
        [1, 2],
      ],
      y: [0, 1, 1, 4],
    });
    once.coefficients.forEach((b, j) => {
      expect(b).toBeCloseTo(twice.coefficients[j] ?? Number.NaN, 12);
    });
  });
  it("does not mind columns of very different size", () => {
    const rows = [1, 2, 3, 4].map((x) => [1e9, x * 1e-9]);
    const fit = leastSquares({ rows, y: [3, 5, 7, 9] });
    expect((fit.coefficients[0] ?? 0) * 1e9).toBeCloseTo(1, 8);
    expect((fit.coefficients[1] ?? 0) * 1e-9).toBeCloseTo(2, 8);
  });
  it("refuses dependent columns, too few rows and ragged rows", () => {
    expect(() =>
      leastSquares({
        rows: [
          [1, 2],
          [2, 4],
          [3, 6],
        ],
        y: [1, 2, 3],
      }),
    ).toThrow("multiples");
    expect(() => leastSquares({ rows: [[1, 2]], y: [1] })).toThrow("more rows");
    expect(() => leastSquares({ rows: [[1], [1, 2]], y: [1, 2] })).toThrow("rows[1]");
    expect(() => leastSquares({ rows: [[1], [2]], y: [1, 2], weights: [1, 0] })).toThrow(
      "weights[1]",
    );
  });
});

describe("leastSquares with much and with little", () => {
  it("takes more rows than a call takes arguments", () => {
    const rows = Array.from({ length: 130_000 }, (_, i) => [1, i % 7]);
    const { coefficients } = leastSquares({ rows, y: rows.map(([, x]) => 3 + 2 * (x ?? 0)) });
    expect(coefficients[0]).toBeCloseTo(3, 9);
    expect(coefficients[1]).toBeCloseTo(2, 9);
  });
  it("says what is missing and lets no infinite error out", () => {
    const rows = [
      [1, 0],
      [1, 1],
      [1, 2],
    ];
    expect(() => leastSquares(undefined as never)).toThrow("with rows and y");
    expect(() => leastSquares({ rows } as never)).toThrow("y is missing");
    expect(() => leastSquares({ rows: [1, 2, 3] as never, y: [1, 2, 3] })).toThrow(InputError);
    expect(() => leastSquares({ rows, y: [1e300, 1, 1] })).toThrow("standard error");
  });
});
