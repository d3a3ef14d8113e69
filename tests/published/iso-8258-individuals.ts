import { individualsChart } from "wetside/control";
import type { Computed } from "./run.ts";

interface Lots {
  readonly x: readonly number[];
}

const chart = ({ x }: Lots) => individualsChart(x, { minimumReadings: 10 });

export const computed: Computed = {
  limits: (inputs: Lots) => {
    const { centre, upperLimit, lowerLimit } = chart(inputs).limits;
    return [centre, upperLimit, lowerLimit];
  },
  "moving-range": (inputs: Lots) => {
    const { centre, upperLimit } = chart(inputs).movingRange;
    return [centre, upperLimit];
  },
  "moving-range-computed": (inputs: Lots) => chart(inputs).movingRange.centre,
  "limits-computed": (inputs: Lots) => {
    const { limits, movingRange } = chart(inputs);
    const half = (3 * movingRange.centre) / 1.128;
    return [limits.centre + half, limits.centre - half];
  },
};
