import { describe, expect, it } from "vitest";
import { matrixExponential } from "wetside/numerics";

// A few dozen products and one solve of small matrices, in doubles.
const ROUNDING = 1e-12;

function relativeError(actual: number[][], expected: number[][]): number {
  const size = Math.max(...expected.flat().map(Math.abs));
  const gaps = expected.flatMap((row, i) =>
    row.map((v, j) => Math.abs(v - (actual[i]?.[j] ?? Number.NaN))),
  );
  return Math.max(...gaps) / size;
}

describe("matrixExponential", () => {
  it("is nothing for no matrix and e^a for one number", () => {
    expect(matrixExponential([])).toEqual([]);
    expect(matrixExponential([[0]])).toEqual([[1]]);
    expect(relativeError(matrixExponential([[-3]]), [[Math.exp(-3)]])).toBeLessThan(ROUNDING);
    expect(relativeError(matrixExponential([[40]]), [[Math.exp(40)]])).toBeLessThan(100 * ROUNDING);
  });
  it("handles rates of very different size without losing the small ones", () => {
    const [[fast = 1] = [], [, slow = 0] = []] = matrixExponential([
      [-1e6, 0],
      [0, -1e-6],
    ]);
    expect(fast).toBeLessThan(1e-300);
    expect(Math.abs(slow - Math.exp(-1e-6))).toBeLessThan(1e-9);
  });
  it("undoes itself with the opposite sign", () => {
    const a = [
      [-1.2, 0.4, 0.1],
      [0.7, -0.9, 0.3],
      [0.2, 0.1, -0.5],
    ];
    const there = matrixExponential(a);
    const back = matrixExponential(a.map((row) => row.map((v) => -v)));
    const product = there.map((row) =>
      row.map((_, j) => row.reduce((sum, v, k) => sum + v * (back[k]?.[j] ?? 0), 0)),
    );
    expect(
      relativeError(product, [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ]),
    ).toBeLessThan(ROUNDING);
  });
  it("keeps column sums of a compartment matrix at one, so that nothing is lost", () => {
    const a = [
      [-40, 3, 0],
      [40, -7, 0],
      [0, 4, 0],
    ];
    const e = matrixExponential(a);
    for (const j of [0, 1, 2]) {
      const sum = e.reduce((total, row) => total + (row[j] ?? 0), 0);
      expect(Math.abs(sum - 1)).toBeLessThan(ROUNDING);
    }
  });
  it("leaves its argument as it is", () => {
    const a = Object.freeze([Object.freeze([1, 2]), Object.freeze([3, 4])]);
    matrixExponential(a);
    expect(a).toEqual([
      [1, 2],
      [3, 4],
    ]);
  });
  it("says what is wrong with a matrix that is ragged, not finite, or grows without bound", () => {
    expect(() => matrixExponential([[1, 2], [3]])).toThrow("rows[1] is");
    expect(() => matrixExponential([[Number.NaN]])).toThrow("rows[0][0] is NaN");
    expect(() => matrixExponential([[1e30]])).toThrow("smaller rates");
    expect(() => matrixExponential([[2000]])).toThrow("grow");
  });
});
