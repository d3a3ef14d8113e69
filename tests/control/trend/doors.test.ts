import { describe, expect, it } from "vitest";
import { limitCrossing, linearTrend, predictedAt } from "../../../lib/control/index.ts";

const trend = linearTrend([0, 1, 2, 3], [0, 0.01, 0.03, 0.03]);

describe("a fitted line at the door", () => {
  it("is refused with a number that is none, so that no day is forecast from it", () => {
    for (const key of ["slope", "intercept", "residualSd", "meanTime", "timeSpread"] as const) {
      for (const value of [Number.NaN, Number.POSITIVE_INFINITY, undefined, "1"]) {
        const broken = { ...trend, [key]: value } as never;
        expect(() => predictedAt(broken, 5)).toThrow(`trend.${key}`);
        expect(() => limitCrossing(broken, 0.08)).toThrow(`trend.${key}`);
      }
    }
  });
});
