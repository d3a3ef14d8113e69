import { median } from "simple-statistics";
import { requireEntries, requireNumber } from "../../input/index.ts";

const NEIGHBOURS = 4;
/** Turns a median absolute difference of successive strips into a standard deviation. */
const TO_SIGMA = 1.4826 / Math.SQRT2;

/**
 * Strips that stand apart from their neighbours: a tank cannot jump there and back between one strip
 * and the next, so a strip that does was mishandled, or the bath was spoilt and mended.
 *
 * A strip is odd if, in any channel, it lies more than `sigmas` standard deviations from the median of
 * the four strips before and after it; the standard deviation is robust, 1.4826·median|d|/√2 from the
 * differences d of successive strips. A slow answer of the bath moves the neighbours along and is kept.
 *
 * @param deviations one row a strip in order of time, one number a channel, density
 * @param options.sigmas 3 to 20, default 6
 * @returns indices of the odd strips, rising
 * @throws InputError for a number that is not finite
 *
 * @example
 * oddStrips([[0], [0.01], [0], [0.01], [0.12], [0], [0.01], [0], [0.01]]) // => [4]
 *
 * Source: F. R. Hampel, Journal of the American Statistical Association 69 (1974) 383–393 (median and
 * median deviation; from memory).
 */
export function oddStrips(
  deviations: readonly (readonly number[])[],
  options: { readonly sigmas?: number } = {},
): readonly number[] {
  const where = "oddStrips";
  requireEntries(where, "deviations", deviations);
  const sigmas = requireNumber(where, "sigmas", options.sigmas ?? 6, { min: 3, max: 20 });
  const channels = deviations[0]?.length ?? 0;
  const odd = new Set<number>();
  for (let c = 0; c < channels; c++) {
    const column = deviations.map((row, i) =>
      requireNumber(where, `deviations[${i}][${c}]`, row[c]),
    );
    if (column.length < 3) return [];
    const differences = column.slice(1).map((value, i) => Math.abs(value - (column[i] ?? 0)));
    const sigma = TO_SIGMA * median(differences);
    if (sigma === 0) continue;
    column.forEach((value, i) => {
      const near = [
        ...column.slice(Math.max(0, i - NEIGHBOURS), i),
        ...column.slice(i + 1, i + 1 + NEIGHBOURS),
      ];
      if (Math.abs(value - median(near)) > sigmas * sigma) odd.add(i);
    });
  }
  return [...odd].toSorted((a, b) => a - b);
}
