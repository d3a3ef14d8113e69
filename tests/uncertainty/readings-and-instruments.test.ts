import { describe, expect, it } from "vitest";
import {
  balanceInput,
  correlationOfReadings,
  dilutionStrengthBudget,
  graduateInput,
  monteCarloUncertainty,
  powderStrengthBudget,
  quoteResult,
  readingsInput,
  standardUncertainty,
  thermometerInput,
  typeAEvaluation,
} from "wetside/uncertainty";

describe("typeAEvaluation", () => {
  it("gives mean, spread and uncertainty of the mean", () => {
    expect(typeAEvaluation(Object.freeze([2, 4, 6, 8]))).toEqual({
      mean: 5,
      standardDeviation: Math.sqrt(20 / 3),
      standardUncertainty: Math.sqrt(20 / 3) / 2,
      degreesOfFreedom: 3,
      count: 4,
    });
  });

  it("keeps its digits for readings far from zero", () => {
    const far = typeAEvaluation([1e9 + 1, 1e9 + 2, 1e9 + 3]);
    expect(far.standardDeviation).toBe(1);
  });

  it("is zero for equal readings and refuses one reading or NaN", () => {
    expect(typeAEvaluation([3, 3]).standardUncertainty).toBe(0);
    expect(() => typeAEvaluation([3])).toThrow("at least two readings");
    expect(() => typeAEvaluation([3, Number.NaN])).toThrow("readings[1]");
  });

  it("becomes an input with a t distribution", () => {
    const { distribution } = readingsInput("T", [20.1, 20.3, 20.2]);
    expect(distribution).toMatchObject({ kind: "t", degreesOfFreedom: 2 });
  });
});

describe("correlationOfReadings", () => {
  it("is −1 for opposite readings", () => {
    expect(correlationOfReadings([1, 2, 3], [3, 2, 1])).toBeCloseTo(-1, 12);
  });

  it("refuses lists of different length or without variation", () => {
    expect(() => correlationOfReadings([1, 2, 3], [1, 2])).toThrow("as many readings");
    expect(() => correlationOfReadings([1, 2], [5, 5])).toThrow("do not vary");
  });
});

describe("instrument inputs", () => {
  it("agree with the parts worked by hand", () => {
    const flask = graduateInput({
      name: "V",
      readingMl: 100,
      toleranceMl: 0.1,
      divisionMl: 0,
      toleranceShape: "triangular",
      temperatureSpreadC: 4,
    });
    const byHand = Math.hypot(0.1 / Math.sqrt(6), 0.084 / Math.sqrt(3));
    expect(standardUncertainty(flask.distribution)).toBeCloseTo(byHand, 12);
    const t = thermometerInput({ name: "T", readingC: 20, toleranceC: 1, divisionC: 0.1 });
    expect(standardUncertainty(t.distribution)).toBeCloseTo(Math.hypot(1, 0.05) / Math.sqrt(3), 12);
  });

  it("of a perfect instrument are constants", () => {
    const v = graduateInput({ name: "V", readingMl: 5, toleranceMl: 0, divisionMl: 0 });
    expect(v.distribution).toEqual({ kind: "constant", mean: 5 });
  });

  it("count each fill of a vessel that holds less than what is measured", () => {
    const jug = { name: "V", toleranceMl: 50, divisionMl: 50, capacityMl: 1000 };
    const u = (readingMl: number) =>
      standardUncertainty(graduateInput({ ...jug, readingMl }).distribution);
    const once = Math.hypot(50, 25) / Math.sqrt(3);
    expect(u(1000)).toBeCloseTo(once, 9);
    // Twice the same tolerance, and two levels read independently.
    expect(u(1500)).toBeCloseTo(Math.hypot(100, 25, 25) / Math.sqrt(3), 9);
    expect(u(1000.1)).toBeGreaterThan(once);
    expect(() => graduateInput({ ...jug, readingMl: 1e6 })).toThrow("filled 1000 times");
    expect(() => graduateInput({ ...jug, readingMl: 5, capacityMl: 0 })).toThrow("capacityMl is 0");
  });

  it("refuse readings and tolerances that cannot be", () => {
    expect(() => balanceInput({ name: "m", massG: 0, divisionG: 0.1 })).toThrow("massG is 0");
    expect(() => balanceInput({ name: "m", massG: 1, divisionG: -0.1 })).toThrow("divisionG");
    const bad = { name: "V", readingMl: 5, toleranceMl: Number.NaN, divisionMl: 1 };
    expect(() => graduateInput(bad)).toThrow("toleranceMl is NaN");
  });
});

describe("strength of a mix", () => {
  const stock = graduateInput({ name: "stock", readingMl: 20, toleranceMl: 1, divisionMl: 2 });
  const water = graduateInput({ name: "water", readingMl: 480, toleranceMl: 5, divisionMl: 10 });
  const total = graduateInput({ name: "total", readingMl: 500, toleranceMl: 5, divisionMl: 10 });

  it("is dominated by the small volume", () => {
    const { value, rows } = dilutionStrengthBudget({ stock, water });
    expect(value).toBeCloseTo(0.04, 12);
    expect(rows[0]?.variancePercent).toBeGreaterThan(95);
  });

  it("made up to a volume agrees with a hand calculation and with draws", () => {
    const budget = dilutionStrengthBudget({ stock, total });
    const relative = Math.hypot(
      standardUncertainty(stock.distribution) / 20,
      standardUncertainty(total.distribution) / 500,
    );
    expect(budget.relativeStandardUncertainty).toBeCloseTo(relative, 8);
    const drawn = monteCarloUncertainty(
      ({ s = 0, t = 1 }) => s / t,
      [
        { ...stock, name: "s" },
        { ...total, name: "t" },
      ],
      { seed: 1 },
    );
    expect(drawn.standardUncertainty / budget.combinedStandardUncertainty).toBeCloseTo(1, 2);
  });

  it("refuses both or neither of water and total", () => {
    expect(() => dilutionStrengthBudget({ stock, water, total })).toThrow("either the water");
    expect(() => dilutionStrengthBudget({ stock })).toThrow("either the water");
  });

  it("of a powder shows the balance where the mass is small", () => {
    const volume = graduateInput({ name: "V", readingMl: 1000, toleranceMl: 10, divisionMl: 10 });
    const share = (massG: number) =>
      powderStrengthBudget({ mass: balanceInput({ name: "m", massG, divisionG: 0.1 }), volume })
        .rows[0]?.variancePercent;
    expect(share(2)).toBeGreaterThan(90);
    expect(share(100)).toBeLessThan(10);
  });
});

describe("quoteResult", () => {
  it.each([
    [1002.69972, 1.6704, "1002.7 ± 1.7"],
    [12345, 678, "12350 ± 680"],
    [-0.5, 0.0099, "−0.5000 ± 0.0099"],
    [3, 0.0996, "3.00 ± 0.10"],
    [100, 9.96, "100 ± 10"],
  ])("writes %d with %d as %s", (value, uncertainty, text) => {
    expect(quoteResult(value, uncertainty)).toBe(text);
  });

  it("refuses an uncertainty of zero", () => {
    expect(() => quoteResult(1, 0)).toThrow("uncertainty is 0");
  });
});
