import { faultRateChart, proportionChart } from "wetside/control";
import type { Computed } from "./run.ts";

interface Counts {
  readonly counts: readonly number[];
  readonly sizes: readonly number[];
}

const binomial = ({ counts, sizes }: Counts) =>
  proportionChart(counts, sizes, { limits: "binomial" });
const laney = ({ counts, sizes }: Counts) => proportionChart(counts, sizes, { limits: "Laney" });

export const computed: Computed = {
  mean: (inputs: Counts) => binomial(inputs).mean,
  upper: (inputs: Counts) => binomial(inputs).upper,
  lower: (inputs: Counts) => binomial(inputs).lower,
  scores: (inputs: Counts) => binomial(inputs).scores,
  dispersion: (inputs: Counts) => laney(inputs).dispersion,
  "laney-dispersion": (inputs: Counts) => laney(inputs).dispersion,
  "laney-upper": (inputs: Counts) => laney(inputs).upper,
  "binomial-upper": (inputs: Counts) => binomial(inputs).upper,
  "rate-upper": ({ counts, sizes }: Counts) => faultRateChart(counts, sizes).upper,
  "rate-lower": ({ counts, sizes }: Counts) => faultRateChart(counts, sizes).lower,
};
