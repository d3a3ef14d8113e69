import { changePoint, mannKendall, theilSen } from "wetside/control";
import type { Computed } from "./run.ts";

type Series = { readonly x: readonly number[] };

export const computed: Computed = {
  "page-k": ({ x }: Series) => changePoint(x).k,
  "page-t": ({ x }: Series) => changePoint(x).firstAfter,
  "page-p": ({ x }: Series) => changePoint(x).pValue,
  rhine: ({ x }: Series) => {
    const { k, firstAfter, pValue } = changePoint(x);
    return [k, firstAfter, pValue];
  },
  "rhine-mk": ({ x }: Series) => {
    const { s, varianceOfS, pValue, tau } = mannKendall(x);
    return [s, varianceOfS, pValue, tau];
  },
  "rhine-sen": ({ x }: Series) => {
    const years = x.map((_, i) => i);
    const { slope, slopeInterval } = theilSen(years, x);
    return [slope, ...slopeInterval];
  },
};
