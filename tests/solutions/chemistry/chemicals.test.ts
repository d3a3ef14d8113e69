import { describe, expect, it } from "vitest";
import {
  type Chemical,
  type ChemicalForm,
  chemicalHazards,
  chemicalInForm,
  chemicals,
  hazardStatement,
  molarMass,
  parseChemicalFormula,
  solubility,
} from "wetside/solutions";

const forms: readonly (readonly [string, Chemical, ChemicalForm])[] = chemicals.flatMap((each) =>
  each.forms.map((form) => [`${each.name}, ${form.id}`, each, form] as const),
);
const ION_CHARGE = /^[A-Za-z0-9()]+?(\++|-+)$/;
const charge = (ion: string) => {
  const signs = ION_CHARGE.exec(ion)?.[1] ?? "";
  return signs.startsWith("+") ? signs.length : -signs.length;
};

describe("the registry of chemicals", () => {
  it("has no two chemicals of one name, id or synonym", () => {
    const words = chemicals.flatMap((each) => [
      ...new Set([each.id, each.name, ...each.synonyms].map((word) => word.toLowerCase())),
    ]);
    expect(words.filter((word, i) => words.indexOf(word) !== i)).toEqual([]);
  });

  it.each(forms)("%s has a formula that parses and a molar mass", (_, __, form) => {
    const { molarMassGPerMol, boundGPerMol } = molarMass(form.formula);
    expect(molarMassGPerMol).toBeGreaterThan(10);
    expect(boundGPerMol).toBeLessThan(molarMassGPerMol / 500);
  });

  it.each(forms)("%s has a CAS number whose check digit is right", (_, __, { cas }) => {
    if (cas === undefined) return;
    const digits = cas.replace(/-/g, "");
    const sum = [...digits.slice(0, -1)]
      .reverse()
      .reduce((total, digit, i) => total + (i + 1) * Number(digit), 0);
    expect(sum % 10).toBe(Number(digits.at(-1)));
  });

  it.each(forms)("%s differs from its sister forms by water or a named reason", (_, each, form) => {
    const dry = (formula: string) =>
      parseChemicalFormula(formula)
        .parts.filter((part) => part.formula !== "H2O")
        .map((part) => `${part.multiplier}${part.formula}`)
        .join(".");
    const first = each.forms[0];
    if (!first) throw new Error("no form");
    const same = dry(first.formula) === dry(form.formula);
    expect(same || each.note !== undefined).toBe(true);
  });

  it.each(chemicals.map((each) => [each.name, each] as const))(
    "%s has hazard codes that have a text",
    (_, each) => {
      for (const code of each.hazards.statements) expect(hazardStatement(code)).toBeTruthy();
      const dangerous = each.hazards.statements.length > 0;
      if (!dangerous) expect(each.hazards.signalWord).toBe("none");
    },
  );

  it.each(chemicals.filter((each) => each.dissolves).map((each) => [each.name, each] as const))(
    "%s dissolves into ions that its formula can supply",
    (_, each) => {
      const { ions } = each.dissolves ?? { ions: {} };
      const atoms = parseChemicalFormula(each.forms[0]?.formula ?? "").atoms;
      for (const [ion, count] of Object.entries(ions)) {
        expect(Math.abs(charge(ion))).toBeGreaterThan(0);
        const element = /^(Na|K|Br|Cl|I)[+-]$/.exec(ion)?.[1];
        if (element) expect(atoms[element]).toBe(count);
      }
    },
  );

  it("has solubility tables that rise in temperature and lie below 100 %", () => {
    for (const { solubility: table } of chemicals) {
      const values = table?.values ?? [];
      const temperatures = values.map(({ temperatureC }) => temperatureC);
      expect([...temperatures].sort((a, b) => a - b)).toEqual(temperatures);
      for (const { massPercent } of values) {
        expect(massPercent).toBeGreaterThan(0);
        expect(massPercent).toBeLessThan(100);
      }
      if (table) expect(table.source && table.howObtained).toBeTruthy();
    }
  });
});

describe("chemicalInForm", () => {
  it.each([
    ["sodium carbonate monohydrate", undefined, "Na2CO3.H2O"],
    ["Sodium Carbonate, Anhydrous", undefined, "Na2CO3"],
    ["sodium-carbonate", "decahydrate", "Na2CO3.10H2O"],
    ["sodium sulphite", undefined, "Na2SO3"],
    ["sodium sulfite crystals", undefined, "Na2SO3.7H2O"],
    ["hypo", undefined, "Na2S2O3.5H2O"],
    ["borax", "pentahydrate", "Na2B4O7.5H2O"],
    ["acetic acid 28%", undefined, "CH3COOH"],
    ["acetic acid, 28 %", undefined, "CH3COOH"],
    ["sodium carbonate", "Na2CO3.7H2O", "Na2CO3.7H2O"],
    ["EDTA", undefined, "C10H16N2O8"],
  ])("finds %s (%s)", (name, form, formula) => {
    expect(chemicalInForm(name, form).form.formula).toBe(formula);
  });

  it.each([
    ["glacial acetic acid", "acetic acid, glacial"],
    ["28% acetic acid", "acetic acid, 28 %"],
    ["anhydrous sodium sulfite", "sodium sulfite, anhydrous"],
    ["soda ash", "sodium carbonate, anhydrous"],
    ["washing soda", "sodium carbonate, decahydrate"],
    ["baking soda", "sodium bicarbonate"],
  ])("finds %s as it stands on the jar", (name, label) => {
    expect(chemicalInForm(name).label).toBe(label);
  });
  it("does not offer another hydrate of a liquid", () => {
    expect(() => chemicalInForm("acetic acid 80 %")).toThrow("acidToStrength");
    expect(() => chemicalInForm("sodium carbonate heptahydrate")).toThrow('"Na2CO3.3H2O"');
  });
  it("tells sulfite from sulfate from bisulfite", () => {
    const ids = ["sodium sulfite", "sodium sulfate", "sodium bisulfite", "sodium bisulfate"].map(
      (name) => chemicalInForm(name).chemical.id,
    );
    expect(new Set(ids).size).toBe(4);
  });

  it("gives the fraction that is not water", () => {
    expect(chemicalInForm("hypo").anhydrousFraction).toBeCloseTo(158.0965 / 248.1715, 6);
    expect(chemicalInForm("acetic acid 28 %").anhydrousFraction).toBe(0.28);
  });

  it.each([
    ["", undefined, "write a name"],
    ["sodium sulfitte", undefined, 'did you mean "sodium sulfite"'],
    ["unobtainium", undefined, "the list is `chemicals`"],
    ["sodium carbonate", "trihydrate", 'write one of "anhydrous", "monohydrate", "decahydrate"'],
    ["sodium carbonate", "monohidrate", 'did you mean "monohydrate"'],
    ["sodium carbonate", "K2CO3.H2O", "write one of"],
    ["sodium carbonate trihydrate", undefined, 'such as "Na2CO3.3H2O"'],
    ["sodium carbonate", "Na2CO3.xH2O", "not an element"],
  ])("refuses %s (%s)", (name, form, message) => {
    expect(() => chemicalInForm(name, form)).toThrow(message);
  });
});

describe("hazards", () => {
  it("put the strong ones under danger and say where the classes come from", () => {
    const lye = chemicalHazards("sodium hydroxide");
    expect(lye.signalWord).toBe("danger");
    expect(lye.source).toContain("safety data sheet");
  });

  it("of 28 % acetic acid are not those of glacial, which burns", () => {
    const codes = (form: string) =>
      chemicalHazards("acetic acid", form).statements.map(({ code }) => code);
    expect(codes("glacial")).toContain("H226");
    expect(codes("28 %")).toEqual(["H314"]);
  });

  it("do not call a chemical safe for want of a class", () => {
    expect(chemicalHazards("sodium sulfite").cautions.join(" ")).toContain("not a proof of safety");
    expect(chemicalHazards("potassium ferricyanide").cautions[0]).toContain("toxic gas");
  });

  it("refuses an unknown code", () => {
    expect(() => hazardStatement("H999")).toThrow("write one of");
  });
});

describe("solubility", () => {
  it("interpolates, and reports per 100 g of water", () => {
    // CRC 98th ed.: sodium carbonate 17.9 % at 20 °C and 23.5 % at 25 °C.
    expect(solubility("sodium carbonate", 20)?.gPer100gWater).toBeCloseTo(1790 / 82.1, 10);
    expect(solubility("sodium carbonate", 22.5)?.gPer100gWater).toBeCloseTo(2070 / 79.3, 10);
  });

  it("is null where the registry has none, and for liquids", () => {
    expect(solubility("phenidone", 20)).toBeNull();
    expect(solubility("acetic acid", 20)).toBeNull();
  });

  it("refuses a temperature outside the table", () => {
    expect(() => solubility("sodium sulfite", 120)).toThrow("from 0 to 100 °C");
    expect(() => solubility("benzotriazole", 60)).toThrow("within 10 °C of 20");
    expect(() => solubility("sodium sulfite", Number.NaN)).toThrow("temperatureC is NaN");
  });
});
