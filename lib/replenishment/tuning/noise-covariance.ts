import { InputError, requireEntries, requireNumber } from "../../input/index.ts";

/**
 * Covariance of the channels between strips of an unchanged bath, from the differences of successive
 * strips: Σ = mean of ½·d·dᵀ. A slow drift hardly enters, unlike in the covariance about the mean.
 *
 * @param deviations one row a strip in order of time, one number a channel; at least 10 strips more
 *   than there are channels
 * @returns a square matrix as rows, density²
 * @throws InputError if there are too few strips, rows differ in length, or a number is not finite
 *
 * @example
 * const rows = Array.from({ length: 12 }, (_, i) => [i % 2 === 0 ? 0.01 : -0.01]);
 * noiseCovariance(rows) // => [[0.0002]]
 *
 * Source: J. von Neumann et al., Annals of Mathematical Statistics 12 (1941) 153–162 (mean square
 * successive difference).
 */
export function noiseCovariance(deviations: readonly (readonly number[])[]): number[][] {
  const where = "noiseCovariance";
  requireEntries(where, "deviations", deviations);
  const channels = deviations[0]?.length ?? 0;
  requireNumber(where, "number of channels", channels, { min: 1 });
  requireNumber(where, "number of strips", deviations.length, {
    min: channels + 10,
    hint: "ten strips more than channels",
  });
  deviations.forEach((strip, i) => {
    requireEntries(where, `deviations[${i}]`, strip, "a list of numbers");
    strip.forEach((each, j) => {
      requireNumber(where, `deviations[${i}][${j}]`, each, { min: -10, max: 10, unit: "density" });
    });
  });
  const sums = Array.from({ length: channels }, () => new Array<number>(channels).fill(0));
  for (let i = 1; i < deviations.length; i++) {
    const [before, after] = [deviations[i - 1] ?? [], deviations[i] ?? []];
    if (after.length !== channels) {
      throw new InputError(
        where,
        `deviations[${i}]`,
        `${after.length} numbers`,
        `write ${channels}`,
      );
    }
    const d = after.map((value, j) => {
      return requireNumber(where, `deviations[${i}][${j}]`, value) - (before[j] ?? 0);
    });
    sums.forEach((row, j) => {
      d.forEach((dk, k) => {
        row[k] = (row[k] ?? 0) + ((d[j] ?? 0) * dk) / 2;
      });
    });
  }
  return sums.map((row) => row.map((value) => value / (deviations.length - 1)));
}
