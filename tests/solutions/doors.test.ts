import { describe, expect, it } from "vitest";
import {
  bathFormula,
  chemicalInForm,
  daviesActivityCoefficient,
  priceMixingSheet,
  scaleFormula,
  solubilityCheck,
} from "../../lib/solutions/index.ts";

describe("sheets and batches at the door", () => {
  const step = { order: 1, what: "fixer", amount: 100, unit: "mL", note: "" } as const;
  const sheet = { title: "t", volumeMl: 500, steps: [step], cost: null };
  const whole = { ...sheet, assumptions: [], warnings: [], cautions: [] };
  const list = { currency: "EUR", prices: [{ what: "fixer", price: 12, amount: 1, unit: "L" }] };

  it("refuse a volume or an amount that makes no cost", () => {
    for (const volumeMl of [0, Number.NaN, undefined] as never[]) {
      expect(() => priceMixingSheet({ ...whole, volumeMl }, list as never)).toThrow("volumeMl");
    }
    for (const amount of [Number.NaN, "100", undefined] as never[]) {
      const steps = [{ ...step, amount }];
      expect(() => priceMixingSheet({ ...whole, steps }, list as never)).toThrow("amount of fixer");
    }
  });
  it("refuse a step without a name or with an unknown unit, and a form that is no text", () => {
    for (const what of [undefined, 7] as never[]) {
      const steps = [{ ...step, what }];
      expect(() => priceMixingSheet({ ...whole, steps }, list as never)).toThrow("steps[0].what");
    }
    const steps = [{ ...step, unit: "oz" as never }];
    expect(() => priceMixingSheet({ ...whole, steps }, list as never)).toThrow("unit of fixer");
    expect(() => chemicalInForm("borax", 10 as never)).toThrow("form is 10");
  });
  it("refuse a batch with masses that are no numbers", () => {
    const batch = scaleFormula(bathFormula("metol-sulfite-developer"), 1000);
    const ingredients = batch.ingredients.map((each) => ({ ...each, massG: Number.NaN }));
    expect(() => solubilityCheck({ ...batch, ingredients })).toThrow("massG");
    expect(() => solubilityCheck({ ...batch, volumeMl: Number.NaN })).toThrow("volumeMl");
    expect(() => daviesActivityCoefficient(1, 1e300)).toThrow("ionicStrength");
  });
});
