import { Matrix, solve } from "ml-matrix";
import { InputError, requireEntries, requireNumber } from "../input/index.ts";

// Numerator coefficients of the [13/13] Padé approximant of e^x.
const PADE_13 = [
  64764752532480000, 32382376266240000, 7771770303897600, 1187353796428800, 129060195264000,
  10559470521600, 670442572800, 33522128640, 1323241920, 40840800, 960960, 16380, 182, 1,
] as const;
/** Largest 1-norm for which the approximant is exact to a double's rounding. */
const LARGEST_NORM = 5.371920351148152;
const MOST_SQUARINGS = 60;

/**
 * The exponential of a square matrix, e^A, by Padé approximation with scaling and squaring.
 *
 * e^A = (r_13(A/2^s))^(2^s), r_13 the diagonal Padé approximant of degree 13
 *
 * @param rows square matrix as rows of finite numbers; 1-norm up to about 1e18
 * @returns e^A as rows
 * @throws InputError if the matrix is not square, a number is not finite, or the result overflows
 *
 * @example
 * matrixExponential([[0, 6, 0], [0, 0, 6], [0, 0, 0]]) // => [[1, 6, 18], [0, 1, 6], [0, 0, 1]]
 *
 * Source: N. J. Higham, SIAM Journal on Matrix Analysis and Applications 26 (2005) 1179–1193,
 * algorithm 2.3.
 */
export function matrixExponential(rows: readonly (readonly number[])[]): number[][] {
  const where = "matrixExponential";
  const size = requireEntries(where, "rows", rows, "a list of rows").length;
  if (size === 0) return [];
  rows.forEach((row, i) => {
    requireEntries(where, `rows[${i}]`, row, "a list of numbers");
    if (row.length !== size) {
      const advice = `write ${size} numbers, as many as there are rows`;
      throw new InputError(where, `rows[${i}]`, `${row.length} numbers`, advice);
    }
    row.forEach((value, j) => {
      requireNumber(where, `rows[${i}][${j}]`, value);
    });
  });
  const norm = Math.max(
    ...rows.map((_, j) => rows.reduce((sum, row) => sum + Math.abs(row[j] ?? 0), 0)),
  );
  const squarings = norm > LARGEST_NORM ? Math.ceil(Math.log2(norm / LARGEST_NORM)) : 0;
  if (squarings > MOST_SQUARINGS) {
    throw new InputError(where, "rows", `of norm ${norm}`, "write a shorter time or smaller rates");
  }
  let result = pade13(new Matrix(rows.map((row) => row.map((v) => v / 2 ** squarings))));
  for (let i = 0; i < squarings; i++) result = result.mmul(result);
  const values = result.to2DArray();
  if (values.some((row) => row.some((value) => !Number.isFinite(value)))) {
    throw new InputError(where, "rows", `of norm ${norm}`, "write rates that do not grow so far");
  }
  return values;
}

function pade13(a: Matrix): Matrix {
  const identity = Matrix.eye(a.rows);
  const a2 = a.mmul(a);
  const a4 = a2.mmul(a2);
  const a6 = a4.mmul(a2);
  const [b0, b1, b2, b3, b4, b5, b6, b7, b8, b9, b10, b11, b12, b13] = PADE_13;
  const sum = (...terms: readonly (readonly [number, Matrix])[]) =>
    terms.reduce(
      (total, [factor, m]) => total.add(Matrix.mul(m, factor)),
      Matrix.zeros(a.rows, a.rows),
    );
  const odd = a.mmul(
    a6
      .mmul(sum([b13, a6], [b11, a4], [b9, a2]))
      .add(sum([b7, a6], [b5, a4], [b3, a2], [b1, identity])),
  );
  const even = a6
    .mmul(sum([b12, a6], [b10, a4], [b8, a2]))
    .add(sum([b6, a6], [b4, a4], [b2, a2], [b0, identity]));
  return solve(Matrix.sub(even, odd), Matrix.add(even, odd));
}
