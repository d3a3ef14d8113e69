import { describe, expect, it } from "vitest";
import {
  checkMixingOrder,
  formulaMixingSheet,
  inMixingOrder,
  mixingRules,
  parseBathFormula,
  requireBathFormula,
} from "wetside/solutions";

const TEXT = `
name: Test developer   # a comment
purpose: developer
water 400 mL at 45 °C
Metol 1,5 g
sodium sulfite, crystals 100 g
hydroquinone: 2 g
acetic acid 28 % 3.5 mL
sodium carbonate [Na2CO3.3H2O] 0.02 kg
note: made up for a test
water to 500 mL
`;

describe("a formula that leaves something open", () => {
  const sheet = (text: string) => formulaMixingSheet(parseBathFormula(text), { volumeMl: 1000 });

  it("is refused where the strength of an acid is open: glacial is 3.6 times 28 %", () => {
    for (const line of ["acetic acid 48 mL", "acetic acid 13 g"]) {
      const read = () => parseBathFormula(`${line}\nwater to 1 L`);
      expect(read).toThrow(
        'line 1: strength of acetic acid is missing; write "acetic acid glacial"',
      );
    }
    const liquid = () => parseBathFormula("ammonium thiosulfate 200 mL\nwater to 1 L");
    expect(liquid).toThrow('write "ammonium thiosulfate 60 % solution"');
    expect(sheet("glacial acetic acid 13 mL\nwater to 1 L").steps[1]?.amount).toBe(13);
  });

  it("says which hydrate was taken, and nothing where the formula does", () => {
    const { assumptions } = sheet("sodium carbonate 80 g\nborax pentahydrate 2 g\nwater to 1 L");
    expect(assumptions.join()).toContain("sodium carbonate taken as anhydrous");
    expect(assumptions.join()).not.toContain("borax taken");
  });

  it("is refused with water hotter than boiling", () => {
    const text = "metol 2 g\nwater 800 mL at 125 C\nwater to 1 L";
    expect(() => parseBathFormula(text)).toThrow("line 2: water boils at 100 °C");
  });
});

describe("parseBathFormula", () => {
  it("reads names, forms, amounts, water and headings, per litre", () => {
    const formula = parseBathFormula(TEXT);
    expect(formula).toMatchObject({
      id: "test-developer",
      name: "Test developer",
      purpose: "developer",
      startingWaterMlPerL: 800,
      startingTemperatureC: 45,
      source: "the user's own",
      notes: ["made up for a test"],
    });
    expect(formula.ingredients.map((each) => each.gPerL ?? each.mlPerL)).toEqual([
      3, 200, 4, 7, 40,
    ]);
    expect(formulaMixingSheet(formula, { volumeMl: 500 }).steps).toHaveLength(7);
  });

  it("reads line ends of every kind alike", () => {
    const at = (end: string) => parseBathFormula(TEXT.replaceAll("\n", end));
    expect(at("\r\n")).toEqual(at("\n"));
    expect(at("\r")).toEqual(at("\n"));
  });

  it("reports every bad line at once", () => {
    const bad = "metol two g\nsodium sulfitte 5 g\nborax 3 mL\nwater to 1 kg";
    expect(() => parseBathFormula(bad)).toThrow(
      /line 1: "metol two g" is not understood.*line 4: write water in mL.*final volume is missing.*line 2: .*did you mean "sodium sulfite".*line 3: .*write it in grams/s,
    );
  });

  it.each([
    ["", "write lines such as"],
    ["water to 1 L", "no ingredient was found"],
    ["water 2 L\nborax 1 g\nwater to 1 L", "more than the final volume"],
    ["salt [NaClx] 1 g\nwater to 1 L", "not an element"],
    ["metol 2,000 g\nwater to 1 L", "2000 or 2.000"],
    ["metol 2 oz\nwater to 1 L", "convertMass"],
    ["metol -2 g\nwater to 1 L", "above 0"],
    ["metol 2 g\nwater at 125 F 750 mL\nwater to 1 L", "temperature in °C"],
    ["metol 2 g\nwater for the tank 750 mL\nwater to 1 L", "water to 1000 mL"],
    ["metol 2 g\nwater to 0 mL", "volume above 0"],
  ])("refuses %o", (text, message) => {
    expect(() => parseBathFormula(text)).toThrow(message);
  });
});

describe("requireBathFormula", () => {
  const good = { name: "j", ingredients: [{ chemical: "borax", gPerL: 2 }] };

  it("fills in what was left out", () => {
    expect(requireBathFormula(JSON.parse(JSON.stringify(good)))).toMatchObject({
      startingTemperatureC: 20,
      howObtained: "given by the user",
    });
  });

  it.each([
    [null, "write an object"],
    [{ ...good, name: 3 }, "name is 3"],
    [{ ...good, ingredients: [] }, "at least one ingredient"],
    [{ ...good, ingredients: [{ chemical: "borax", grams: 2 }] }, "this field is not known"],
    [{ ...good, ingredients: [{ chemical: "borax", gPerL: "2" }] }, "amount of borax"],
    [{ ...good, startingWaterMlPerL: 1500 }, "at most 1000"],
    [{ ...good, notes: "none" }, "write a list of sentences"],
  ])("refuses %o", (value, message) => {
    expect(() => requireBathFormula(value)).toThrow(message);
  });
});

describe("the order of mixing", () => {
  it("of a developer, from any order", () => {
    const right = ["metol", "sodium sulfite", "hydroquinone", "sodium carbonate"];
    for (const start of [right, [...right].reverse()]) {
      expect(inMixingOrder(start)).toEqual(right);
    }
  });

  it("of a hardening fixer: alum last, acid after sulfite", () => {
    const mixed = ["potassium alum", "acetic acid 28 %", "sodium sulfite", "sodium thiosulfate"];
    expect(inMixingOrder(mixed)).toEqual([
      "sodium sulfite",
      "sodium thiosulfate",
      "acetic acid 28 %",
      "potassium alum",
    ]);
  });

  it("keeps the order given where no rule speaks, and passes unknown names through", () => {
    const free = ["potassium bromide", "my secret", "sodium sulfate"];
    expect(inMixingOrder(free)).toEqual(free);
    expect(checkMixingOrder(free)).toEqual([]);
  });

  it("has rules that agree with each other", () => {
    const follow = (tag: string, seen: readonly string[]): void => {
      expect(seen).not.toContain(tag);
      for (const rule of mixingRules.filter((each) => each.before === tag)) {
        follow(rule.after, [...seen, tag]);
      }
    };
    for (const { before } of mixingRules) follow(before, []);
  });

  it("gives the reason", () => {
    const [fault] = checkMixingOrder(["potassium alum", "acetic acid 28 %"]);
    expect(fault?.why).toContain("aluminium sulfite");
  });
});
