import { MF } from "mf-parser";
import { describe, expect, it } from "vitest";
import { atomicWeight, molarMass, parseChemicalFormula } from "wetside/solutions";

describe("parseChemicalFormula", () => {
  it.each([
    ["Na2S2O3.5H2O", { Na: 2, S: 2, O: 8, H: 10 }, "Na2S2O3·5H2O"],
    ["Na2S2O3 · 5 H2O", { Na: 2, S: 2, O: 8, H: 10 }, "Na2S2O3·5H2O"],
    ["Na₂CO₃·H₂O", { Na: 2, C: 1, O: 4, H: 2 }, "Na2CO3·H2O"],
    ["K2CO3.1.5H2O", { K: 2, C: 1, O: 4.5, H: 3 }, "K2CO3·1.5H2O"],
    ["K2CO3.3/2H2O", { K: 2, C: 1, O: 4.5, H: 3 }, "K2CO3·1.5H2O"],
    ["(C7H9NO)2.H2SO4", { C: 14, H: 20, N: 2, O: 6, S: 1 }, "(C7H9NO)2·H2SO4"],
    ["K2CO3. 3/2 H2O", { K: 2, C: 1, O: 4.5, H: 3 }, "K2CO3·1.5H2O"],
    ["2 H2O", { H: 4, O: 2 }, "2H2O"],
    ["K3[Fe(CN)6]", { K: 3, Fe: 1, C: 6, N: 6 }, "K3(Fe(CN)6)"],
    ["KAl(SO4)2*12H2O", { K: 1, Al: 1, S: 2, O: 20, H: 24 }, "KAl(SO4)2·12H2O"],
    ["CH3COOH", { C: 2, H: 4, O: 2 }, "CH3COOH"],
    ["Ag", { Ag: 1 }, "Ag"],
  ])("reads %s", (text, atoms, formula) => {
    expect(parseChemicalFormula(text)).toMatchObject({ atoms, formula });
  });

  it.each([
    ["", "write a formula"],
    [undefined, "write a formula"],
    ["na2so3", "element symbols begin with a capital"],
    ["NaXx", '"Xx" is not an element'],
    ["Ph", '"Ph" is not an element'],
    ["Na2SO3.", "each side of a dot"],
    ["Na2SO3.7", "each side of a dot"],
    [".5H2O", "each side of a dot"],
    ["SO3--", "without charges"],
    ["Na2(SO3", "do not balance"],
    ["Na2)SO3(", "do not balance"],
    ["Na()", "nothing between the brackets"],
    ["H0", "may not be 0"],
    ["Na2SO3.0H2O", "above 0"],
    ["Na2SO3.1/0H2O", "above 0"],
    ["Na2SO3 or so", "not an element"],
    ["Na2SO3 7H2O", 'a dot before the water: "Na2SO3.7H2O"'],
    ["Na2CO3 H2O", 'a dot before the water: "Na2CO3.H2O"'],
    ["K2CO3 1.5 H2O", 'a dot before the water: "K2CO3.1.5H2O"'],
    ["H99999", "slip of the pen"],
    ["Na2SO3?", '"?" does not belong'],
  ])("refuses %s", (text, message) => {
    expect(() => parseChemicalFormula(text as string)).toThrow(message);
  });
});

describe("molarMass", () => {
  it("adds up: a hydrate is the salt and its water", () => {
    const water = molarMass("H2O").molarMassGPerMol;
    const sum = molarMass("Na2SO3").molarMassGPerMol + 7 * water;
    expect(molarMass("Na2SO3.7H2O").molarMassGPerMol).toBeCloseTo(sum, 9);
  });

  it("differs from the parser's own isotope-weighted masses by at most 0.01 %", () => {
    // The parser weighs with isotopic abundances; the standard weights are IUPAC's. The largest
    // difference is sulfur's (32.0648 against 32.06), so compounds of sulfur differ most.
    const differences = ["Na2SO3", "Na2S2O3", "K2CO3", "KBr", "C6H6O2", "AgCl", "Na2B4O7"].map(
      (formula) =>
        Math.abs(new MF(formula).getInfo().mass / molarMass(formula).molarMassGPerMol - 1),
    );
    expect(Math.max(...differences)).toBeGreaterThan(5e-5);
    expect(Math.max(...differences)).toBeLessThan(1e-4);
  });

  it("would be wrong by the parser's reading of a bare dot, which takes 3.5 for a count", () => {
    const bare = new MF("Na2S2O3.5H2O").getInfo().mass;
    expect(Math.abs(bare - molarMass("Na2S2O3.5H2O").molarMassGPerMol)).toBeGreaterThan(50);
  });
});

describe("atomicWeight", () => {
  it("refuses an element without a standard weight and suggests the nearest symbol", () => {
    expect(() => atomicWeight("Tc")).toThrow("has a standard weight");
    expect(() => atomicWeight("NA")).toThrow('did you mean "Na"');
  });
});
