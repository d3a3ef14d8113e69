import { ewmaChart } from "wetside/control";
import type { Computed } from "./run.ts";

interface Example {
  readonly x: readonly number[];
  readonly start: number;
  readonly s: number;
  readonly L: number;
  readonly lambda: number;
}

const chart = ({ x, start, s, L, lambda }: Example, limitForm: "exact" | "asymptotic") =>
  ewmaChart(x, { centre: start, sigma: s, lambda, widthSigma: L, limitForm });

const withStart = (inputs: Example) => {
  const { start, values } = chart(inputs, "asymptotic");
  return [start, ...values];
};

export const computed: Computed = {
  averages: withStart,
  "averages-exact": withStart,
  "upper-limit": (inputs: Example) => chart(inputs, "asymptotic").upperLimits[0] ?? Number.NaN,
  "lower-limit": (inputs: Example) => chart(inputs, "asymptotic").lowerLimits[0] ?? Number.NaN,
  beyond: (inputs: Example) => chart(inputs, "asymptotic").beyond,
  "upper-limits-exact": (inputs: Example) => chart(inputs, "exact").upperLimits,
  "lower-limits-exact": (inputs: Example) => chart(inputs, "exact").lowerLimits,
};
