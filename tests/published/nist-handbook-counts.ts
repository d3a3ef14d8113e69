import { individualsChart, prespecifiedLimits } from "wetside/control";
import type { Computed } from "./run.ts";

interface Wafers {
  readonly c: readonly number[];
}

const limits = ({ c }: Wafers) => {
  const mean = c.reduce((sum, count) => sum + count, 0) / c.length;
  return prespecifiedLimits({ centre: mean, sigma: Math.sqrt(mean) });
};

export const computed: Computed = {
  "upper-limit": (inputs: Wafers) => limits(inputs).upperLimit,
  "lower-limit": (inputs: Wafers) => limits(inputs).lowerLimit,
  beyond: (inputs: Wafers) =>
    individualsChart(inputs.c, { limits: limits(inputs) }).beyond.map((at) => at + 1),
};
