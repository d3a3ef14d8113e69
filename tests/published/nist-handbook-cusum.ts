import { cusumChart } from "wetside/control";
import type { Computed } from "./run.ts";

interface Example {
  readonly x: readonly number[];
  readonly target: number;
  readonly k: number;
  readonly h: number;
}

// sigma 1: k and h are printed in the unit of the readings.
const chart = ({ x, target, k, h }: Example) => cusumChart(x, { target, sigma: 1, k, h });

export const computed: Computed = {
  "upper-sums": (inputs: Example) => chart(inputs).upperSums,
  "lower-sums": (inputs: Example) => chart(inputs).lowerSums,
  "first-signal": (inputs: Example) => 1 + (chart(inputs).signals[0]?.at ?? Number.NaN),
  "upper-sums-exact": (inputs: Example) => chart(inputs).upperSums,
  "lower-sums-exact": (inputs: Example) => chart(inputs).lowerSums,
};
