import { describe, expect, it } from "vitest";
import { noiseCovariance, rateAnswer } from "../../../lib/replenishment/index.ts";

describe("tuning at the door", () => {
  it("refuses an error or turnovers that are no numbers", () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, undefined] as never[]) {
      expect(() => rateAnswer(value, 1)).toThrow("error");
      expect(() => rateAnswer(0.1, value)).toThrow("turnovers");
    }
  });
  it("refuses a deviation that is no number", () => {
    const strips = Array.from({ length: 12 }, (_, i) => [0.01 * Math.sin(5 * i)]);
    expect(noiseCovariance(strips)[0]?.[0]).toBeGreaterThan(0);
    for (const value of [Number.NaN, "0.01", 1e300] as never[]) {
      expect(() => noiseCovariance([[value], ...strips])).toThrow("deviations[0][0]");
    }
  });
});
