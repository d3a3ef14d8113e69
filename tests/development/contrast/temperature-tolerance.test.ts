import { describe, expect, it } from "vitest";
import {
  activationEnergyModel,
  exponentialApproach,
  temperatureTolerance,
} from "wetside/development";

const model = activationEnergyModel({
  activationEnergyKJPerMol: 60,
  referenceTemperatureC: 37.8,
});
const curve = exponentialApproach({
  ceiling: 0.9,
  ratePerMin: 0.35,
  range: { minMin: 2, maxMin: 6 },
});
const at = { model, temperatureC: 37.8 };

describe("temperatureTolerance", () => {
  it("gives temperatures at which the dose is off by just the allowed per cent", () => {
    const tolerance = temperatureTolerance({ ...at, allowed: { timePercent: 2 } });
    const rate = (t: number) => model.relativeRate(t) / model.relativeRate(37.8);
    expect(rate(37.8 + (tolerance.aboveC ?? 0))).toBeCloseTo(1.02, 10);
    expect(rate(37.8 - (tolerance.belowC ?? 0))).toBeCloseTo(0.98, 10);
    expect(tolerance.plusMinusC).toBe(Math.min(tolerance.aboveC ?? 9, tolerance.belowC ?? 9));
  });
  it("agrees for small errors with Ea/(R·T²)", () => {
    const perDegree = (100 * 60000) / (8.31446261815324 * 310.95 ** 2);
    const tolerance = temperatureTolerance({ ...at, allowed: { timePercent: 0.01 } });
    // Second order: half a hundredth of a per cent of the tolerance itself.
    expect(tolerance.plusMinusC).toBeCloseTo(0.01 / perDegree, 6);
    expect(tolerance.dosePercentPerDegree).toBeCloseTo(perDegree, 4);
  });
  it("gives temperatures at which contrast is off by just what is allowed", () => {
    const timeMin = 3.25;
    const tolerance = temperatureTolerance({
      ...at,
      allowed: { contrast: 0.01, curve, timeMin },
    });
    const contrast = (t: number) =>
      curve.contrastAt((timeMin * model.relativeRate(t)) / model.relativeRate(37.8));
    expect(contrast(37.8 + (tolerance.aboveC ?? 0)) - contrast(37.8)).toBeCloseTo(0.01, 10);
    expect(contrast(37.8 - (tolerance.belowC ?? 0)) - contrast(37.8)).toBeCloseTo(-0.01, 10);
  });
  it("turns a density into a contrast by the exposure of its patch", () => {
    const byContrast = temperatureTolerance({
      ...at,
      allowed: { contrast: 0.01, curve, timeMin: 3.25 },
    });
    const byDensity = temperatureTolerance({
      ...at,
      allowed: { density: 0.02, logExposureAboveThreshold: 2, curve, timeMin: 3.25 },
    });
    expect(byDensity.plusMinusC).toBe(byContrast.plusMinusC);
  });
  it("leaves a side open where no temperature is too far", () => {
    const tolerance = temperatureTolerance({
      ...at,
      allowed: { contrast: 0.5, curve, timeMin: 3.25 },
    });
    expect("aboveC" in tolerance).toBe(false);
    expect(tolerance.warnings.join()).toMatch(/one side|neither side/);
    expect(JSON.parse(JSON.stringify(tolerance))).toEqual(tolerance);
  });
  it("works at the very edge of the model's reach", () => {
    const edge = model.range.maxC + model.refuseBeyondC;
    const hot = { model, temperatureC: Math.min(edge, 45) };
    expect(temperatureTolerance({ ...hot, allowed: { timePercent: 1 } }).belowC).toBeGreaterThan(0);
  });
  it("refuses an allowance of nothing", () => {
    expect(() => temperatureTolerance({ ...at, allowed: { timePercent: 0 } })).toThrow(
      "allowed.timePercent",
    );
    expect(() => temperatureTolerance({ ...at, allowed: {} as never })).toThrow(
      "timePercent, contrast or density",
    );
  });
});
