import { chartConstants, individualsChart, statisticalLimits } from "wetside/control";
import type { Computed } from "./run.ts";

interface Batches {
  readonly flowRate: readonly number[];
}

const chart = ({ flowRate }: Batches) => individualsChart(flowRate, { minimumReadings: 10 });

export const computed: Computed = {
  mean: (inputs: Batches) => chart(inputs).limits.centre,
  "moving-range": (inputs: Batches) => chart(inputs).movingRange.centre,
  "upper-limit": (inputs: Batches) => chart(inputs).limits.upperLimit,
  "lower-limit": (inputs: Batches) => chart(inputs).limits.lowerLimit,
  "upper-limit-rounded": (inputs: Batches) => {
    const { limits, movingRange } = chart(inputs);
    return limits.centre + (3 * movingRange.centre) / 1.128;
  },
  "moving-ranges": (inputs: Batches) => chart(inputs).movingRange.values,
  "moving-range-limit": (inputs: Batches) => chart(inputs).movingRange.upperLimit,
  "sigma-median": ({ flowRate }: Batches) =>
    statisticalLimits(flowRate, { minimumReadings: 10, sigmaFrom: "median moving range" }).sigma,
  "sample-sd": ({ flowRate }: Batches) =>
    statisticalLimits(flowRate, { minimumReadings: 10, sigmaFrom: "standard deviation" }).sigma *
    chartConstants(10).c4,
  beyond: (inputs: Batches) => chart(inputs).beyond,
};
