import { mannKendall } from "wetside/control";
import type { Computed } from "./run.ts";

/** A series of n different readings whose S is s: one rises through the ranks as far as it must. */
function seriesWith(n: number, s: number): number[] {
  const series = Array.from({ length: n }, (_, i) => i);
  let inversions = ((n * (n - 1)) / 2 - s) / 2;
  for (let i = 0; inversions > 0; i++) {
    const shift = Math.min(inversions, n - 1 - i);
    series.splice(i, 0, ...series.splice(i + shift, 1));
    inversions -= shift;
  }
  return series;
}

export const computed: Computed = {
  tails: ({ n, s }: { readonly n: readonly number[]; readonly s: readonly number[] }) =>
    n.map((count, i) => {
      // The parity of S is that of the number of pairs; between two possible values the tail is that of the larger.
      const size = Math.abs(s[i] ?? 0);
      const odd = ((count * (count - 1)) / 2 - size) % 2;
      const test = mannKendall(seriesWith(count, size + Math.abs(odd)));
      return test.pValue / 2;
    }),
};
