import { chartConstants } from "wetside/control";
import type { Computed } from "./run.ts";

interface Rings {
  readonly grandMean: number;
  readonly meanRange: number;
  readonly meanSd: number;
  readonly n: number;
}

const limits = ({ grandMean, meanRange, n }: Rings) => {
  const half = chartConstants(n).A2 * meanRange;
  return [grandMean + half, grandMean - half];
};

export const computed: Computed = {
  limits,
  "limits-computed": limits,
  "range-limit": ({ meanRange, n }: Rings) => chartConstants(n).D4 * meanRange,
  "sigma-range": ({ meanRange, n }: Rings) => meanRange / chartConstants(n).d2,
  "sigma-sd": ({ meanSd, n }: Rings) => meanSd / chartConstants(n).c4,
};
