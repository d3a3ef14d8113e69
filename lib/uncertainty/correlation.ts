import { EigenvalueDecomposition, Matrix } from "ml-matrix";
import { InputError, requireNumber, requireOneOf } from "../input/index.ts";
import type { InputQuantity } from "./distribution.ts";

/** Correlation of two input quantities. */
export interface InputCorrelation {
  /** Names of the two quantities. */
  readonly between: readonly [string, string];
  /** Correlation coefficient, from −1 to 1. */
  readonly coefficient: number;
}

const NEGATIVE_EIGENVALUE = -1e-9;

/** Correlation matrix of the inputs in their order, checked to be one that can exist. */
export function correlationMatrix(
  where: string,
  inputs: readonly InputQuantity[],
  correlations: readonly InputCorrelation[],
): Matrix {
  const names = inputs.map(({ name }) => name);
  const matrix = Matrix.eye(names.length);
  for (const { between, coefficient } of correlations) {
    const r = requireNumber(where, "correlations.coefficient", coefficient, { min: -1, max: 1 });
    const [i, j] = between.map((name) =>
      names.indexOf(requireOneOf(where, "correlations.between", name, names)),
    );
    if (i === undefined || j === undefined || i === j) {
      const advice = "write the names of two different inputs";
      throw new InputError(where, "correlations.between", between, advice);
    }
    matrix.set(i, j, r);
    matrix.set(j, i, r);
  }
  const eigenvalues = new EigenvalueDecomposition(matrix, { assumeSymmetric: true })
    .realEigenvalues;
  if (eigenvalues.some((value) => value < NEGATIVE_EIGENVALUE)) {
    const advice = "these coefficients contradict each other (no quantities can have them all)";
    throw new InputError(where, "correlations", correlations, advice);
  }
  return matrix;
}

/** A matrix L with L·Lᵀ = the matrix given, also where that is singular (r = ±1). */
export function squareRootOf(matrix: Matrix): Matrix {
  const decomposition = new EigenvalueDecomposition(matrix, { assumeSymmetric: true });
  const roots = decomposition.realEigenvalues.map((value) => Math.sqrt(Math.max(0, value)));
  return decomposition.eigenvectorMatrix.mmul(Matrix.diag(roots));
}
