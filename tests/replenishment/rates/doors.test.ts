import { describe, expect, it } from "vitest";
import { deliveredByMonth, deliveredError } from "../../../lib/replenishment/index.ts";

const day = (i: number) => ({
  from: `2026-03-0${i}`,
  to: `2026-03-0${i}`,
  areaM2: 2.5,
  setMl: 1500,
  deliveredMl: 1260,
  setMlPerM2: 600,
  deliveredMlPerM2: 504,
});
const intervals = [1, 2, 3].map(day) as never[];

describe("delivered volumes at the door", () => {
  it("refuse a volume that is no number, so that no rate is set by it", () => {
    expect(deliveredError(intervals).error).toBeCloseTo(-0.16, 12);
    for (const deliveredMl of [Number.NaN, "1260", undefined]) {
      const broken = [...intervals, { ...day(4), deliveredMl } as never];
      expect(() => deliveredError(broken)).toThrow("intervals[3].deliveredMl");
      expect(() => deliveredByMonth(broken)).toThrow("intervals[3].deliveredMl");
    }
  });
});
