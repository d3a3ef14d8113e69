import { describe, expect, it } from "vitest";
import {
  cusumRunLength,
  designCusum,
  designEwma,
  driftRunLength,
  ewmaLimitWidthFor,
  ewmaRunLength,
} from "wetside/control";

describe("designEwma", () => {
  const design = designEwma({ inControlRunLength: 300, shift: 1, stripsPerDay: 2 });

  it("keeps the in-control run length that was asked for", () => {
    expect(ewmaRunLength(design).zeroState).toBeCloseTo(300, 6);
    expect(design.daysBetweenFalseAlarms).toBe(150);
  });
  it("promises the delay that its chart has", () => {
    const delay = ewmaRunLength(design, { shift: 1 }).zeroState;
    expect(design.readingsToSignal).toBeCloseTo(delay, 9);
    expect(design.daysToSignal).toBeCloseTo(delay / 2, 9);
  });
  it("is not beaten by its neighbours", () => {
    for (const lambda of [design.lambda * 0.7, design.lambda * 1.4]) {
      const other = { lambda, limitWidth: ewmaLimitWidthFor(lambda, 300) };
      const delay = ewmaRunLength(other, { shift: 1 }).zeroState;
      expect(delay).toBeGreaterThan(design.readingsToSignal);
    }
  });
  it("takes less memory for larger shifts", () => {
    const large = designEwma({ inControlRunLength: 300, shift: 2.5 });
    expect(large.lambda).toBeGreaterThan(design.lambda);
  });
  it("says so when the soonest λ may lie below those it tries", () => {
    const slow = designEwma({ inControlRunLength: 100_000, driftPerReading: 0.001 });
    expect(slow.warnings[0]).toContain("below 0.01");
    expect(designEwma({ inControlRunLength: 300, shift: 1 }).warnings).toEqual([]);
  });
  it("asks for either a shift or a drift", () => {
    expect(() => designEwma({ inControlRunLength: 300 })).toThrow(
      "either shift or driftPerReading",
    );
    expect(() => designEwma({ inControlRunLength: 300, shift: 1, driftPerReading: 0.1 })).toThrow(
      "either",
    );
    expect(() => designEwma({ inControlRunLength: 5, shift: 1 })).toThrow(
      "inControlRunLength is 5",
    );
  });
});

describe("designCusum", () => {
  it("says which run length is within reach where the wanted one is not", () => {
    expect(() => designCusum({ inControlRunLength: 20, shift: 5 })).toThrow(
      "with k = 2.5 write at least 108",
    );
    expect(() => designCusum({ inControlRunLength: 100_000, shift: 0.1 })).toThrow(
      /with k = 0\.05 write at most \d+, or take a larger k/,
    );
  });
  it("takes half the shift as reference value and keeps the in-control run length", () => {
    const design = designCusum({ inControlRunLength: 400, shift: 1.5 });
    expect(design.referenceValue).toBe(0.75);
    expect(cusumRunLength(design).zeroState).toBeCloseTo(400, 5);
  });
  it("finds the reference value for a drift", () => {
    const design = designCusum({ inControlRunLength: 400, driftPerReading: 0.05 });
    expect(cusumRunLength(design).zeroState).toBeCloseTo(400, 5);
    const individuals = driftRunLength({ chart: "individuals", limitWidth: 3 }, 0.05);
    expect(design.readingsToSignal).toBeLessThan(individuals);
  });
});
