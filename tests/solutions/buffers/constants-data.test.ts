import { describe, expect, it } from "vitest";
import { atomicWeight, weakAcids } from "wetside/solutions";

describe("the data behind the pH", () => {
  it.each(weakAcids.map((acid) => [acid.id, acid] as const))(
    "%s has steps from strong to weak and says where they come from",
    (_, acid) => {
      const values = acid.steps.map(({ pK }) => pK);
      expect([...values].sort((a, b) => a - b)).toEqual(values);
      expect(values.length).toBeGreaterThan(0);
      expect(Number.isInteger(acid.chargeOfAcid)).toBe(true);
      for (const { enthalpyKjPerMol, heatCapacityJPerKMol } of acid.steps) {
        expect(Math.abs(enthalpyKjPerMol)).toBeLessThan(60);
        expect(Math.abs(heatCapacityJPerKMol)).toBeLessThan(400);
      }
      expect(acid.source && acid.howObtained).toBeTruthy();
    },
  );

  it("has ids of its own", () => {
    expect(new Set(weakAcids.map(({ id }) => id)).size).toBe(weakAcids.length);
  });

  it("weighs elements in the order of the table, argon after potassium and nickel before cobalt", () => {
    const order = "H He Li Be B C N O F Ne Na Mg Al Si P S Cl K Ar Ca Sc Ti V Cr Mn Fe Ni Co Cu Zn";
    const weights = order.split(" ").map((symbol) => atomicWeight(symbol).weight);
    expect([...weights].sort((a, b) => a - b)).toEqual(weights);
  });
});
