import { describe, expect, it } from "vitest";
import { InputError } from "../../lib/input/index.ts";
import {
  chiSquareCdf,
  chiSquareQuantile,
  erf,
  fCdf,
  fQuantile,
  gammaLn,
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

describe("distributions at their ends", () => {
  it("go over into the normal one with many degrees of freedom", () => {
    // t − z = (z³ + z)/4ν, Abramowitz and Stegun 26.7.5: below rounding from ν = 1e16 on.
    for (const nu of [1e15, 1e16, 1e18, 1e300]) {
      expect(studentTQuantile(0.975, nu)).toBeCloseTo(normalQuantile(0.975), 12);
    }
  });
  it("have a plain 0 in the middle", () => {
    expect(Object.is(normalQuantile(0.5), 0)).toBe(true);
  });
  it("refuse what a number cannot hold or the library used cannot do exactly", () => {
    expect(() => studentTQuantile(1e-300, 0.5)).toThrow("too large for a number");
    expect(() => fQuantile(1 - 2 ** -53, 1, 0.5)).toThrow("too large for a number");
    expect(() => chiSquareQuantile(0.5, 1e11)).toThrow(InputError);
    expect(() => fCdf(1, 3, 1e11)).toThrow(InputError);
    expect(() => gammaLn(1e308)).toThrow(InputError);
  });
});

describe("erf", () => {
  // Abramowitz and Stegun (1964), table 7.1: erf(0.5) to ten decimals, from memory; the laws hold it too.
  it("is the normal law in another form, odd, and 0 in the middle", () => {
    expect(erf(0.5)).toBeCloseTo(0.5204998778, 10);
    expect(erf(0)).toBe(0);
    for (const x of [1e-8, 0.3, 1, 2.5, 6]) {
      expect(erf(-x)).toBe(-erf(x));
      expect(Math.abs(erf(x) - (1 - 2 * normalCdf(-x * Math.SQRT2)))).toBeLessThan(1e-15);
    }
    expect(() => erf(Number.POSITIVE_INFINITY)).toThrow(InputError);
  });
});

describe("gammaLn", () => {
  it("is the logarithm of factorials and keeps the laws of the gamma function", () => {
    let lnFactorial = 0;
    for (let n = 1; n <= 170; n++) {
      lnFactorial += Math.log(n);
      expect(Math.abs(gammaLn(n + 1) - lnFactorial)).toBeLessThan(ROUND_TRIP);
    }
    expect(gammaLn(0.5)).toBeCloseTo(0.5 * Math.log(Math.PI), 14);
    for (const x of [0.01, 0.2, 0.7]) {
      const reflected = Math.log(Math.PI / Math.sin(Math.PI * x));
      expect(gammaLn(x) + gammaLn(1 - x)).toBeCloseTo(reflected, 12);
    }
    expect(() => gammaLn(0)).toThrow("gammaLn: x is 0; write a finite number greater than 0");
  });
});
