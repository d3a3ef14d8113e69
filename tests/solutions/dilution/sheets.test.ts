import { describe, expect, it } from "vitest";
import {
  bathFormula,
  dilutionSheet,
  formulaMixingSheet,
  kitSheet,
  type MixingPriceList,
  type MixingSheet,
  mixingSheetText,
  priceMixingSheet,
} from "wetside/solutions";

const sum = (sheet: MixingSheet) => sheet.steps.reduce((total, step) => total + step.amount, 0);

describe("dilutionSheet", () => {
  it("starts with water, takes the concentrates in order, ends with water", () => {
    const sheet = dilutionSheet({
      title: "Bleach-fix",
      ratio: "1+1+8",
      totalMl: 2000,
      names: ["bleach-fix A", "bleach-fix B"],
      temperatureC: 24,
    });
    expect(sheet.steps.map(({ order, what }) => `${order} ${what}`)).toEqual([
      "1 water at 24 °C",
      "2 bleach-fix A",
      "3 bleach-fix B",
    ]);
    expect(sum(sheet)).toBeCloseTo(2000, 9);
    expect(sheet.cost).toBeNull();
  });
  it("pours stock without water", () => {
    const sheet = dilutionSheet({ title: "t", ratio: "stock", totalMl: 500 });
    expect(sheet.steps).toHaveLength(1);
    expect(sheet.steps[0]).toMatchObject({ what: "concentrate", amount: 500 });
  });
  it("puts what the vessels read on the sheet, with the error in words", () => {
    const vessels = ["cylinder-25-b", "cylinder-500-b"];
    const sheet = dilutionSheet({ title: "t", ratio: "1+31", totalMl: 500, vessels });
    expect(sheet.steps[1]).toMatchObject({ amount: 15.6 });
    expect(sheet.steps[1]?.note).toContain("25 mL measuring cylinder, class B, rounding makes it");
    expect(sheet.volumeMl).toBeCloseTo(sum(sheet), 9);
  });
  it("refuses water that is no water: ice, steam, not a number", () => {
    for (const temperatureC of [-1, 101, Number.NaN]) {
      const wanted = { title: "t", ratio: "1+9", totalMl: 500, temperatureC };
      expect(() => dilutionSheet(wanted)).toThrow("temperatureC");
    }
  });
  it("carries the cautions of what it pours", () => {
    const sheet = dilutionSheet({
      title: "Stop",
      ratio: "1+19",
      totalMl: 1000,
      names: ["glacial acetic acid"],
    });
    expect(sheet.cautions[0]).toContain("acid into water");
  });
});

describe("kitSheet", () => {
  const parts = [{ what: "A", mlPerL: 200 }];
  it("sums to the final volume and starts with six tenths of water", () => {
    const sheet = kitSheet({ title: "First developer", parts, volumeMl: 350 });
    expect(sheet.steps.map(({ amount }) => amount)).toEqual([210, 70, 70]);
    expect(sum(sheet)).toBe(350);
  });
  it("loses no part by rounding: refuses, and warns where a part is far off", () => {
    const kit = { title: "t", parts: [{ what: "A", mlPerL: 5 }] };
    expect(() => kitSheet({ ...kit, volumeMl: 1 })).toThrow("0.005 mL of A would be rounded to");
    expect(() => kitSheet({ ...kit, volumeMl: 1000, roundToMl: 50 })).toThrow("roundToMl is 50");
    const coarse = kitSheet({ ...kit, volumeMl: 1000, roundToMl: 8 });
    expect(coarse.steps[1]?.amount).toBe(8);
    expect(coarse.warnings).toEqual(["A: 5 mL rounded by 60 %; mix a larger volume"]);
    expect(kitSheet({ ...kit, volumeMl: 1000 }).warnings).toEqual([]);
  });
  it("rounds a half up", () => {
    const [, part] = kitSheet({
      title: "t",
      parts: [{ what: "B", mlPerL: 47 }],
      volumeMl: 350,
    }).steps;
    expect(part?.amount).toBe(16.5);
  });
  it("leaves out the last water when the parts fill the rest", () => {
    const full = { title: "t", parts: [{ what: "A", mlPerL: 400 }], volumeMl: 1000 };
    expect(kitSheet(full).steps).toHaveLength(2);
  });
  it("refuses parts that leave no room for the starting water, and says how much there is", () => {
    const bleach = { title: "t", parts: [{ what: "A", mlPerL: 500 }], volumeMl: 1000 };
    expect(() => kitSheet(bleach)).toThrow("write at most 0.5");
    expect(kitSheet({ ...bleach, startWaterFraction: 0.5 }).steps).toHaveLength(2);
    const over = { title: "t", parts: [parts[0], { what: "B", mlPerL: 900 }], volumeMl: 1000 };
    expect(() => kitSheet(over as typeof bleach)).toThrow("sum to less than 1000");
  });
  it("refuses no parts", () => {
    expect(() => kitSheet({ title: "t", parts: [], volumeMl: 1 })).toThrow("at least one");
  });
});

describe("priceMixingSheet", () => {
  const sheet = kitSheet({ title: "t", parts: [{ what: "A", mlPerL: 200 }], volumeMl: 5000 });
  const price = { what: "a ", price: 30, amount: 1, unit: "L" } as const;
  it("prices what the list has; water is free", () => {
    const priced = priceMixingSheet(sheet, { currency: "EUR", prices: [price] });
    expect(priced.cost).toEqual({
      currency: "EUR",
      total: 30,
      perLitre: 6,
      lines: [{ what: "A", cost: 30 }],
      unpriced: [],
    });
    expect(sheet.cost).toBeNull();
  });
  it("names what the list lacks", () => {
    const priced = priceMixingSheet(sheet, { currency: "EUR", prices: [] });
    expect(priced.cost).toMatchObject({ total: 0, unpriced: ["A"] });
  });
  it("refuses a price by weight for a liquid, a negative price, and a price for nothing", () => {
    const wrong = (change: object) => () =>
      priceMixingSheet(sheet, { currency: "EUR", prices: [{ ...price, ...change }] });
    expect(wrong({ unit: "kg" })).toThrow("per mL or L");
    expect(wrong({ price: -1 })).toThrow("price of a");
    expect(wrong({ amount: 0 })).toThrow("amount of a");
    expect(wrong({ unit: "gal" })).toThrow('"mL"');
  });
  it("finds a chemical by any of its names, on any sheet", () => {
    const batch = { volumeMl: 1000 };
    const plain = formulaMixingSheet(bathFormula("metol-sulfite-developer"), batch);
    const prices = [{ what: "Metol", price: 2, amount: 10, unit: "g" } as const];
    expect(priceMixingSheet(plain, { currency: "EUR", prices }).cost).toMatchObject({
      total: 1.5,
      unpriced: ["sodium sulfite, anhydrous"],
    });
  });
  it("does not take the price of one strength for another", () => {
    const stop = formulaMixingSheet(bathFormula("acetic-stop-bath"), { volumeMl: 1000 });
    const prices = [{ what: "glacial acetic acid", price: 9, amount: 1, unit: "L" } as const];
    const { cost } = priceMixingSheet(stop, { currency: "EUR", prices });
    expect(cost?.unpriced).toEqual(["acetic acid, 28 %"]);
  });
  it("refuses one thing priced twice, and what is not a price list", () => {
    const twice = [price, { ...price, what: "A" }];
    expect(() => priceMixingSheet(sheet, { currency: "EUR", prices: twice })).toThrow("twice");
    for (const odd of [null, {}, { currency: "EUR" }, { currency: 1, prices: [] }]) {
      const list = odd as unknown as MixingPriceList;
      expect(() => priceMixingSheet(sheet, list)).toThrow("currency");
    }
    const nameless = [{ ...price, what: "" }];
    expect(() => priceMixingSheet(sheet, { currency: "EUR", prices: nameless })).toThrow("name");
  });
});

describe("mixingSheetText", () => {
  it("prints every step, the cost and each caution within 76 characters", () => {
    const sheet = dilutionSheet({
      title: "Fixer",
      ratio: "1+4",
      totalMl: 5000,
      names: ["rapid fixer concentrate (ammonium thiosulfate)"],
    });
    const prices = [{ what: sheet.steps[1]?.what ?? "", price: 9, amount: 1, unit: "L" } as const];
    const text = mixingSheetText(priceMixingSheet(sheet, { currency: "EUR", prices }));
    for (const step of sheet.steps) expect(text).toContain(String(step.amount));
    expect(text).toContain("Makes 5 L");
    expect(text).toContain("Cost 9.00 EUR, 1.80 EUR per L");
    expect(text).toContain("Cautions");
    expect(Math.max(...text.split("\n").map((line) => line.length))).toBeLessThanOrEqual(76);
    const words = text.replace(/\s+/g, " ");
    for (const caution of sheet.cautions) expect(words).toContain(caution);
  });
});
