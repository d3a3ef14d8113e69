import { describe, expect, it } from "vitest";
import {
  bathFormulas,
  bathHazards,
  checkMixingOrder,
  chemicals,
  formulaMixingSheet,
  inMixingOrder,
  scaleFormula,
  substituteChemical,
  weighToDivision,
} from "wetside/solutions";
import fc from "./fast-check.ts";

const RELATIVE = 1e-12; // a handful of multiplications
const amount = fc.double({ min: 1e-3, max: 1e4, noNaN: true });
const named = chemicals.flatMap((each) => each.forms.map((form) => `${each.name} ${form.id}`));
const pairs = chemicals.flatMap((a) =>
  chemicals
    .filter((b) => a.active !== undefined && a.active.ion === b.active?.ion)
    .flatMap((b) =>
      a.forms.flatMap((from) =>
        b.forms.map((to) => [`${a.name} ${from.id}`, `${b.name} ${to.id}`] as const),
      ),
    ),
);

const [one] = bathFormulas;
if (one === undefined) throw new Error("no formula");

describe("laws of formulas", () => {
  it("putting one chemical for another and back gives the amount back", () => {
    fc.assert(
      fc.property(fc.constantFrom(...pairs), amount, ([from, to], grams) => {
        const there = substituteChemical(from, to, grams);
        const back = substituteChemical(to, from, there.amount);
        expect(Math.abs(back.amount / grams - 1)).toBeLessThan(RELATIVE);
        expect(Math.abs(back.massFactor * there.massFactor - 1)).toBeLessThan(RELATIVE);
      }),
    );
  });

  it("substitution is proportional to the amount", () => {
    fc.assert(
      fc.property(fc.constantFrom(...pairs), amount, ([from, to], grams) => {
        const once = substituteChemical(from, to, grams).amount;
        const twice = substituteChemical(from, to, 2 * grams).amount;
        expect(Math.abs(twice / once - 2)).toBeLessThan(2 * RELATIVE);
      }),
    );
  });

  it("a batch is proportional to its volume", () => {
    fc.assert(
      fc.property(fc.constantFrom(...bathFormulas), amount, (formula, volume) => {
        const small = scaleFormula(formula, volume);
        const large = scaleFormula(formula, 10 * volume);
        small.ingredients.forEach((each, i) => {
          const ratio = (large.ingredients[i]?.molesMol ?? 0) / each.molesMol;
          expect(Math.abs(ratio / 10 - 1)).toBeLessThan(RELATIVE);
        });
      }),
    );
  });

  it("a weighed mass is a whole number of steps, within half a step unless that is nothing", () => {
    fc.assert(
      fc.property(amount, fc.constantFrom(0.001, 0.01, 0.1, 0.5, 1, 5), (grams, step) => {
        const { massG, errorG } = weighToDivision(grams, step);
        expect(Math.abs(massG / step - Math.round(massG / step))).toBeLessThan(1e-6);
        expect(massG).toBeGreaterThan(0);
        if (grams > step / 2) expect(Math.abs(errorG)).toBeLessThanOrEqual(step / 2 + 1e-9);
      }),
    );
  });

  it("a list put in order breaks no rule and loses nothing", () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.constantFrom(...named), { maxLength: 8 }), (names) => {
        const ordered = inMixingOrder(names);
        expect([...ordered].sort()).toEqual([...names].sort());
        expect(checkMixingOrder(ordered)).toEqual([]);
      }),
    );
  });

  it("a bath of several chemicals is never milder than the same one thinned", () => {
    const rank = { none: 0, warning: 1, danger: 2 };
    const solids = named.filter((name) => !name.includes("%"));
    const mixed = fc.uniqueArray(fc.constantFrom(...solids), { minLength: 1, maxLength: 5 });
    const grams = fc.double({ min: 0.1, max: 150, noNaN: true });
    fc.assert(
      fc.property(mixed, grams, fc.double({ min: 0, max: 1, noNaN: true }), (names, g, share) => {
        const bath = (gPerL: number) =>
          bathHazards(
            scaleFormula(
              {
                ...one,
                ingredients: names.map((chemical) => ({ chemical, gPerL: Math.max(1e-3, gPerL) })),
              },
              1000,
            ),
          );
        const [full, thin] = [bath(g), bath(share * g)];
        expect(rank[thin.signalWord]).toBeLessThanOrEqual(rank[full.signalWord]);
        if (full.statements.length === 0) expect(thin.statements).toEqual([]);
      }),
    );
  });

  it("a sheet holds only finite numbers, none negative, and never more than fits", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...bathFormulas),
        fc.double({ min: 50, max: 1e5, noNaN: true }),
        (formula, volumeMl) => {
          const { steps } = formulaMixingSheet(formula, { volumeMl, balanceDivisionG: 0.01 });
          for (const step of steps) {
            expect(Number.isFinite(step.amount) && step.amount >= 0).toBe(true);
            if (step.unit === "mL") expect(step.amount).toBeLessThanOrEqual(volumeMl);
          }
        },
      ),
    );
  });
});
