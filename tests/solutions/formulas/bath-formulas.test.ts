import { describe, expect, it } from "vitest";
import {
  bathFormula,
  bathFormulas,
  formulaMixingSheet,
  mixingSheetText,
  scaleFormula,
  solubilityCheck,
} from "wetside/solutions";

const each = bathFormulas.map((formula) => [formula.id, formula] as const);

describe("the formulas that come with the library", () => {
  it("have ids of their own", () => {
    expect(new Set(bathFormulas.map(({ id }) => id)).size).toBe(bathFormulas.length);
  });

  it("serve every bath of the line", () => {
    const purposes = new Set(bathFormulas.map(({ purpose }) => purpose));
    expect([...purposes].sort()).toEqual(["bleach", "developer", "fixer", "stop bath", "wash aid"]);
  });

  it.each(each)("%s names its source and how it was obtained", (_, formula) => {
    expect(formula.source).toBeTruthy();
    expect(formula.howObtained).toMatch(/read in a copy|from memory|common practice/);
  });

  it.each(each)("%s scales, dissolves and makes a sheet with cautions", (_, formula) => {
    const batch = scaleFormula(Object.freeze(formula), 1000);
    expect(batch.ingredients).toHaveLength(formula.ingredients.length);
    expect(solubilityCheck(batch).filter((row) => !row.dissolves)).toEqual([]);
    const sheet = formulaMixingSheet(formula, { volumeMl: 1000 });
    expect(sheet.steps).toHaveLength(formula.ingredients.length + 2);
    expect(sheet.cautions.length).toBeGreaterThan(2);
    expect(sheet.assumptions.join(" ")).toContain(formula.source);
  });

  it("are in the order of the rules, but for the one that keeps its book's own", () => {
    const outOfOrder = bathFormulas.filter((formula) =>
      formulaMixingSheet(formula, { volumeMl: 1000, balanceDivisionG: 0.001 }).warnings.some(
        (warning) => warning.includes("should go in before"),
      ),
    );
    expect(outOfOrder.map(({ id }) => id)).toEqual(["metol-hydroquinone-borax-developer-1920s"]);
  });

  it("refuses an unknown id and suggests the nearest", () => {
    expect(() => bathFormula("metol-sulfite-develper")).toThrow(
      'did you mean "metol-sulfite-developer"',
    );
  });
});

describe("scaleFormula", () => {
  const fixer = bathFormula("acid-hardening-fixer");

  it("gives grams, millilitres and moles", () => {
    const batch = scaleFormula(fixer, 500);
    expect(batch.ingredients.map(({ amount, unit }) => `${amount} ${unit}`)).toEqual([
      "120 g",
      "7.5 g",
      "24 mL",
      "3.75 g",
      "7.5 g",
    ]);
    expect(batch.ingredients[0]?.molesMol).toBeCloseTo(120 / 248.1715, 6);
    expect(batch.ingredients[2]?.molesMol).toBeCloseTo((24 * 1.0346 * 0.28) / 60.052, 6);
    expect(batch.startingWaterMl).toBe(300);
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("refuses a volume of %d mL", (volume) => {
    expect(() => scaleFormula(fixer, volume)).toThrow("volumeMl");
  });

  it.each([
    [{ chemical: "borax" }, "either gPerL"],
    [{ chemical: "borax", gPerL: 2, mlPerL: 2 }, "either gPerL"],
    [{ chemical: "borax", gPerL: -2 }, "greater than 0"],
    [{ chemical: "borax", mlPerL: 2 }, "write it in grams"],
    [{ chemical: "borax", form: "heptahydrate", gPerL: 2 }, '"decahydrate", "pentahydrate"'],
    [{ chemical: "borax", ownFormula: "Na2B4O7.xH2O", gPerL: 2 }, "not an element"],
  ])("refuses the ingredient %o", (ingredient, message) => {
    expect(() => scaleFormula({ ...fixer, ingredients: [ingredient] }, 1000)).toThrow(message);
  });

  it("takes another hydrate of a known chemical with its rules, and an unknown one without", () => {
    const ingredients = [
      { chemical: "sodium carbonate", ownFormula: "Na2CO3.7H2O", gPerL: 50 },
      { chemical: "sodium hexametaphosphate", ownFormula: "Na6P6O18", gPerL: 1 },
      { chemical: "sodium sulfite", gPerL: 20 },
    ];
    const sheet = formulaMixingSheet({ ...fixer, ingredients }, { volumeMl: 1000 });
    expect(sheet.warnings.join(" ")).toContain(
      "sodium sulfite should go in before sodium carbonate",
    );
    expect(sheet.steps.map(({ what }) => what)).toContain("sodium hexametaphosphate");
  });
});

describe("solubilityCheck", () => {
  const borax = (gPerL: number, startingTemperatureC: number) =>
    solubilityCheck(
      scaleFormula(
        {
          ...bathFormula("plain-fixer"),
          startingTemperatureC,
          startingWaterMlPerL: 800,
          ingredients: [{ chemical: "borax", gPerL }],
        },
        1000,
      ),
    )[0];

  it("counts crystal water as water", () => {
    // 30 g of decahydrate hold 15.83 g of borax and bring 14.17 g of water to 800 g.
    const row = borax(30, 20);
    expect(row?.neededGPer100gWater).toBeCloseTo((100 * 15.828) / 814.17, 2);
    expect(row?.dissolves).toBe(true); // 2.56 g per 100 g at 20 °C (CRC: 2.50 %)
  });

  it("finds what would crystallise at room temperature though it dissolves hot", () => {
    const row = borax(80, 50);
    expect(row).toMatchObject({ dissolves: false, temperatureC: 20 });
  });

  it("warns on the sheet with numbers", () => {
    const formula = {
      ...bathFormula("plain-fixer"),
      ingredients: [{ chemical: "hydroquinone", gPerL: 90 }],
      startingTemperatureC: 20,
    };
    const { warnings } = formulaMixingSheet(formula, { volumeMl: 1000 });
    expect(warnings.join(" ")).toMatch(/hydroquinone will not dissolve: 12\.9 g per 100 g/);
  });
});

describe("formulaMixingSheet", () => {
  const developer = bathFormula("metol-hydroquinone-borax-developer");
  const plain = bathFormula("plain-fixer");

  it("rounds to the balance and says by how much", () => {
    const sheet = formulaMixingSheet(developer, { volumeMl: 330, balanceDivisionG: 0.5 });
    const metol = sheet.steps.find(({ what }) => what.startsWith("metol"));
    expect(metol?.amount).toBe(0.5); // 0.66 wanted
    expect(metol?.note).toContain("rounded −24.2 %");
    expect(sheet.warnings.join(" ")).toContain("small for this balance (up to 50 % off)");
  });

  it("refuses an amount below half a step, which a tool cannot measure", () => {
    const coarse = () => formulaMixingSheet(developer, { volumeMl: 1000, balanceDivisionG: 5 });
    expect(coarse).toThrow(
      'amount of metol, sulfate is "2 g"; less than half a step of this balance',
    );
    const acid = () =>
      formulaMixingSheet(bathFormula("acetic-stop-bath"), {
        volumeMl: 10,
        graduateDivisionMl: 100,
      });
    expect(acid).toThrow("less than half a step of this graduate (100 mL)");
  });

  it("says what acid sets free from a chemical without a class of its own", () => {
    const of = (id: string) =>
      formulaMixingSheet(bathFormula(id), { volumeMl: 1000 }).cautions.join("\n");
    expect(of("ferricyanide-bleach")).toContain(
      "potassium ferricyanide: Contact with acids liberates very toxic gas.",
    );
    expect(of("sulfite-wash-aid")).toContain("liberates sulfur dioxide");
    expect(of("acetic-stop-bath")).not.toContain("liberates");
  });

  it("wants cold water for hydroxide", () => {
    const lye = { chemical: "sodium hydroxide", gPerL: 5 };
    const at = (startingTemperatureC: number) =>
      formulaMixingSheet(
        { ...developer, startingTemperatureC, ingredients: [...developer.ingredients, lye] },
        { volumeMl: 1000 },
      ).warnings.join();
    expect(at(52)).toContain("sodium hydroxide heats the water: let it cool from 52 °C");
    expect(at(25)).not.toContain("heats the water");
  });

  it("puts a pinch of sulfite before the metol, without changing the sulfite", () => {
    const { steps } = formulaMixingSheet(developer, { volumeMl: 1000 });
    expect(steps[1]?.note).toContain("pinch of the weighed sulfite");
    expect(steps[2]).toMatchObject({ what: "sodium sulfite, anhydrous", amount: 100 });
  });

  it("costs what the price list says and names what it lacks", () => {
    const prices = {
      currency: "EUR",
      prices: [
        { what: "metol", price: 30, amount: 100, unit: "g" as const },
        { what: "Sodium sulphite", price: 8, amount: 1, unit: "kg" as const },
      ],
    };
    const { cost } = formulaMixingSheet(developer, { volumeMl: 2000, prices });
    expect(cost?.total).toBeCloseTo(4 * 0.3 + 200 * 0.008, 10);
    expect(cost?.unpriced).toEqual(["hydroquinone", "borax, decahydrate"]);
  });

  it("asks for as much water, crystals or dry: what the crystals bring, the mark takes off", () => {
    const dry = { chemical: "sodium thiosulfate", form: "anhydrous", gPerL: 152.9 };
    const wet = { chemical: "sodium thiosulfate", form: "pentahydrate", gPerL: 240 };
    const lastWater = (ingredient: typeof dry) =>
      formulaMixingSheet({ ...plain, ingredients: [ingredient] }, { volumeMl: 1000 }).steps.at(-1)
        ?.amount ?? 0;
    // 240 g of crystals bring 87 g of water.
    expect(lastWater(dry) - lastWater(wet)).toBeCloseTo(87, -1);
    // A litre of 240 g/L weighs 1.121 kg (density of 13.64 % by mass), so 881 mL of it is poured water.
    expect(700 + lastWater(wet)).toBeCloseTo(881, -1);
  });
  it("refuses a batch or an amount that no vessel holds", () => {
    expect(() => scaleFormula(plain, 1e300)).toThrow("at most");
    const heap = { ...plain, ingredients: [{ chemical: "borax", gPerL: 1e6 }] };
    expect(() => scaleFormula(heap, 1000)).toThrow("at most 5000 g per litre");
  });
  it("prints", () => {
    const text = mixingSheetText(formulaMixingSheet(developer, { volumeMl: 1000 }));
    expect(text).toContain("Makes 1 L");
    expect(text).toMatch(/2\s+2 g\s+metol, sulfate/);
    expect(text).toContain("Suspected of");
  });

  it("warns when the starting water leaves no room", () => {
    const tight = { ...developer, startingWaterMlPerL: 990 };
    expect(formulaMixingSheet(tight, { volumeMl: 1000 }).warnings.join(" ")).toContain("no room");
  });

  it("refuses steps of zero", () => {
    expect(() => formulaMixingSheet(developer, { volumeMl: 1000, balanceDivisionG: 0 })).toThrow(
      "divisionG",
    );
    expect(() => formulaMixingSheet(developer, { volumeMl: 1000, graduateDivisionMl: 0 })).toThrow(
      "graduateDivisionMl",
    );
  });
});
