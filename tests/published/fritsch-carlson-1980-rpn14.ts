import { pchip } from "wetside/numerics";
import type { Computed } from "./run.ts";

type Points = {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly q: readonly number[];
};

export const computed: Computed = {
  values: ({ x, y, q }: Points) => q.map(pchip(x, y).evaluate),
  slopes: ({ x, y }: Points) => pchip(x, y).slopes,
  step: ({ x, y, q }: Points) => q.map(pchip(x, y).evaluate),
};
