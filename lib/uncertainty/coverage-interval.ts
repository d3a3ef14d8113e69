import { InputError, requireEntries, requireNumber } from "../input/index.ts";

/** Coverage intervals from a sorted sample of the result. */
export interface CoverageIntervals {
  /** As much probability below as above. */
  readonly symmetric: readonly [number, number];
  /** The shortest of all that hold the probability. */
  readonly shortest: readonly [number, number];
}

/**
 * Coverage intervals of a sample, probabilistically symmetric and shortest.
 *
 * With M sorted values and q the whole number nearest p·M, an interval is [y(r), y(r + q)];
 * symmetric r is the whole part of (M − q + 1)/2, shortest r makes the length least.
 *
 * @param sorted values in rising order, at least 1/(1 − p) of them
 * @param probability above 0 and below 1
 * @returns two intervals in the values' unit
 * @throws InputError for a probability outside (0, 1) or too few values
 *
 * @example
 * coverageIntervals([0, 1, 2, 3, 4, 5, 6, 7, 8, 20], 0.8).shortest // => [0, 8]
 *
 * Source: JCGM 101:2008, 7.7.
 */
export function coverageIntervals(
  sorted: readonly number[] | Float64Array,
  probability: number,
): CoverageIntervals {
  const where = "coverageIntervals";
  const hint = "write 0.95 for 95 %";
  const p = requireNumber(where, "probability", probability, { above: 0, below: 1, hint });
  if (!ArrayBuffer.isView(sorted)) requireEntries(where, "sorted", sorted, "a list of numbers");
  const count = sorted.length;
  const q = Math.floor(p * count + 0.5);
  if (q >= count || q < 1) {
    const advice = `give at least ${Math.ceil(1 / Math.min(p, 1 - p)) + 1} values for this probability`;
    throw new InputError(where, "sorted", `${count} values`, advice);
  }
  for (let i = 0; i < count; i++) {
    const previous = sorted[i - 1];
    const bounds = previous === undefined ? {} : { min: previous, hint: "sort the values first" };
    const value = sorted[i];
    if (!(Number.isFinite(value) && (previous === undefined || Number(value) >= previous)))
      requireNumber(where, `sorted[${i}]`, value, bounds);
  }
  const y = (rank: number) => sorted[rank - 1] ?? 0;
  const middle = Math.max(1, Math.floor((count - q + 1) / 2));
  let best = 1;
  for (let r = 2; r <= count - q; r++) {
    if (y(r + q) - y(r) < y(best + q) - y(best)) best = r;
  }
  return { symmetric: [y(middle), y(middle + q)], shortest: [y(best), y(best + q)] };
}
