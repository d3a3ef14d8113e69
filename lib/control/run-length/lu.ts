/** A square matrix taken apart once, to solve with it and with its transpose. */
export interface LuFactors {
  /** Whether a pivot came out as zero. */
  readonly singular: boolean;
  /** x with A·x = b. */
  readonly solve: (b: ArrayLike<number>) => Float64Array;
  /** x with Aᵀ·x = b. */
  readonly solveTransposed: (b: ArrayLike<number>) => Float64Array;
}

/**
 * P·A = L·U with partial pivoting, on one flat array: a run length is solved a hundred times in a
 * chart design, and general matrix objects take several times as long. `matrix` (row by row) is used up.
 *
 * Source: G. H. Golub and C. F. Van Loan, Matrix Computations, 4th ed. 2013, 3.4.
 */
export function luFactors(matrix: Float64Array, size: number): LuFactors {
  const a = matrix;
  const at = (i: number, j: number) => a[i * size + j] ?? 0;
  const order = Int32Array.from({ length: size }, (_, i) => i);
  let singular = false;
  for (let k = 0; k < size; k++) {
    let pivot = k;
    for (let i = k + 1; i < size; i++) {
      if (Math.abs(at(i, k)) > Math.abs(at(pivot, k))) pivot = i;
    }
    if (pivot !== k) swapRows(a, order, size, k, pivot);
    const divisor = at(k, k);
    if (divisor === 0) singular = true;
    for (let i = k + 1; i < size; i++) {
      const factor = divisor === 0 ? 0 : at(i, k) / divisor;
      a[i * size + k] = factor;
      if (factor === 0) continue;
      for (let j = k + 1, to = i * size + j, from = k * size + j; j < size; j++, to++, from++) {
        a[to] = (a[to] ?? 0) - factor * (a[from] ?? 0);
      }
    }
  }
  const solve = (b: ArrayLike<number>) => {
    const x = Float64Array.from(order, (row) => b[row] ?? 0);
    for (let i = 1; i < size; i++) {
      let sum = x[i] ?? 0;
      for (let j = 0; j < i; j++) sum -= at(i, j) * (x[j] ?? 0);
      x[i] = sum;
    }
    for (let i = size - 1; i >= 0; i--) {
      let sum = x[i] ?? 0;
      for (let j = i + 1; j < size; j++) sum -= at(i, j) * (x[j] ?? 0);
      x[i] = sum / at(i, i);
    }
    return x;
  };
  const solveTransposed = (b: ArrayLike<number>) => {
    const y = Float64Array.from({ length: size }, (_, i) => b[i] ?? 0);
    for (let i = 0; i < size; i++) {
      const value = (y[i] ?? 0) / at(i, i);
      y[i] = value;
      for (let j = i + 1; j < size; j++) y[j] = (y[j] ?? 0) - at(i, j) * value;
    }
    for (let i = size - 1; i > 0; i--) {
      const value = y[i] ?? 0;
      for (let j = 0; j < i; j++) y[j] = (y[j] ?? 0) - at(i, j) * value;
    }
    const x = new Float64Array(size);
    for (let i = 0; i < size; i++) x[order[i] ?? 0] = y[i] ?? 0;
    return x;
  };
  return { singular, solve, solveTransposed };
}

function swapRows(a: Float64Array, order: Int32Array, size: number, i: number, k: number): void {
  for (let j = 0; j < size; j++) {
    const kept = a[i * size + j] ?? 0;
    a[i * size + j] = a[k * size + j] ?? 0;
    a[k * size + j] = kept;
  }
  const kept = order[i] ?? 0;
  order[i] = order[k] ?? 0;
  order[k] = kept;
}
