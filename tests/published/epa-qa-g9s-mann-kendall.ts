import { mannKendall } from "wetside/control";
import type { Computed } from "./run.ts";

type Series = { readonly y: readonly number[] };

export const computed: Computed = {
  s: ({ y }: Series) => mannKendall(y).s,
  var: ({ y }: Series) => mannKendall(y).varianceOfS,
  z: ({ y }: Series) => mannKendall(y).z,
  p: ({ y }: Series) => mannKendall(y).pValue,
  tau: ({ y }: Series) => mannKendall(y).tau,
  wisconsin: ({ y }: Series) => mannKendall(y).s,
};
