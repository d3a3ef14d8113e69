import {
  chiSquareQuantile,
  fCdf,
  normalCdf,
  normalQuantile,
  studentTCdf,
  studentTQuantile,
} from "wetside/numerics";
import type { Computed } from "./run.ts";

type Call = { readonly arguments: readonly [number, number, number] };

export const computed: Computed = {
  qn975: ({ arguments: [p] }: Call) => normalQuantile(p),
  qn1e6: ({ arguments: [p] }: Call) => normalQuantile(p),
  pn3: ({ arguments: [z] }: Call) => normalCdf(z),
  pn8: ({ arguments: [z] }: Call) => normalCdf(z),
  qt975_5: ({ arguments: [p, df] }: Call) => studentTQuantile(p, df),
  qt995_2: ({ arguments: [p, df] }: Call) => studentTQuantile(p, df),
  qt975_34: ({ arguments: [p, df] }: Call) => studentTQuantile(p, df),
  qt975_17: ({ arguments: [p, df] }: Call) => studentTQuantile(p, df),
  pt: ({ arguments: [t, df] }: Call) => studentTCdf(t, df),
  qchi975_24: ({ arguments: [p, df] }: Call) => chiSquareQuantile(p, df),
  qchi025_3: ({ arguments: [p, df] }: Call) => chiSquareQuantile(p, df),
  pf2: ({ arguments: [x, above, below] }: Call) => fCdf(x, above, below),
  pf: ({ arguments: [x, above, below] }: Call) => 1 - fCdf(x, above, below),
};
