import { limitCrossing, linearTrend, mannKendall, predictedAt, theilSen } from "wetside/control";
import type { Computed } from "./run.ts";

interface Points {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

function prediction({ x, y }: Points, of: "reading" | "line"): number[] {
  const { value, interval } = predictedAt(linearTrend(x, y), 2000, of);
  return [value, ...interval];
}

function crossing({ x, y }: Points, of: "reading" | "line"): number[] {
  const { time = Number.NaN, interval = [], g } = limitCrossing(linearTrend(x, y), 20, of);
  return [time, ...interval, g];
}

export const computed: Computed = {
  "sen-slope": ({ x, y }: Points) => theilSen(x, y).slope,
  "sen-interval": ({ x, y }: Points) => theilSen(x, y).slopeInterval,
  "sen-intercept": ({ x, y }: Points) => theilSen(x, y).intercept,
  "sen-s": ({ y }: Points) => mannKendall(y).s,
  line: ({ x, y }: Points) => {
    const { intercept, slope } = linearTrend(x, y);
    return [intercept, slope];
  },
  "line-se": ({ x, y }: Points) => {
    const { interceptStandardError, slopeStandardError } = linearTrend(x, y);
    return [interceptStandardError, slopeStandardError];
  },
  "line-p": ({ x, y }: Points) => linearTrend(x, y).pValue,
  "line-sd": ({ x, y }: Points) => linearTrend(x, y).residualSd,
  "reading-2000": (points: Points) => prediction(points, "reading"),
  "line-2000": (points: Points) => prediction(points, "line"),
  "cross-line": (points: Points) => crossing(points, "line"),
  "cross-reading": (points: Points) => crossing(points, "reading"),
};
