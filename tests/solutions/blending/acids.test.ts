import { describe, expect, it } from "vitest";
import {
  acidSheet,
  acidToStrength,
  blendByMass,
  densityModels,
  densityTables,
  massPercentFromDensity,
  solutionDensity,
  waterDensityGPerMl,
} from "wetside/solutions";

const acetic = (massPercent: number, temperatureC = 20) =>
  solutionDensity({ substance: "acetic acid", massPercent, temperatureC }).densityGPerMl;

describe("the density tables", () => {
  it("rise in strength, start at water, and carry their source", () => {
    for (const { id, massPercent, densityGPerMl, source, howObtained } of densityTables) {
      expect(massPercent.length, id).toBe(densityGPerMl.length);
      expect(massPercent[0], id).toBe(0);
      expect(densityGPerMl[0], id).toBe(0.9982);
      massPercent.forEach((w, i) => {
        expect(w - (massPercent[i - 1] ?? -1), id).toBeGreaterThan(0);
      });
      // A wrong digit would stand out as a jump between neighbours, per cent by per cent.
      densityGPerMl.forEach((density, i) => {
        const step = (massPercent[i] ?? 0) - (massPercent[i - 1] ?? 0);
        const rise = Math.abs(density - (densityGPerMl[i - 1] ?? density));
        expect(rise, `${id} at ${massPercent[i]} %`).toBeLessThan(0.0125 * Math.max(step, 0.5));
      });
      expect(source.length * howObtained.length, id).toBeGreaterThan(0);
    }
  });
  it("join the models without a step at 20 °C", () => {
    for (const { id } of densityTables) {
      for (const massPercent of [0, 1, 10, 29.9]) {
        const beside = solutionDensity({ substance: id, massPercent, temperatureC: 20.000001 });
        const at = solutionDensity({ substance: id, massPercent }).densityGPerMl;
        expect(beside.densityGPerMl / at, id).toBeCloseTo(1, 7);
      }
    }
  });
});

describe("solutionDensity", () => {
  it("is water's at no strength", () => {
    expect(acetic(0)).toBeCloseTo(waterDensityGPerMl(20), 4);
    for (const { id } of densityModels) {
      const water = solutionDensity({ substance: id, massPercent: 0, temperatureC: 30 });
      expect(water.densityGPerMl, id).toBeCloseTo(waterDensityGPerMl(30), 4);
    }
  });
  it("rises and falls: acetic acid is heaviest near 78 %", () => {
    expect(acetic(78)).toBeGreaterThan(acetic(60));
    expect(acetic(78)).toBeGreaterThan(acetic(95));
    expect(acetic(90)).toBeGreaterThan(acetic(99));
  });
  it("falls when the solution is warmed", () => {
    for (const substance of ["acetic acid", "sodium thiosulfate", "ammonia", "sulfuric acid"]) {
      const at = (temperatureC: number) =>
        solutionDensity({ substance, massPercent: 10, temperatureC }).densityGPerMl;
      expect(at(30), substance).toBeLessThan(at(20));
      expect(at(38), substance).toBeLessThan(at(30));
    }
  });
  it("warns outside the temperatures of its data and says what it assumes", () => {
    const cold = { substance: "sodium thiosulfate", massPercent: 10, temperatureC: 18 };
    expect(solutionDensity(cold).warnings[0]).toContain("25 to 80 °C");
    const ammonia = solutionDensity({ substance: "ammonia", massPercent: 10, temperatureC: 25 });
    expect(ammonia.assumptions[0]).toContain("expands");
  });
  it("refuses a substance, a strength or a temperature beyond the data", () => {
    const of = (change: object) => () =>
      solutionDensity({ substance: "acetic acid", massPercent: 10, ...change });
    expect(of({ substance: "acetic acids" })).toThrow('did you mean "acetic acid"');
    expect(of({ massPercent: 100.1 })).toThrow("at most 100");
    expect(of({ substance: "sodium sulfite", massPercent: 21 })).toThrow("at most 20");
    expect(of({ temperatureC: 99 })).toThrow("temperatureC");
  });
});

describe("massPercentFromDensity", () => {
  it("undoes solutionDensity", () => {
    for (const substance of ["sodium thiosulfate", "sodium hydroxide", "citric acid"]) {
      for (const massPercent of [0.5, 3, 12, 19]) {
        const { densityGPerMl } = solutionDensity({ substance, massPercent, temperatureC: 27 });
        const back = massPercentFromDensity({ substance, densityGPerMl, temperatureC: 27 });
        expect(back).toBeCloseTo(massPercent, 6);
      }
    }
  });
  it("names every strength that is as heavy, and takes the one said to be meant", () => {
    const heavy = { substance: "acetic acid", densityGPerMl: 1.0668 };
    expect(() => massPercentFromDensity(heavy)).toThrow("68.0 % or 85.5 %");
    expect(massPercentFromDensity({ ...heavy, between: [0, 75] })).toBeCloseTo(68, 6);
    expect(massPercentFromDensity({ ...heavy, between: [80, 100] })).toBeCloseTo(85.5, 1);
  });
  it("refuses a density that no strength has", () => {
    const light = { substance: "acetic acid", densityGPerMl: 0.9 };
    expect(() => massPercentFromDensity(light)).toThrow("write a density from 0.9982 to 1.0681");
  });
});

describe("blendByMass", () => {
  it("keeps the mass of solution and of acid, and loses volume", () => {
    const mix = blendByMass({
      substance: "acetic acid",
      portions: [
        { massPercent: 99.5, volumeMl: 300 },
        { massPercent: 0, volumeMl: 800 },
      ],
    });
    expect(mix.massG).toBeCloseTo(300 * acetic(99.5) + 800 * acetic(0), 9);
    expect(mix.volumeMl * mix.densityGPerMl).toBeCloseTo(mix.massG, 9);
    expect(mix.contractionMl / mix.portionsMl).toBeGreaterThan(0.01);
    expect(mix.cautions[0]).toContain("acid into water");
  });
  it("shows how far a strong salt concentrate is from additive: about 1 % at 1+4", () => {
    const portions = [
      { massPercent: 45, volumeMl: 200 },
      { massPercent: 0, volumeMl: 800 },
    ];
    const mix = blendByMass({ substance: "sodium thiosulfate", portions });
    expect(mix.contractionMl).toBeGreaterThan(8);
    expect(mix.contractionMl).toBeLessThan(14);
  });
  it("changes nothing for a single portion or for two of the same", () => {
    const one = blendByMass({
      substance: "acetic acid",
      portions: [{ massPercent: 28, massG: 50 }],
    });
    expect(one.massPercent).toBe(28);
    expect(one.contractionMl).toBeCloseTo(0, 10);
    const strongest = { substance: "citric acid", portions: [{ massPercent: 30, massG: 7 }] };
    expect(blendByMass(strongest).massPercent).toBe(30);
    const portions = [
      { massPercent: 28, massG: 50 },
      { massPercent: 28, volumeMl: 10 },
    ];
    expect(blendByMass({ substance: "acetic acid", portions }).contractionMl).toBeCloseTo(0, 10);
  });
  it("refuses a portion with no amount, with two, or with a negative one", () => {
    const blend = (portion: object) => () =>
      blendByMass({ substance: "acetic acid", portions: [{ massPercent: 28, ...portion }] });
    expect(blend({})).toThrow("either massG or volumeMl");
    expect(blend({ massG: 1, volumeMl: 1 })).toThrow("either massG or volumeMl");
    expect(blend({ massG: -1 })).toThrow("portions[0].massG");
    expect(blend({ massG: 0 })).toThrow("total mass");
    expect(() => blendByMass({ substance: "acetic acid", portions: [] })).toThrow("at least one");
  });
});

describe("acidToStrength", () => {
  const wanted = {
    substance: "acetic acid",
    strongPercent: 99.5,
    targetPercent: 28,
    totalMl: 1000,
  };
  it("agrees with pouring its own volumes together", () => {
    const mix = acidToStrength(wanted);
    const poured = blendByMass({
      substance: "acetic acid",
      portions: [
        { massPercent: 99.5, volumeMl: mix.strongMl },
        { massPercent: 0, volumeMl: mix.weakMl },
      ],
    });
    expect(poured.massPercent).toBeCloseTo(28, 9);
    expect(poured.volumeMl).toBeCloseTo(1000, 6);
    expect(poured.contractionMl).toBeCloseTo(mix.contractionMl, 6);
  });
  it("finds the handbook's three parts to eight by itself", () => {
    expect(acidToStrength(wanted).volumeRule).toBe("3+8");
    expect(acidToStrength(wanted).volumeRulePercent).toBeCloseTo(28.1, 1);
  });
  it("writes one part to many where small whole parts would be far off", () => {
    const given = { substance: "acetic acid", totalMl: 1000 };
    const stop = acidToStrength({ ...given, strongPercent: 28, targetPercent: 1.4 });
    expect(stop.volumeRule).toBe("1+20");
    expect(stop.volumeRulePercent).toBeCloseTo(1.4, 1);
    for (const targetPercent of [0.01, 0.5, 3, 27, 27.99]) {
      const mix = acidToStrength({ ...given, strongPercent: 28, targetPercent });
      expect(Math.abs(mix.volumeRulePercent / targetPercent - 1)).toBeLessThan(0.05);
    }
  });
  it("blends with a weaker acid as well as with water", () => {
    const mix = acidToStrength({ ...wanted, weakPercent: 5 });
    const acidG = mix.strongG * 0.995 + mix.weakG * 0.05;
    expect(acidG / mix.totalG).toBeCloseTo(0.28, 12);
  });
  it("says acid into water, and flammable for glacial acid", () => {
    const said = acidToStrength(wanted).cautions.join("\n");
    expect(said).toMatch(/acid into water[\s\S]*flammable/);
  });
  it("says so where per cent were given as fractions", () => {
    const wanted = { substance: "acetic acid", totalMl: 1000 };
    const asFractions = acidToStrength({ ...wanted, strongPercent: 0.995, targetPercent: 0.28 });
    expect(asFractions.warnings.join()).toContain("0.995 is 0.995 %, not 99.5 %");
    const asPercent = acidToStrength({ ...wanted, strongPercent: 99.5, targetPercent: 28 });
    expect(asPercent.warnings).toEqual([]);
  });
  it("knows a substance however it is spelled", () => {
    const wanted = { strongPercent: 96, targetPercent: 10, totalMl: 1000 };
    const plain = acidToStrength({ ...wanted, substance: "sulfuric acid" });
    expect(acidToStrength({ ...wanted, substance: "Sulphuric-Acid" })).toMatchObject({
      strongMl: plain.strongMl,
    });
  });
  it("refuses a target outside the two strengths", () => {
    expect(() => acidToStrength({ ...wanted, targetPercent: 99.6 })).toThrow("between");
    expect(() => acidToStrength({ ...wanted, targetPercent: 0 })).toThrow("between");
    expect(() => acidToStrength({ ...wanted, weakPercent: 30 })).toThrow("targetPercent");
    expect(() => acidToStrength({ ...wanted, weakPercent: 99.5 })).toThrow("weakPercent");
  });
});

describe("acidSheet", () => {
  const wanted = { title: "28 % acid", substance: "acetic acid", totalMl: 2000 };
  const acetic28 = { ...wanted, strongPercent: 99.5, targetPercent: 28 };

  it("pours water first and acid into it, and sums to the volume and its contraction", () => {
    const sheet = acidSheet({ ...acetic28, strongName: "glacial acetic acid" });
    expect(sheet.steps.map(({ what }) => what)).toEqual([
      "water, cold",
      "glacial acetic acid",
      "water to make the final volume",
    ]);
    const poured = sheet.steps.reduce((sum, { amount }) => sum + amount, 0);
    const { contractionMl } = acidToStrength(acetic28);
    expect(Math.abs(poured - 2000 - contractionMl)).toBeLessThan(1); // each step to a whole mL
    expect(sheet.steps[1]?.note).toContain("never the other way round");
  });
  it("bears the label of what is poured and of what is made", () => {
    const cautions = acidSheet(acetic28).cautions.join("\n");
    expect(cautions).toMatch(/as poured: danger. Flammable liquid and vapour \(H226\)/);
    expect(cautions).toMatch(/28 % acid, as made: danger. Causes severe skin burns/);
    const weak = acidSheet({ ...wanted, title: "stop", strongPercent: 28, targetPercent: 1.4 });
    expect(weak.cautions.at(-1)).toContain("stop, as made: no hazard class by calculation");
  });
  it("says how far the graduate rounds, and warns where that is much", () => {
    const coarse = acidSheet({ ...acetic28, totalMl: 100, graduateDivisionMl: 10 });
    expect(coarse.steps[1]).toMatchObject({ amount: 30 });
    expect(coarse.steps[1]?.note).toContain("rounded +8.1 %");
    expect(coarse.warnings[0]).toContain("small for this graduate");
    expect(acidSheet(acetic28).warnings).toEqual([]);
  });
  it("makes a sheet of a substance that the registry lacks, without a label", () => {
    const sheet = acidSheet({
      ...wanted,
      substance: "hydrochloric acid",
      strongPercent: 36,
      targetPercent: 10,
    });
    expect(sheet.cautions.join()).not.toContain("as made");
  });
  it("refuses what acidToStrength refuses, and a graduate without steps", () => {
    expect(() => acidSheet({ ...acetic28, targetPercent: 99.6 })).toThrow("targetPercent");
    expect(() => acidSheet({ ...acetic28, graduateDivisionMl: 0 })).toThrow("graduateDivisionMl");
    const coarse = { ...acetic28, totalMl: 100, graduateDivisionMl: 100 };
    expect(() => acidSheet(coarse)).toThrow("less than half a step");
  });
});

describe("waterDensityGPerMl", () => {
  it("is greatest near 4 °C", () => {
    expect(waterDensityGPerMl(4)).toBeGreaterThan(waterDensityGPerMl(3));
    expect(waterDensityGPerMl(4)).toBeGreaterThan(waterDensityGPerMl(5));
  });
  it("refuses ice and steam", () => {
    expect(() => waterDensityGPerMl(-0.1)).toThrow("at least 0 °C");
    expect(() => waterDensityGPerMl(100.1)).toThrow("at most 100 °C");
  });
});
