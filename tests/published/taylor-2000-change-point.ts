import { changePoint } from "wetside/control";
import type { Computed } from "./run.ts";

type Series = { readonly x: readonly number[] };

export const computed: Computed = {
  moment: ({ x }: Series) => changePoint(x).firstAfter,
  means: ({ x }: Series) => {
    const { meanBefore, meanAfter } = changePoint(x);
    return [meanBefore, meanAfter];
  },
  confidence: ({ x }: Series) => changePoint(x, { draws: 20_000 }).confidence,
};
