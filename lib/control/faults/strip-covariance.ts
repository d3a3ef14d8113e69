import { Matrix } from "ml-matrix";
import { InputError, requireEntries, requireNumber } from "../../input/index.ts";

/** How strips vary while nothing is wrong. */
export interface StripCovariance {
  /** Covariance of the readings of one strip, density². */
  readonly covariance: readonly (readonly number[])[];
  readonly mean: readonly number[];
  readonly strips: number;
  /** Share of the covariance that was replaced by its diagonal, 0 to 1. */
  readonly shrinkage: number;
  /** Mean correlation of a reading with the strip before, at least 0. */
  readonly lagOne: number;
  readonly warnings: readonly string[];
}

/**
 * Covariance of the readings of a strip while nothing is wrong, from strips of a base period.
 *
 * Sample covariance S shrunk towards its diagonal D: `Σ = (1 − w)·S + w·D` with
 * `w = Σ Var(s_ij) / Σ s_ij²` over i ≠ j, bounded to [0, 1]: few strips are trusted less. The result
 * can always be inverted. No variance is taken below that of rounding, `resolution²/12`.
 *
 * @param strips deviations in density, one row for each strip in the order of time, at least 5 rows
 * of equal length; 20 or more are wanted
 * @param options `resolution`: the step to which densities were read, 0 (default) to 0.1
 * @returns covariance in density², the mean, the weight w and the lag-1 correlation
 * @throws InputError for too few strips, rows of different length, or, where no resolution is given, a
 * reading that never varies
 *
 * @example
 * const rows = [[0.01, 0], [0, 0.01], [-0.01, 0], [0, -0.01], [0.01, 0.01], [-0.01, -0.01]];
 * stripCovariance(rows).covariance[0]?.[0] // => 0.00008
 *
 * Source: J. Schäfer and K. Strimmer, Statistical Applications in Genetics and Molecular Biology 4
 * (2005) article 32, target D (from memory); JCGM 100:2008, F.2.2.1 (rounding).
 */
export function stripCovariance(
  strips: readonly (readonly number[])[],
  options: { readonly resolution?: number } = {},
): StripCovariance {
  const where = "stripCovariance";
  requireEntries(where, "strips", strips);
  const n = strips.length;
  requireNumber(where, "strips.length", n, { min: 5, whole: true });
  const resolution = requireNumber(where, "resolution", options.resolution ?? 0, {
    min: 0,
    max: 0.1,
    unit: "density",
  });
  const p = strips[0]?.length ?? 0;
  strips.forEach((row, i) => {
    if (row.length !== p || p === 0) {
      throw new InputError(
        where,
        `strips[${i}].length`,
        row.length,
        `write ${p || "some"} readings`,
      );
    }
    row.forEach((v, j) => {
      requireNumber(where, `strips[${i}][${j}]`, v, { unit: "density" });
    });
  });
  const X = new Matrix(strips.map((row) => [...row]));
  const mean = X.mean("column");
  const centred = X.clone().subRowVector(mean);
  const S = centred
    .transpose()
    .mmul(centred)
    .div(n - 1);
  for (let j = 0; j < p; j++) {
    S.set(j, j, Math.max(S.get(j, j), resolution ** 2 / 12));
    if (S.get(j, j) > 1e-14) continue;
    const advice = "this reading never varies; read to three decimals or leave it out";
    throw new InputError(where, `variance of reading ${j}`, 0, advice);
  }
  const shrinkage = shrinkageWeight(centred, S);
  const covariance = S.to2DArray().map((row, i) =>
    row.map((s, j) => (i === j ? s : (1 - shrinkage) * s)),
  );
  const few = n < 20 ? [`the noise rests on ${n} strips only; 20 or more make it trustworthy`] : [];
  return { covariance, mean, strips: n, shrinkage, lagOne: lagOne(centred, S), warnings: few };
}

/** Weight of the diagonal: how uncertain the off-diagonal correlations are against their size. */
function shrinkageWeight(centred: Matrix, S: Matrix): number {
  const n = centred.rows;
  let uncertain = 0;
  let squares = 0;
  for (let i = 0; i < S.rows; i++) {
    for (let j = 0; j < i; j++) {
      const scale = Math.sqrt(S.get(i, i) * S.get(j, j));
      let sum = 0;
      let sumSquares = 0;
      for (let k = 0; k < n; k++) {
        const product = (centred.get(k, i) * centred.get(k, j)) / scale;
        sum += product;
        sumSquares += product * product;
      }
      uncertain += ((sumSquares - (sum * sum) / n) * n) / (n - 1) ** 3;
      squares += (S.get(i, j) / scale) ** 2;
    }
  }
  // A twentieth at least, so that readings that were always equal can still be inverted.
  return Math.min(1, Math.max(0.05, squares > 0 ? uncertain / squares : 1));
}

function lagOne(centred: Matrix, S: Matrix): number {
  const n = centred.rows;
  let sum = 0;
  for (let j = 0; j < S.rows; j++) {
    let products = 0;
    for (let k = 1; k < n; k++) products += centred.get(k, j) * centred.get(k - 1, j);
    sum += products / ((n - 1) * S.get(j, j));
  }
  return Math.min(0.9, Math.max(0, sum / S.rows));
}
