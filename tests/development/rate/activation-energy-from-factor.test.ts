import { describe, expect, it } from "vitest";
import { activationEnergyFromFactor, factorFromActivationEnergy } from "wetside/development";

describe("factor per 10 °C and activation energy", () => {
  it("turn into each other and back between the same two temperatures", () => {
    for (const betweenC of [[15, 25] as const, [18, 24] as const, [36, 39] as const]) {
      const energy = activationEnergyFromFactor({ factorPerTenDegrees: 2.4, betweenC });
      const back = factorFromActivationEnergy({ activationEnergyKJPerMol: energy, betweenC });
      expect(back).toBeCloseTo(2.4, 12);
    }
  });
  it("make a factor of 1 an energy of 0", () => {
    expect(activationEnergyFromFactor({ factorPerTenDegrees: 1 })).toBe(0);
    expect(factorFromActivationEnergy({ activationEnergyKJPerMol: 0 })).toBe(1);
  });
  it("let one energy mean a smaller factor in the warm than in the cold", () => {
    const at = (betweenC: readonly [number, number]) =>
      factorFromActivationEnergy({ activationEnergyKJPerMol: 60, betweenC });
    expect(at([30, 40])).toBeLessThan(at([10, 20]));
  });
  it("do not care which temperature is named first", () => {
    expect(activationEnergyFromFactor({ factorPerTenDegrees: 2, betweenC: [25, 15] })).toBeCloseTo(
      activationEnergyFromFactor({ factorPerTenDegrees: 2 }),
      12,
    );
  });
  it("refuse equal temperatures", () => {
    expect(() =>
      activationEnergyFromFactor({ factorPerTenDegrees: 2, betweenC: [20, 20] }),
    ).toThrow("two different temperatures");
  });
});
