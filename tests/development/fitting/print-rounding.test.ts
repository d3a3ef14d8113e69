import { describe, expect, it } from "vitest";
import { feasibleSlopes } from "../../../lib/development/fitting/print-rounding.ts";
import { straightLine } from "../../../lib/development/fitting/straight-line.ts";

describe("feasibleSlopes", () => {
  it("finds the steepest and the flattest line through all intervals", () => {
    const points = [
      { x: 0, low: -1, high: 1 },
      { x: 1, low: 0, high: 2 },
      { x: 2, low: 1, high: 3 },
    ];
    expect(feasibleSlopes(points)).toEqual({ lowest: 0, highest: 2 });
  });
  it("lets lowest pass highest when there is no such line", () => {
    const points = [
      { x: 0, low: 0, high: 0 },
      { x: 1, low: 5, high: 5 },
      { x: 2, low: 0, high: 0 },
    ];
    const { lowest, highest } = feasibleSlopes(points);
    expect(lowest).toBeGreaterThan(highest);
  });
});

describe("straightLine", () => {
  it("gives a flat line its own mean and no slope", () => {
    const line = straightLine("test", [1, 2, 3], [4, 4, 4]);
    expect(line.slope).toBeCloseTo(0, 14);
    expect(line.intercept).toBeCloseTo(4, 14);
    expect(line.rSquared).toBe(1);
  });
});
