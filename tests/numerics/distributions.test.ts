import { describe, expect, it } from "vitest";
import { InputError } from "../../lib/input/index.ts";
import {
  chiSquareCdf,
  chiSquareQuantile,
  fCdf,
  fQuantile,
  normalCdf,
  normalQuantile,
  studentTCdf,
  studentTQuantile,
} from "../../lib/numerics/index.ts";

// The round trip loses a few units in the last place of the flatter function.
const ROUND_TRIP = 1e-10;

describe("distributions", () => {
  it("come back from quantile to probability", () => {
    for (const p of [1e-9, 0.001, 0.05, 0.5, 0.9, 0.999]) {
      expect(Math.abs(normalCdf(normalQuantile(p)) / p - 1)).toBeLessThan(ROUND_TRIP);
      expect(Math.abs(studentTCdf(studentTQuantile(p, 7), 7) / p - 1)).toBeLessThan(ROUND_TRIP);
      expect(Math.abs(chiSquareCdf(chiSquareQuantile(p, 3), 3) / p - 1)).toBeLessThan(ROUND_TRIP);
      expect(Math.abs(fCdf(fQuantile(p, 4, 9), 4, 9) / p - 1)).toBeLessThan(ROUND_TRIP);
    }
  });
  it("refuse a probability of 0 or 1, where no quantile exists", () => {
    expect(() => normalQuantile(0)).toThrow(InputError);
    expect(() => studentTQuantile(1, 3)).toThrow(
      "write a finite number greater than 0 and less than 1",
    );
    expect(() => studentTQuantile(0.5, 0)).toThrow("degreesOfFreedom is 0");
    expect(() => normalCdf(Number.NaN)).toThrow(InputError);
    expect(() => fCdf(-1, 2, 2)).toThrow(InputError);
  });
});
