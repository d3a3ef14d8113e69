import { strengthAfterAdditions } from "wetside/solutions";
import type { Computed } from "./run.ts";

type Order = "overflow" | "dump first";

const after =
  (times: readonly number[]) =>
  ({ order }: { readonly order: Order }) =>
    times.map((count) =>
      strengthAfterAdditions({ strength: 1, addStrength: 0, fraction: 0.05, times: count, order }),
    );

export const computed: Computed = {
  overflowing: after([1, 2, 3]),
  "dumped-first": after([1, 2]),
};
