import { LuDecomposition, Matrix } from "ml-matrix";
import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";

/**
 * What tuning looks at: strips in order of time, each with its tank turnovers and the deviations of
 * every parameter and colour that answers to the replenishment rate.
 */
export interface TuningSeries {
  /** Tank turnovers (replenisher volume ÷ tank volume, added up) at each strip, never falling. */
  readonly turnovers: readonly number[];
  /** One row a strip, one density deviation a channel. */
  readonly deviations: readonly (readonly number[])[];
  /**
   * Steady-state change of each channel for a delivered rate 100 % too high (density per 1 = 100 %).
   * The lab's own: see `rateSensitivity`; to try the method, `illustrativeSensitivity`.
   */
  readonly sensitivity: readonly number[];
  /** Covariance of the channels between strips of an unchanged bath, density². */
  readonly noise: readonly (readonly number[])[];
}

/**
 * The channels put together into one number a strip: the delivered rate's error as this strip alone
 * would show it at steady state, z = SᵀΣ⁻¹y / SᵀΣ⁻¹S. No other combination carries more.
 */
export interface WeightedSeries {
  readonly turnovers: readonly number[];
  readonly z: readonly number[];
  /** Standard deviation of z that the stated noise leads to. */
  readonly noiseSd: number;
}

/** Checks a series and puts its channels together by generalised least squares. */
export function weightedSeries(where: string, series: TuningSeries): WeightedSeries {
  requireObject(where, "series", series, "an object with turnovers, deviations, sensitivity, …");
  const { turnovers, deviations, sensitivity, noise } = series;
  requireEntries(where, "noise", noise);
  requireEntries(where, "sensitivity", sensitivity, "a list of numbers");
  requireEntries(where, "deviations", deviations);
  requireEntries(where, "turnovers", turnovers, "a list of numbers");
  const channels = sensitivity.length;
  requireNumber(where, "number of channels", channels, { min: 1 });
  sensitivity.forEach((s, j) => {
    requireNumber(where, `sensitivity[${j}]`, s);
  });
  if (sensitivity.every((s) => s === 0)) {
    throw new InputError(where, "sensitivity", sensitivity, "give at least one that is not 0");
  }
  if (deviations.length !== turnovers.length) {
    const rows = `${deviations.length} rows`;
    throw new InputError(where, "deviations", rows, `write ${turnovers.length}, one a strip`);
  }
  turnovers.forEach((n, i) => {
    const hint =
      "turnovers are added up and never fall; a pump counter that was reset must be mended";
    requireNumber(where, `turnovers[${i}]`, n, { min: turnovers[i - 1] ?? 0, hint });
  });
  const weights = channelWeights(where, sensitivity, noise);
  const information = weights.reduce((sum, w, j) => sum + w * (sensitivity[j] ?? 0), 0);
  const z = deviations.map((row, i) => {
    if (row.length !== channels) {
      throw new InputError(where, `deviations[${i}]`, `${row.length} numbers`, `write ${channels}`);
    }
    const sum = row.reduce((s, y, j) => {
      return s + (weights[j] ?? 0) * requireNumber(where, `deviations[${i}][${j}]`, y);
    }, 0);
    return sum / information;
  });
  return { turnovers, z, noiseSd: 1 / Math.sqrt(information) };
}

/** Σ⁻¹S. */
function channelWeights(
  where: string,
  sensitivity: readonly number[],
  noise: readonly (readonly number[])[],
): number[] {
  const n = sensitivity.length;
  if (noise.length !== n || noise.some((row) => row.length !== n)) {
    throw new InputError(where, "noise", `${noise.length} rows`, `write ${n} rows of ${n} numbers`);
  }
  noise.forEach((row, i) => {
    requireNumber(where, `noise[${i}][${i}]`, row[i], { above: 0, unit: "density²" });
    row.forEach((value, j) => {
      requireNumber(where, `noise[${i}][${j}]`, value);
    });
  });
  const lu = new LuDecomposition(new Matrix(noise.map((row) => [...row])));
  if (lu.isSingular()) {
    throw new InputError(where, "noise", "singular", "leave out channels that are sums of others");
  }
  const weights = lu.solve(Matrix.columnVector([...sensitivity])).to1DArray();
  const information = weights.reduce((sum, w, j) => sum + w * (sensitivity[j] ?? 0), 0);
  if (!(information > 0)) {
    throw new InputError(where, "noise", "not a covariance", "write a positive definite matrix");
  }
  return weights;
}
