import { Matrix, QrDecomposition } from "ml-matrix";
import { InputError, requireEntries, requireNumber, requireObject } from "../input/index.ts";

/** A linear least-squares fit. */
export interface LeastSquaresFit {
  /** One per column of the rows. */
  readonly coefficients: readonly number[];
  readonly standardErrors: readonly number[];
  /** Covariance of the coefficients, as rows. */
  readonly covariance: readonly (readonly number[])[];
  /** Observed minus fitted, unweighted, one per row. */
  readonly residuals: readonly number[];
  /** √(Σ w·residual² / degreesOfFreedom). */
  readonly residualSd: number;
  /** Rows minus columns. */
  readonly degreesOfFreedom: number;
}

/**
 * Linear least squares, optionally weighted, by QR decomposition: minimises Σ w·(y − row·β)².
 *
 * @param input `rows`: n rows of p regressors each (write a column of ones for an intercept), n > p;
 *   `y`: n observations; `weights`: n positive weights, proportional to 1/variance (default all 1)
 * @returns coefficients with standard errors and covariance, residuals, residual standard deviation
 * @throws InputError if the shapes disagree, a number is not finite, n ≤ p, or columns are dependent
 *
 * @example
 * leastSquares({ rows: [[1, 0], [1, 1], [1, 2]], y: [1, 3, 5] }).coefficients // => [1, 2]
 *
 * Source: Å. Björck, Numerical Methods for Least Squares Problems, SIAM 1996, 1.3 and 2.4.
 */
export function leastSquares(input: {
  readonly rows: readonly (readonly number[])[];
  readonly y: readonly number[];
  readonly weights?: readonly number[];
}): LeastSquaresFit {
  const where = "leastSquares";
  const { rows, y } = requireObject(where, "input", input, "an object with rows and y");
  const n = requireEntries(where, "rows", rows, "a list of rows").length;
  const p = rows[0]?.length ?? 0;
  requireEntries(where, "y", y, "a list of numbers");
  requireNumber(where, "number of columns", p, { min: 1 });
  requireNumber(where, "number of rows", n, { above: p, hint: "more rows than coefficients" });
  if (y.length !== n) throw new InputError(where, "y", `${y.length} values`, `write ${n} values`);
  const weights = input.weights ?? new Array<number>(n).fill(1);
  if (weights.length !== n) {
    throw new InputError(where, "weights", `${weights.length} values`, `write ${n} values`);
  }
  const roots = weights.map((w, i) =>
    Math.sqrt(requireNumber(where, `weights[${i}]`, w, { above: 0 })),
  );
  const design = rows.map((row, i) => {
    requireEntries(where, `rows[${i}]`, row, "a list of numbers");
    if (row.length !== p) {
      throw new InputError(where, `rows[${i}]`, `${row.length} numbers`, `write ${p} numbers`);
    }
    return row.map((v, j) => (roots[i] ?? 1) * requireNumber(where, `rows[${i}][${j}]`, v));
  });
  const observed = y.map((v, i) => (roots[i] ?? 1) * requireNumber(where, `y[${i}]`, v));
  // Columns are scaled to length 1, so that a coefficient's unit cannot spoil the conditioning.
  const scale = Array.from(
    { length: p },
    (_, j) => columnLength(design.map((row) => row[j] ?? 0)) || 1,
  );
  const X = new Matrix(design.map((row) => row.map((v, j) => v / (scale[j] ?? 1))));
  const qr = new QrDecomposition(X);
  const R = qr.upperTriangularMatrix;
  const smallest = Math.min(...R.diagonal().map(Math.abs));
  if (smallest < 1e-13) {
    throw new InputError(
      where,
      "rows",
      `${n} × ${p}`,
      "some columns are multiples of others; leave them out",
    );
  }
  const scaled = qr.solve(Matrix.columnVector(observed)).to1DArray();
  const coefficients = scaled.map((v, j) => v / (scale[j] ?? 1));
  const residuals = rows.map((row, i) => {
    return (y[i] ?? 0) - row.reduce((sum, v, j) => sum + v * (coefficients[j] ?? 0), 0);
  });
  const degreesOfFreedom = n - p;
  const variance =
    residuals.reduce((s, r, i) => s + (weights[i] ?? 1) * r * r, 0) / degreesOfFreedom;
  const inverse = new QrDecomposition(R).solve(Matrix.eye(p));
  const covariance = inverse
    .mmul(inverse.transpose())
    .to2DArray()
    .map((row, i) => row.map((v, j) => (variance * v) / ((scale[i] ?? 1) * (scale[j] ?? 1))));
  const standardErrors = covariance.map((row, i) =>
    requireNumber(where, `standard error ${i}`, Math.sqrt(row[i] ?? 0)),
  );
  return {
    coefficients,
    standardErrors,
    covariance,
    residuals,
    residualSd: Math.sqrt(variance),
    degreesOfFreedom,
  };
}

/** Length of a column, by pieces: a call takes no more than some 100,000 arguments. */
function columnLength(column: readonly number[]): number {
  const lengths: number[] = [];
  for (let from = 0; from < column.length; from += 10_000) {
    lengths.push(Math.hypot(...column.slice(from, from + 10_000)));
  }
  return Math.hypot(...lengths);
}
