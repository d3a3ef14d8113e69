import { describe, expect, it } from "vitest";
import { integrate } from "wetside/numerics";
import { logShift } from "../../../lib/control/faults/log-shift.ts";

const QUADRATURE = 1e-8; // asked of the integral, relative

describe("the likelihood of a shift", () => {
  it("agrees with the integral over all sizes", () => {
    for (const [change, variance, scale] of [
      [0.5, 0.01, 0.6],
      [0, 0.01, 0.6],
      [-0.2, 0.01, 0.6],
      [0.02, 1, 0.5],
      [3, 0.5, 1],
    ] as const) {
      const normal = (x: number) => Math.exp(-((change - x) ** 2 - change ** 2) / (2 * variance));
      const rayleigh = (x: number) => (x / scale ** 2) * Math.exp(-(x ** 2) / (2 * scale ** 2));
      const { value } = integrate((x) => normal(x) * rayleigh(x), 0, 12 * scale + 4, {
        relativeTolerance: QUADRATURE,
      });
      expect(logShift(change, variance, scale)).toBeCloseTo(Math.log(value), 6);
    }
  });
  it("stays finite far up and far down, and rises with the change", () => {
    const changes = [-1e4, -50, -8.001, -7.999, -1, 0, 1, 7.999, 8.001, 50, 1e4];
    const values = changes.map((change) => logShift(change, 1, 0.7));
    expect(values.every(Number.isFinite)).toBe(true);
    expect([...values].sort((a, b) => a - b)).toEqual(values);
  });
  it("is against a shift where there is none, the more so the less the noise", () => {
    expect(logShift(0, 0.01, 1)).toBeLessThan(Math.log(0.05));
    expect(logShift(0, 0.0001, 1)).toBeLessThan(logShift(0, 0.01, 1));
  });
});
