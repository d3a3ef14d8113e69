import { chartConstants } from "wetside/control";
import type { Computed } from "./run.ts";

interface Subgroups {
  readonly means: readonly number[];
  readonly ranges: readonly number[];
  readonly n: number;
}

const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;

const meanLimits = ({ means, ranges, n }: Subgroups) => {
  const half = chartConstants(n).A2 * mean(ranges);
  return [mean(means), mean(means) + half, mean(means) - half] as const;
};

const without = ({ means, ranges, n }: Subgroups, at: number): Subgroups => ({
  means: means.filter((_, i) => i !== at),
  ranges: ranges.filter((_, i) => i !== at),
  n,
});

export const computed: Computed = {
  "stage-1-means": meanLimits,
  "stage-1-ranges": ({ ranges, n }: Subgroups) => {
    const { D3, D4 } = chartConstants(n);
    return [mean(ranges), D4 * mean(ranges), D3 * mean(ranges)];
  },
  "stage-1-beyond": (inputs: Subgroups) => {
    const [, upper, lower] = meanLimits(inputs);
    return inputs.means.flatMap((x, i) => (x > upper || x < lower ? [i + 1] : []));
  },
  "stage-2-means": (inputs: Subgroups) => meanLimits(without(inputs, 11)),
};
