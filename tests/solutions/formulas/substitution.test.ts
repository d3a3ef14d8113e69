import { describe, expect, it } from "vitest";
import {
  bathFormula,
  metaborateFromBorax,
  substituteChemical,
  substituteInFormula,
  weighToDivision,
} from "wetside/solutions";

describe("substituteChemical", () => {
  it("keeps nothing at nothing", () => {
    expect(substituteChemical("borax", "borax pentahydrate", 0).amount).toBe(0);
  });

  it("counts the alkali between two salts of one acid, although both are of sodium", () => {
    // EDTA with four sodium for EDTA with two: two moles of hydroxide for each mole.
    const { warnings, molesOfActiveIon } = substituteChemical(
      "tetrasodium EDTA",
      "disodium EDTA",
      10,
    );
    expect(warnings[0]).toContain(`add ${(2 * molesOfActiveIon * 39.997).toPrecision(3)} g`);
    expect(substituteChemical("disodium EDTA", "tetrasodium EDTA", 10).warnings[0]).toContain(
      "rises",
    );
  });

  it("says so where a form brings acid and not only water", () => {
    const warnings = (from: string, to: string) => substituteChemical(from, to, 10).warnings;
    expect(warnings("CD-4", "CD-4 free base")[0]).toContain("differ in acid");
    expect(warnings("metol", "metol free base")[0]).toContain("differ in acid");
    expect(warnings("CD-4", "CD-4 sulfate")).toEqual([]);
    expect(warnings("CD-3", "CD-3 2:3 sulfate anhydrous")).toEqual([]);
    expect(warnings("acetic acid glacial", "acetic acid 28 %")).toEqual([]);
  });

  it("takes isoascorbate for ascorbic acid, with both warnings", () => {
    const { amount, warnings } = substituteChemical("ascorbic acid", "sodium isoascorbate", 10);
    expect(amount).toBeCloseTo((10 / 176.124) * 198.106, 3);
    expect(warnings.join()).toMatch(/isomers[\s\S]*a salt for its acid/);
  });

  it("says what no factor replaces: ammonium in a fixer, hydroxide between the sulfites", () => {
    const { warnings } = substituteChemical("ammonium chloride", "sodium chloride", 50);
    expect(warnings.join()).toContain("brings no ammonium");
    const metabisulfite = () => substituteChemical("sodium sulfite", "sodium metabisulfite", 10);
    expect(metabisulfite).toThrow("a mole of hydroxide");
  });

  it("guesses no acid's strength", () => {
    const open = () => substituteChemical("acetic acid", "acetic acid 28 %", 10);
    expect(open).toThrow('write "acetic acid glacial" or "acetic acid 28 %"');
  });

  it("carries the cautions of both, and of the alkali that it asks for", () => {
    const cautions = (from: string, to: string) => substituteChemical(from, to, 10).cautions.join();
    expect(cautions("sodium hydroxide", "potassium hydroxide")).toContain("cold water");
    expect(cautions("trisodium citrate", "citric acid")).toContain("Hydroxide heats strongly");
    expect(cautions("borax", "borax pentahydrate")).toContain("fertility");
  });
  it("counts active ions, not formula units: metabisulfite gives two", () => {
    const { molesOfActiveIon } = substituteChemical(
      "sodium metabisulfite",
      "sodium bisulfite",
      190.09,
    );
    expect(molesOfActiveIon).toBeCloseTo(2, 3);
  });

  it("counts the base of a colour developing agent, whatever its salt", () => {
    const { massFactor } = substituteChemical("CD-4 sulfate", "CD-4 free base", 1);
    expect(massFactor).toBeCloseTo(194.278 / 292.35, 5);
    const cd3 = substituteChemical("CD-3", "CD-3 2:3 sulfate anhydrous", 1);
    expect(cd3.massFactor).toBeCloseTo(836.974 / 2 / 436.502, 5);
  });

  it("turns 28 % acetic acid into glacial by mass and density", () => {
    const { amount, unit } = substituteChemical("acetic acid 28 %", "acetic acid glacial", 48);
    expect(unit).toBe("mL");
    expect(amount).toBeCloseTo((48 * 1.0346 * 0.28) / (0.995 * 1.0498), 9);
  });

  it("says how much alkali an acid in place of its salt takes", () => {
    const { warnings } = substituteChemical("sodium ascorbate", "ascorbic acid", 198.1058);
    expect(warnings.join(" ")).toContain("add 40.0 g of sodium hydroxide");
    const back = substituteChemical("ascorbic acid", "sodium ascorbate", 176.12);
    expect(back.warnings.join(" ")).toContain("leave that much alkali out");
  });

  it("warns of ammonium in a developer and of an equal-thiosulfate fixer", () => {
    expect(
      substituteChemical("potassium bromide", "ammonium bromide", 2).warnings.join(),
    ).toContain("not in a developer");
    const fixer = substituteChemical("sodium thiosulfate", "ammonium thiosulfate", 240);
    expect(fixer.warnings.join()).toContain("find the clearing time");
  });

  it.each([
    ["sodium carbonate", "sodium hydroxide", "compare them with solutionPh"],
    ["sodium metaborate", "borax", "see metaborateFromBorax"],
    ["sodium sulfite", "sodium sulfate", "a source of sulfite; sodium sulfate is not one"],
    ["phenidone", "metol", "a source of 1-phenyl-3-pyrazolidinone"],
  ])("refuses %s → %s", (from, to, message) => {
    expect(() => substituteChemical(from, to, 10)).toThrow(message);
  });

  it.each([-1, Number.NaN])("refuses an amount of %d", (amount) => {
    expect(() => substituteChemical("borax", "borax pentahydrate", amount)).toThrow("amount");
  });
});

describe("substituteInFormula", () => {
  const print = Object.freeze(bathFormula("print-developer"));

  it("changes one ingredient, keeps its place, and says so", () => {
    const changed = substituteInFormula(print, "sodium carbonate", "sodium carbonate anhydrous");
    expect(changed.ingredients[3]?.gPerL).toBeCloseTo(80 * (105.9875 / 124.0025), 4);
    expect(changed.ingredients.filter((each, i) => each !== print.ingredients[i])).toHaveLength(1);
    expect(changed.notes.at(-1)).toContain("put for 80 g/L of sodium carbonate, monohydrate");
  });

  it("refuses an ingredient that is not there", () => {
    expect(() => substituteInFormula(print, "borax", "borax pentahydrate")).toThrow(
      "write one of metol, sodium sulfite",
    );
  });
});

describe("metaborateFromBorax", () => {
  it("balances boron and sodium", () => {
    const { boraxG, sodiumHydroxideG } = metaborateFromBorax(275.7155);
    expect(boraxG / 381.3625).toBeCloseTo(0.5, 6); // 2 mol of metaborate hold 2 boron
    expect(sodiumHydroxideG / 39.9968).toBeCloseTo(1, 5); // and 2 sodium, half of them from borax
  });

  it("refuses a negative mass", () => {
    expect(() => metaborateFromBorax(-1)).toThrow("massG is -1");
  });
});

describe("weighToDivision", () => {
  it.each([
    [3.75, 0.1, 3.8],
    [0.04, 0.1, 0.1],
    [100, 1, 100],
    [0.15, 0.1, 0.2],
  ])("of %d g on a balance of %d g is %d g", (wanted, division, mass) => {
    expect(weighToDivision(wanted, division).massG).toBe(mass);
  });

  it("never asks for nothing, and shows the error of that", () => {
    expect(weighToDivision(0.01, 0.1).errorPercent).toBeCloseTo(900, 6);
  });
});
