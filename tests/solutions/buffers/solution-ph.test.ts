import { describe, expect, it } from "vitest";
import {
  acidPk,
  bathFormula,
  bufferCapacity,
  bufferPh,
  chemicals,
  daviesActivityCoefficient,
  mixSolutions,
  pureWater,
  type SolutionComposition,
  solutionComposition,
  solutionPh,
  waterPkw,
  weakAcids,
} from "wetside/solutions";

const solution = (
  ions: Readonly<Record<string, number>>,
  acids: Readonly<Record<string, number>> = {},
): SolutionComposition => ({ ions, acids, notCounted: [] });

const CLOSE = 1e-3; // pH; closed forms that leave activities out are compared at low strength

describe("solutionPh", () => {
  it("of pure water is half of pKw, at every temperature", () => {
    for (const temperatureC of [0, 25, 60]) {
      const { pH } = solutionPh(pureWater, { temperatureC });
      expect(pH).toBeCloseTo(waterPkw(temperatureC) / 2, 3);
    }
  });

  it("of dilute strong acid and base is their concentration", () => {
    expect(Math.abs(solutionPh(solution({ "Cl-": 1e-5 })).pH - 5)).toBeLessThan(0.002);
    expect(Math.abs(solutionPh(solution({ "Na+": 1e-5 })).pH - (waterPkw(25) - 5))).toBeLessThan(
      0.002,
    );
  });

  it("of a strong acid so dilute that water counts stays below 7", () => {
    // x² + c x − Kw = 0 for the hydroxide: [H⁺] = c/2 + √(c²/4 + Kw) with c = 1e-8.
    const kw = 10 ** -waterPkw(25);
    const expected = -Math.log10(5e-9 + Math.sqrt(2.5e-17 + kw));
    expect(Math.abs(solutionPh(solution({ "Cl-": 1e-8 })).pH - expected)).toBeLessThan(CLOSE);
  });

  it("of a weak acid alone follows the quadratic, with the activity of its few ions", () => {
    const c = 1e-4;
    const k = 10 ** -4.756;
    const h = (-k + Math.sqrt(k * k + 4 * k * c)) / 2;
    expect(Math.abs(solutionPh(solution({}, { acetic: c })).pH + Math.log10(h))).toBeLessThan(
      0.005,
    );
  });

  it("counts the sulfuric acid of metol and the second proton of bisulfate", () => {
    const alone = solutionPh([{ chemical: "metol", gPerL: 7.5 }]).pH;
    expect(alone).toBeGreaterThan(3);
    expect(alone).toBeLessThan(4.5);
    const { pH } = solutionPh([{ chemical: "sodium bisulfate", gPerL: 1.2006 }]); // 0.01 mol/L
    const k = 10 ** -1.987;
    const h = (-k + Math.sqrt(k * k + 0.04 * k)) / 2;
    expect(Math.abs(pH + Math.log10(h))).toBeLessThan(0.06); // without activities
  });

  it("leaves a residual of rounding only, for every formula of the library", () => {
    for (const id of ["metol-hydroquinone-borax-developer", "rapid-fixer", "citric-stop-bath"]) {
      const { chargeResidualMolPerL, ionicStrengthMolPerL } = solutionPh(bathFormula(id));
      expect(Math.abs(chargeResidualMolPerL)).toBeLessThan(1e-12 * (1 + ionicStrengthMolPerL));
    }
  });

  it("puts developers, stops and fixers where a test paper finds them", () => {
    // Common practice, no source: what such baths read on a meter, to half a unit.
    const at = (id: string) => solutionPh(bathFormula(id), { temperatureC: 20 }).pH;
    expect(Math.abs(at("metol-hydroquinone-borax-developer") - 8.6)).toBeLessThan(0.5);
    expect(Math.abs(at("metol-sulfite-developer") - 7.8)).toBeLessThan(0.5);
    expect(Math.abs(at("print-developer") - 10.4)).toBeLessThan(0.5);
    expect(Math.abs(at("acid-hardening-fixer") - 4.4)).toBeLessThan(0.5);
    expect(Math.abs(at("acetic-stop-bath") - 2.7)).toBeLessThan(0.5);
    expect(Math.abs(at("sulfite-wash-aid") - 7)).toBeLessThan(0.5);
  });

  it("says where the model ends", () => {
    const strong = solutionPh(bathFormula("metol-sulfite-developer"));
    expect(strong.warnings.join(" ")).toContain("above 0.5");
    expect(solutionPh(bathFormula("acid-hardening-fixer")).warnings.join(" ")).toContain(
      "aluminium",
    );
    expect(solutionPh(solution({ "Na+": 0.1 }, { boric: 0.2 })).warnings.join(" ")).toContain(
      "polyborates",
    );
    expect(solutionPh(solution({ "Cl-": 0.1 }, { sulfurous: 0.1 })).warnings.join(" ")).toContain(
      "sulfur dioxide",
    );
    const phenidone = solutionPh([{ chemical: "phenidone", gPerL: 0.2 }]);
    expect(phenidone.warnings.join(" ")).toContain("not counted, for want of constants: phenidone");
    expect(solutionPh(solution({ "Na+": 0.05 }, { acetic: 0.1 })).warnings).toEqual([]);
  });

  it.each([
    [solution({ Na: 1 }), {}, 'write the charge at the end of the name, as in "Na+"'],
    [solution({ "Na+": -1 }), {}, 'ions["Na+"] is -1'],
    [solution({}, { acetik: 1 }), {}, 'did you mean "acetic"'],
    [solution({}, { acetic: Number.NaN }), {}, "NaN"],
    [pureWater, { temperatureC: 90 }, "at most 75"],
    [[{ chemical: "borax", gPerL: -1 }], {}, "greater than 0"],
    [[{ chemical: "boraxx", gPerL: 1 }], {}, 'did you mean "borax"'],
    [null, {}, "write a formula"],
  ])("refuses %o", (source, options, message) => {
    expect(() => solutionPh(source as never, options)).toThrow(message);
  });
});

describe("solutionComposition and mixSolutions", () => {
  it("count ions and acids per formula unit", () => {
    const { ions, acids } = solutionComposition([
      { chemical: "sodium metabisulfite", gPerL: 190.0955 },
    ]);
    expect(ions["Na+"]).toBeCloseTo(2, 3);
    expect(acids.sulfurous).toBeCloseTo(2, 3);
  });

  it("do not care for the water of crystallisation", () => {
    const wet = solutionComposition([
      { chemical: "sodium carbonate", form: "monohydrate", gPerL: 124.0025 },
    ]);
    const dry = solutionComposition([
      { chemical: "sodium carbonate", form: "anhydrous", gPerL: 105.9875 },
    ]);
    expect(wet.ions["Na+"]).toBeCloseTo(dry.ions["Na+"] ?? 0, 5);
  });

  it("conserve what they mix", () => {
    const mixed = mixSolutions(solution({ "Na+": 1 }, { acetic: 2 }), solution({ "K+": 3 }), 0.25);
    expect(mixed).toEqual(solution({ "Na+": 0.75, "K+": 0.75 }, { acetic: 1.5 }));
    expect(() => mixSolutions(pureWater, pureWater, 1.5)).toThrow("at most 1");
  });

  it("every chemical names acids that exist", () => {
    const known = weakAcids.map(({ id }) => id);
    for (const each of chemicals) {
      for (const acid of Object.keys(each.dissolves?.acids ?? {})) expect(known).toContain(acid);
    }
  });

  it("every solid salt of the registry is neutral or weakly so: protons balance its ions", () => {
    // A wrong ion count would leave molar amounts of strong acid or base in a salt.
    for (const each of chemicals.filter(({ role }) => /salt|fixing|restrainer|halide/.test(role))) {
      const form = each.forms.find(({ massFraction }) => massFraction === undefined);
      if (!each.dissolves || !form) continue;
      const { pH } = solutionPh([{ chemical: each.name, form: form.id, gPerL: 1 }]);
      expect(pH, each.name).toBeGreaterThan(4);
      expect(pH, each.name).toBeLessThan(10);
    }
  });
});

describe("bufferPh", () => {
  it("is pK for equal parts at vanishing strength, for every step of every acid", () => {
    for (const { id, steps, chargeOfAcid } of weakAcids) {
      steps.forEach(({ pK }, i) => {
        const neighbours = steps.filter((_, j) => Math.abs(i - j) === 1).map((each) => each.pK);
        const apart = neighbours.every((other) => Math.abs(other - pK) > 4);
        if (!apart || pK < 4 || pK > 10) return; // protons and hydroxide count beyond these
        const half = { acid: id, step: i + 1, acidMolPerL: 0.002, saltMolPerL: 0.002 };
        const { pH, ionicStrengthMolPerL } = bufferPh(half);
        // Debye–Hückel: pH − pK ≈ A (2z − 1) √I, with z the charge of the acid form.
        const shift = 0.52 * Math.abs(2 * (chargeOfAcid - i) - 1) * Math.sqrt(ionicStrengthMolPerL);
        expect(Math.abs(pH - pK), `${id} ${i + 1}`).toBeLessThan(shift + 0.02);
      });
    }
  });

  it("refuses more than any solution holds", () => {
    expect(() => bufferPh({ acid: "acetic", acidMolPerL: 1e300, saltMolPerL: 1 })).toThrow(
      "30 mol",
    );
  });
  it("rises with the salt and falls with the acid", () => {
    const at = (acidMolPerL: number, saltMolPerL: number) =>
      bufferPh({ acid: "acetic", acidMolPerL, saltMolPerL }).pH;
    expect(at(0.1, 0.2)).toBeGreaterThan(at(0.1, 0.1));
    expect(at(0.2, 0.1)).toBeLessThan(at(0.1, 0.1));
  });

  it.each([
    [{ acid: "acetic", acidMolPerL: 0, saltMolPerL: 0 }, "greater than 0"],
    [{ acid: "acetic", acidMolPerL: -1, saltMolPerL: 2 }, "acidMolPerL is -1"],
    [{ acid: "acetic", acidMolPerL: 1, saltMolPerL: 1, step: 2 }, "at most 1"],
    [{ acid: "acid", acidMolPerL: 1, saltMolPerL: 1 }, "write one of"],
  ])("refuses %o", (mixture, message) => {
    expect(() => bufferPh(mixture)).toThrow(message);
  });
});

describe("constants", () => {
  it("of an acid move with temperature as van 't Hoff says", () => {
    const [cold = 0] = acidPk("ammonium", 20);
    const [warm = 0] = acidPk("ammonium", 30);
    const slope = (warm - cold) / 10;
    expect(slope).toBeCloseTo(-51_950 / (8.314462618 * Math.LN10 * 298.15 ** 2), 4);
    expect(acidPk("acetic")).toEqual([4.756]);
  });

  it("are 1 for molecules and fall with the square of the charge", () => {
    expect(daviesActivityCoefficient(0, 0.3)).toBe(1);
    const one = Math.log(daviesActivityCoefficient(-1, 0.1));
    expect(Math.log(daviesActivityCoefficient(2, 0.1)) / one).toBeCloseTo(4, 12);
    expect(() => daviesActivityCoefficient(1, -0.1)).toThrow("at least 0");
    expect(() => daviesActivityCoefficient(0.5, 0.1)).toThrow("whole number");
  });

  it("buffer capacity is at its greatest where acid and salt are equal", () => {
    const at = (salt: number) => bufferCapacity(solution({ "Na+": salt }, { acetic: 0.1 }));
    expect(at(0.05)).toBeGreaterThan(at(0.03));
    expect(at(0.05)).toBeGreaterThan(at(0.07));
    expect(at(0.05)).toBeCloseTo((Math.LN10 * 0.1) / 4, 2);
  });
});
