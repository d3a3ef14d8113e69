import { describe, expect, it } from "vitest";
import {
  areaToPhLimit,
  bathAfterCarryIn,
  bathFormula,
  bathPhAgainstArea,
  mixSolutions,
  pureWater,
  solutionComposition,
  solutionPh,
  stopBathCapacity,
} from "wetside/solutions";

const salt = { ions: { "Na+": 1, "Cl-": 1 }, acids: {}, notCounted: [] };
const tank = { bath: pureWater, bathVolumeMl: 1000, carriedIn: salt, carryInMlPerM2: 100 };
const stop = {
  bath: bathFormula("acetic-stop-bath"),
  bathVolumeMl: 1000,
  carriedIn: mixSolutions(pureWater, solutionComposition(bathFormula("print-developer")), 1 / 3),
  carryInMlPerM2: 70,
};
const LIMIT = 5.5;

describe("bathAfterCarryIn", () => {
  it("starts with the fresh bath", () => {
    expect(bathAfterCarryIn(tank, 0)).toMatchObject({ carriedInShare: 0, volumeMl: 1000 });
  });

  it("follows the exponential where as much is carried out as in", () => {
    expect(bathAfterCarryIn(tank, 5).carriedInShare).toBeCloseTo(1 - Math.exp(-0.5), 12);
  });

  it("agrees with a stepwise mass balance where it is not", () => {
    for (const carryOutMlPerM2 of [40, 150]) {
      let volume = 1000;
      let amount = 0;
      const steps = 200_000;
      const dA = 5 / steps;
      for (let i = 0; i < steps; i++) {
        amount += dA * (100 - (carryOutMlPerM2 * amount) / volume);
        volume += dA * (100 - carryOutMlPerM2);
      }
      const result = bathAfterCarryIn({ ...tank, carryOutMlPerM2 }, 5);
      expect(result.volumeMl).toBeCloseTo(volume, 6);
      expect(result.carriedInShare).toBeCloseTo(amount / volume, 5); // first-order steps
    }
  });

  it("is continuous where carry-out passes carry-in", () => {
    const share = (carryOutMlPerM2: number) =>
      bathAfterCarryIn({ ...tank, carryOutMlPerM2 }, 5).carriedInShare;
    expect(share(100 + 1e-7)).toBeCloseTo(share(100), 9);
    expect(share(100 - 1e-7)).toBeCloseTo(share(100), 9);
  });

  it("says when the tank is empty", () => {
    const bad = () => bathAfterCarryIn({ ...tank, carryOutMlPerM2: 300 }, 6);
    expect(bad).toThrow("empty after 5.00 m²");
  });

  it.each([
    [{ ...tank, bathVolumeMl: 0 }, 1, "bathVolumeMl is 0"],
    [{ ...tank, carryInMlPerM2: -1 }, 1, "carryInMlPerM2 is -1"],
    [tank, -1, "areaM2 is -1"],
    [tank, Number.NaN, "areaM2 is NaN"],
  ])("refuses bad numbers", (options, area, message) => {
    expect(() => bathAfterCarryIn(options, area)).toThrow(message);
  });
});

describe("a stop bath under alkaline developer", () => {
  it("rises steadily with the area", () => {
    const curve = bathPhAgainstArea(stop, [0, 1, 2, 3, 4, 5, 6]).map(({ pH }) => pH);
    expect([...curve].sort((a, b) => a - b)).toEqual(curve);
  });

  it("ends at the pH limit", () => {
    const { areaM2, carriedInShare } = areaToPhLimit(stop, LIMIT);
    const [end] = bathPhAgainstArea(stop, [areaM2 ?? Number.NaN]);
    expect(end?.pH).toBeCloseTo(LIMIT, 9);
    expect(end?.carriedInShare).toBe(carriedInShare);
  });

  it("takes area in proportion to its volume and against the carry-over", () => {
    const area = (change: object) => areaToPhLimit({ ...stop, ...change }, LIMIT).areaM2 ?? 0;
    expect(area({ bathVolumeMl: 3000 }) / area({})).toBeCloseTo(3, 9);
    expect(area({ carryInMlPerM2: 35 }) / area({})).toBeCloseTo(2, 9);
  });

  it("takes more if it is stronger, less under a stronger developer", () => {
    const area = (change: object) => areaToPhLimit({ ...stop, ...change }, LIMIT).areaM2 ?? 0;
    const strong = [{ chemical: "acetic acid", form: "28 %", mlPerL: 96 }];
    expect(area({ bath: strong })).toBeGreaterThan(1.5 * area({}));
    expect(area({ carriedIn: bathFormula("print-developer") })).toBeLessThan(area({}));
  });

  it("agrees with counting equivalents, roughly", () => {
    // At pH 5.5 acetate is 85 % neutralised; the alkali of the developer per mL does the rest.
    const acid = solutionComposition(stop.bath).acids.acetic ?? 0;
    const developer = solutionComposition(stop.carriedIn);
    const share = areaToPhLimit(stop, LIMIT).carriedInShare ?? 0;
    const alkali =
      (developer.ions["Na+"] ?? 0) + (developer.ions["K+"] ?? 0) - (developer.ions["Br-"] ?? 0);
    // carbonate and sulfite take 1.86 and 0.98 protons less than their cations suggest at pH 5.5
    const taken =
      alkali -
      0.125 * (developer.acids.carbonic ?? 0) -
      0.98 * (developer.acids.sulfurous ?? 0) -
      2 * (developer.acids["hydrogen sulfate"] ?? 0);
    expect((share * taken) / ((1 - share) * acid * 0.87)).toBeGreaterThan(0.85);
    expect((share * taken) / ((1 - share) * acid * 0.87)).toBeLessThan(1.15);
  });

  it("reports a limit that is already passed, and one that is never reached", () => {
    expect(areaToPhLimit(stop, 2)).toMatchObject({ areaM2: 0 });
    expect(areaToPhLimit(stop, 12)).toMatchObject({ areaM2: null, areaM2PerL: null });
  });

  it("gives a curve, cautions and what it leaves out", () => {
    const capacity = stopBathCapacity(stop, LIMIT);
    expect(capacity.curve).toHaveLength(11);
    expect(capacity.curve.at(-1)?.pH).toBeCloseTo(LIMIT, 9);
    expect(capacity.cautions.join(" ")).toContain("ventilation");
    expect(capacity.assumptions.join(" ")).toContain("silver");
    expect(stopBathCapacity(stop, 12).curve).toEqual([]);
  });

  it("warns of sulfur dioxide where a sulfite developer meets fresh acid", () => {
    const strong = {
      ...stop,
      carriedIn: bathFormula("metol-sulfite-developer"),
      carryInMlPerM2: 200,
    };
    expect(stopBathCapacity(strong, LIMIT).warnings.join(" ")).toContain("sulfur dioxide");
  });

  it.each([
    [{ ...stop, carryInMlPerM2: 0 }, LIMIT, "greater than 0"],
    [stop, 15, "at most 14"],
  ])("refuses %#", (options, limit, message) => {
    expect(() => areaToPhLimit(options, limit)).toThrow(message);
  });

  it("refuses an empty list of areas", () => {
    expect(() => bathPhAgainstArea(stop, [])).toThrow("at least one area");
  });
});

describe("a developer under what comes before it", () => {
  it("falls under an acid and hardly moves under water", () => {
    const developer = { ...tank, bath: bathFormula("print-developer"), carryInMlPerM2: 100 };
    const fresh = solutionPh(developer.bath).pH;
    const [acid] = bathPhAgainstArea({ ...developer, carriedIn: stop.bath }, [3]);
    const [water] = bathPhAgainstArea({ ...developer, carriedIn: pureWater }, [3]);
    expect((acid?.pH ?? fresh) - fresh).toBeLessThan(-0.1);
    expect(Math.abs((water?.pH ?? 0) - fresh)).toBeLessThan(0.1);
  });

  it("a borax bath falls faster than a carbonate bath", () => {
    const drop = (id: string) => {
      const options = { ...tank, bath: bathFormula(id), carriedIn: stop.bath };
      const [start, end] = bathPhAgainstArea(options, [0, 1]);
      return (start?.pH ?? 0) - (end?.pH ?? 0);
    };
    expect(drop("metol-hydroquinone-borax-developer")).toBeGreaterThan(drop("print-developer"));
  });

  it("reaches a falling limit from above", () => {
    const options = { ...tank, bath: bathFormula("print-developer"), carriedIn: stop.bath };
    const { areaM2, freshPh } = areaToPhLimit(options, 10);
    expect(freshPh).toBeGreaterThan(10);
    expect(bathPhAgainstArea(options, [areaM2 ?? 0])[0]?.pH).toBeCloseTo(10, 8);
  });
});
