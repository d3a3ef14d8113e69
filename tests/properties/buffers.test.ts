import { describe, expect, it } from "vitest";
import {
  areaToPhLimit,
  bathFormula,
  bathPhAgainstArea,
  mixSolutions,
  type SolutionComposition,
  solutionPh,
  weakAcids,
} from "wetside/solutions";
import fc from "./fast-check.ts";

const RESIDUAL = 1e-11; // mol/L per mol/L of charge: the root is found to rounding
const amount = fc.oneof(
  fc.double({ min: 0, max: 2, noNaN: true }),
  fc.double({ min: 0, max: 1e-3, noNaN: true }),
);
const anySolution: fc.Arbitrary<SolutionComposition> = fc.record({
  ions: fc.dictionary(fc.constantFrom("Na+", "K+", "Cl-", "S2O3--", "Fe(CN)6---"), amount, {
    noNullPrototype: true,
  }),
  acids: fc.dictionary(fc.constantFrom(...weakAcids.map(({ id }) => id)), amount, {
    noNullPrototype: true,
  }),
  notCounted: fc.constant([]),
});
const temperature = fc.double({ min: 0, max: 75, noNaN: true });

describe("laws of pH", () => {
  it("charges balance to rounding, and no number is lost, whatever is dissolved", () => {
    fc.assert(
      fc.property(anySolution, temperature, (source, temperatureC) => {
        const { pH, chargeResidualMolPerL, ionicStrengthMolPerL, acids } = solutionPh(source, {
          temperatureC,
        });
        expect(Number.isFinite(pH) && Number.isFinite(ionicStrengthMolPerL)).toBe(true);
        expect(Math.abs(chargeResidualMolPerL)).toBeLessThan(RESIDUAL * (1 + ionicStrengthMolPerL));
        for (const { fractions } of acids) {
          expect(fractions.reduce((sum, part) => sum + part, 0)).toBeCloseTo(1, 12);
        }
      }),
    );
  });

  it("strong acid never raises the pH, strong base never lowers it", () => {
    const more = fc.double({ min: 1e-6, max: 0.2, noNaN: true });
    // At a fixed ionic strength this is exact; between two, activities may move the pH by a little.
    const slack = 0.02;
    fc.assert(
      fc.property(anySolution, more, (source, extra) => {
        const at = (ion: string) =>
          solutionPh({
            ...source,
            ions: { ...source.ions, [ion]: (source.ions[ion] ?? 0) + extra },
          }).pH;
        const base = solutionPh(source).pH;
        expect(at("Cl-")).toBeLessThanOrEqual(base + slack);
        expect(at("Na+")).toBeGreaterThanOrEqual(base - slack);
      }),
    );
  });

  it("a mixture lies between its parts in everything that is conserved", () => {
    fc.assert(
      fc.property(
        anySolution,
        anySolution,
        fc.double({ min: 0, max: 1, noNaN: true }),
        (a, b, x) => {
          const mixed = mixSolutions(a, b, x);
          for (const ion of Object.keys(mixed.ions)) {
            const [p, q] = [a.ions[ion] ?? 0, b.ions[ion] ?? 0];
            expect(mixed.ions[ion]).toBeGreaterThanOrEqual(Math.min(p, q) - 1e-12);
            expect(mixed.ions[ion]).toBeLessThanOrEqual(Math.max(p, q) + 1e-12);
          }
        },
      ),
    );
  });

  it("a stop bath's pH never falls as more developer comes in, and its capacity is that area", () => {
    const carry = fc.double({ min: 10, max: 400, noNaN: true });
    const volume = fc.double({ min: 100, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(carry, volume, (carryInMlPerM2, bathVolumeMl) => {
        const options = {
          bath: bathFormula("acetic-stop-bath"),
          bathVolumeMl,
          carriedIn: bathFormula("print-developer"),
          carryInMlPerM2,
        };
        const { areaM2 } = areaToPhLimit(options, 5.5);
        const area = areaM2 ?? Number.NaN;
        const points = bathPhAgainstArea(options, [0, area / 3, area / 2, area, 2 * area]);
        const values = points.map(({ pH }) => pH);
        expect([...values].sort((a, b) => a - b)).toEqual(values);
        expect(values[3]).toBeCloseTo(5.5, 8);
      }),
      { numRuns: 30 },
    );
  });
});
