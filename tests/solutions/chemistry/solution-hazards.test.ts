import { describe, expect, it } from "vitest";
import {
  bathFormula,
  bathHazards,
  chemicals,
  hazardLimits,
  hazardStatement,
  parseBathFormula,
  scaleFormula,
  solutionHazards,
} from "wetside/solutions";

const codes = (chemical: string, massPercent: number) =>
  solutionHazards([{ chemical, massPercent }]).statements.map(({ code }) => code);

describe("the hazard limits", () => {
  it("give only codes that have a text, and take up every code of the registry", () => {
    const given = [...hazardLimits.general, ...hazardLimits.summed, ...hazardLimits.specific];
    for (const { code } of given) expect(hazardStatement(code)).toBeTruthy();
    const taken = new Set([
      ...hazardLimits.general.flatMap(({ of }) => of),
      ...hazardLimits.summed.flatMap(({ terms }) => terms.map(({ of }) => of)),
      ...hazardLimits.byTest,
    ]);
    const known = chemicals.flatMap(({ hazards }) => hazards.statements);
    expect(known.filter((code) => !taken.has(code))).toEqual([]);
  });
  it("name only chemicals of the registry for their own limits", () => {
    const ids = chemicals.map(({ id }) => id);
    for (const { chemical } of hazardLimits.specific) expect(ids).toContain(chemical);
  });
});

describe("solutionHazards", () => {
  it.each([
    // Annex VI of Regulation (EC) 1272/2008: 25 % read in a copy, the others from memory.
    ["acetic acid", 25, ["H314"]],
    ["acetic acid", 24.9, ["H315", "H319"]],
    ["acetic acid", 9.9, []],
    ["sulfuric acid", 15, ["H314"]],
    ["sulfuric acid", 5, ["H315", "H319"]],
    ["sodium hydroxide", 2, ["H314"]],
    ["sodium hydroxide", 0.5, ["H315", "H319"]],
    ["sodium hydroxide", 0.49, []],
    // Table 3.7.2, read in a copy: 0.3 % for category 1.
    ["boric acid", 0.3, ["H360FD"]],
    ["boric acid", 0.29, []],
    // 5 % corrosive is not a limit for what only irritates: 10 % (table 3.3.3).
    ["sodium carbonate", 10, ["H319"]],
    ["sodium carbonate", 9.9, []],
    ["metol", 100, ["H302", "H317", "H373", "H410"]],
  ])("of %s at %d %%: %j", (chemical, percent, expected) => {
    expect(codes(chemical, percent)).toEqual(expected);
  });

  it("weighs ten parts of an irritant as one that harms: 10 × 0.5 + 5 = 10", () => {
    const mixed = (carbonate: number) =>
      solutionHazards([
        { chemical: "hydroquinone", massPercent: 0.5 },
        { chemical: "sodium carbonate", massPercent: carbonate },
      ]).statements;
    expect(mixed(5)).toMatchObject([{ code: "H319", from: ["hydroquinone", "sodium carbonate"] }]);
    expect(mixed(4.9)).toEqual([]);
  });

  it("says no class, and that this is no proof of safety", () => {
    const weak = solutionHazards([{ chemical: "metol", massPercent: 0.2 }]);
    expect(weak).toMatchObject({ signalWord: "none", statements: [] });
    expect(weak.cautions.join()).toMatch(/Holds metol[\s\S]*not a proof of safety/);
    expect(weak.source).toContain("from memory");
  });

  it("never loses a hazard by adding strength", () => {
    const strength = (list: readonly string[]) => ({
      burns: list.includes("H314") ? 2 : list.includes("H315") ? 1 : 0,
      water: ["H412", "H411", "H410"].findIndex((code) => list.includes(code)),
      cancer: list.includes("H350") ? 2 : list.includes("H351") ? 1 : 0,
    });
    for (const { name } of chemicals) {
      const steps = [0, 0.1, 0.3, 1, 2.5, 5, 10, 25, 50, 100].map((each) =>
        strength(codes(name, each)),
      );
      steps.slice(1).forEach((step, i) => {
        expect(step.burns, name).toBeGreaterThanOrEqual(steps[i]?.burns ?? 0);
        expect(step.water, name).toBeGreaterThanOrEqual(steps[i]?.water ?? -1);
        expect(step.cancer, name).toBeGreaterThanOrEqual(steps[i]?.cancer ?? 0);
      });
    }
  });

  it("gives the pure chemical its own label again, save what is found by test", () => {
    for (const { name, hazards } of chemicals) {
      const covered = new Set(
        hazards.statements.flatMap((code) => hazardLimits.covers[code] ?? []),
      );
      const own = hazards.statements.filter(
        (code) => !hazardLimits.byTest.includes(code) && !covered.has(code),
      );
      expect(codes(name, 100), name).toEqual(own.toSorted());
    }
  });

  it("refuses nothing, more than there can be, and what is not in the registry", () => {
    expect(() => solutionHazards([])).toThrow("write a list");
    expect(() => codes("metol", 101)).toThrow("at most 100");
    expect(() => codes("metol", Number.NaN)).toThrow("massPercent of metol");
    expect(() => codes("unobtainium", 1)).toThrow("registry");
    const both = [
      { chemical: "metol", massPercent: 60 },
      { chemical: "borax", massPercent: 60 },
    ];
    expect(() => solutionHazards(both)).toThrow("together are at most 100");
  });
});

describe("bathHazards", () => {
  const of = (id: string) => bathHazards(scaleFormula(bathFormula(id), 500));
  const codesOf = (id: string) => of(id).statements.map(({ code }) => code);

  it("finds no class in a stop bath, fertility in a hardening fixer, allergy in a print developer", () => {
    expect(codesOf("acetic-stop-bath")).toEqual([]);
    expect(codesOf("acid-hardening-fixer")).toEqual(["H360FD"]);
    expect(codesOf("print-developer")).toEqual(["H317", "H319", "H341", "H351", "H412"]);
    expect(of("print-developer").statements[1]?.from).toEqual(["hydroquinone", "sodium carbonate"]);
  });

  it("does not depend on the size of the batch", () => {
    const formula = bathFormula("print-developer");
    expect(bathHazards(scaleFormula(formula, 20))).toEqual(
      bathHazards(scaleFormula(formula, 9000)),
    );
  });

  it("names what it could not count", () => {
    const text = "metol 2 g\nsecret salt [KSCN] 5 g\nwater to 1 L";
    const { cautions } = bathHazards(scaleFormula(parseBathFormula(text), 1000));
    expect(cautions.join()).toContain("not counted: secret salt");
  });
});
