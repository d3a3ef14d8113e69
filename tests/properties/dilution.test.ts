import { describe, expect, it } from "vitest";
import { InputError } from "wetside/input";
import {
  acidSheet,
  acidToStrength,
  bathCapacity,
  blendByMass,
  blendToStrength,
  blendVolumes,
  correctTank,
  dilute,
  diluteWithGraduates,
  dilutionSheet,
  freshTankSheet,
  graduates,
  kitSheet,
  massPercentFromDensity,
  mostFromStock,
  redilute,
  solutionDensity,
  solutionHazards,
  stockForecast,
} from "wetside/solutions";
import fc from "./fast-check.ts";

// Sums of a few doubles: a few units in the last place, nothing more.
const ROUNDING = 1e-12;

const part = fc.double({ min: 0.01, max: 500, noNaN: true });
const volume = fc.double({ min: 0.1, max: 1e6, noNaN: true });
const strength = fc.double({ min: 0, max: 1000, noNaN: true });
const ratio = fc
  .array(part, { minLength: 2, maxLength: 4 })
  .map((parts) => parts.map((each) => Number(each.toFixed(2))).join("+"));
const single = fc.integer({ min: 1, max: 200 }).map((water) => `1+${water}`);

function near(actual: number, expected: number, scale = Math.abs(expected)): boolean {
  return Math.abs(actual - expected) <= ROUNDING * Math.max(1, scale);
}

/** Every number in a result, however deep. */
function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  if (typeof value !== "object" || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
}

describe("parts", () => {
  it("always sum to the total", () => {
    fc.assert(
      fc.property(ratio, volume, (text, totalMl) => {
        const mix = dilute({ ratio: text, totalMl });
        const poured = mix.concentrates.reduce((sum, { volumeMl }) => sum + volumeMl, mix.waterMl);
        expect(near(poured, totalMl)).toBe(true);
      }),
    );
  });
  it("of a sheet always sum to its volume", () => {
    const sheets = fc.oneof(
      fc
        .tuple(ratio, volume)
        .map(([text, totalMl]) => dilutionSheet({ title: "t", ratio: text, totalMl })),
      fc
        .tuple(fc.double({ min: 1, max: 390, noNaN: true }), fc.integer({ min: 50, max: 50_000 }))
        .map(([mlPerL, volumeMl]) =>
          kitSheet({ title: "t", parts: [{ what: "A", mlPerL }], volumeMl }),
        ),
      fc
        .tuple(
          fc.double({ min: 1, max: 900, noNaN: true }),
          fc.integer({ min: 0, max: 100 }),
          volume,
        )
        .map(([replenisherMlPerL, starterMlPerL, tankMl]) =>
          freshTankSheet({ title: "t", tankMl, replenisherMlPerL, starterMlPerL }),
        ),
    );
    fc.assert(
      fc.property(sheets, (sheet) => {
        const sum = sheet.steps.reduce((total, { amount }) => total + amount, 0);
        expect(near(sum, sheet.volumeMl)).toBe(true);
        for (const { amount } of sheet.steps) expect(amount).toBeGreaterThan(0);
      }),
    );
  });
  it("of the most that can be made never ask for more than a bottle holds", () => {
    fc.assert(
      fc.property(fc.tuple(part, part, part), volume, volume, (parts, a, b) => {
        const most = mostFromStock({ ratio: parts.join("+"), availableMl: [a, b] });
        [a, b].forEach((available, i) => {
          const { volumeMl = 0 } = most.concentrates[i] ?? {};
          expect(volumeMl).toBeLessThanOrEqual(available * (1 + ROUNDING));
          expect(near(volumeMl + (most.left[i]?.volumeMl ?? 0), available)).toBe(true);
        });
      }),
    );
  });
  it("measured stay within half a division of what is wanted", () => {
    const vessels = fc.constantFrom(...graduates);
    fc.assert(
      fc.property(single, fc.integer({ min: 100, max: 5000 }), vessels, (text, totalMl, vessel) => {
        try {
          for (const each of diluteWithGraduates({ ratio: text, totalMl, vessels: [vessel] })
            .parts) {
            expect(Math.abs(each.errorMl)).toBeLessThanOrEqual(vessel.divisionMl / 2 + 1e-9);
          }
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
        }
      }),
    );
  });
});

describe("blending", () => {
  it("conserves what is dissolved, and stays between the two strengths", () => {
    fc.assert(
      fc.property(
        strength,
        strength,
        fc.double({ min: 0, max: 1, noNaN: true }),
        volume,
        (...given) => {
          const [first, second, share, totalMl] = given;
          const target = Math.min(first, second) + share * Math.abs(first - second);
          const blend = blendToStrength({ first, second, target, totalMl });
          const back = blendVolumes([
            { volumeMl: blend.firstMl, strength: first },
            { volumeMl: blend.secondMl, strength: second },
          ]);
          expect(near(back.strength, target, Math.max(first, second))).toBe(true);
          expect(Math.min(blend.firstMl, blend.secondMl)).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });
  it("by mass conserves the mass of the acid", () => {
    const portion = fc
      .tuple(fc.double({ min: 0, max: 100, noNaN: true }), volume)
      .map(([massPercent, massG]) => ({ massPercent, massG }));
    fc.assert(
      fc.property(fc.array(portion, { minLength: 1, maxLength: 5 }), (portions) => {
        const mix = blendByMass({ substance: "acetic acid", portions });
        const acid = portions.reduce((sum, each) => sum + each.massG * each.massPercent, 0) / 100;
        expect(near((mix.massG * mix.massPercent) / 100, acid)).toBe(true);
        expect(near(mix.volumeMl * mix.densityGPerMl, mix.massG)).toBe(true);
        expect(near((mix.gPerL * mix.volumeMl) / 1000, acid)).toBe(true);
      }),
    );
  });
  it("of a stronger acid with water keeps the acid too", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 99 }), volume, (targetPercent, totalMl) => {
        const wanted = { substance: "sulfuric acid", strongPercent: 100, targetPercent, totalMl };
        const mix = acidToStrength(wanted);
        expect(near(mix.strongG, (mix.totalG * targetPercent) / 100)).toBe(true);
        expect(near(mix.strongG + mix.weakG, mix.totalG)).toBe(true);
      }),
    );
  });
  it("and the density of a salt undo each other", () => {
    const salts = fc.constantFrom("sodium thiosulfate", "sodium hydroxide", "potassium carbonate");
    const percent = fc.double({ min: 0, max: 36, noNaN: true });
    fc.assert(
      fc.property(salts, percent, fc.integer({ min: 20, max: 40 }), (...given) => {
        const [substance, massPercent, temperatureC] = given;
        const { densityGPerMl } = solutionDensity({ substance, massPercent, temperatureC });
        const back = massPercentFromDensity({ substance, densityGPerMl, temperatureC });
        expect(Math.abs(back - massPercent)).toBeLessThan(1e-8);
      }),
      { numRuns: 40 },
    );
  });
});

describe("a tank", () => {
  it("is never overfilled or emptied below nothing, and reaches its target", () => {
    const amount = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(
        volume,
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        amount,
        amount,
        amount,
        (...g) => {
          const [tankMl, fill, before, target, addStrength] = g;
          const presentMl = tankMl * fill;
          const tank = { tankMl, presentMl, strength: before, target, addStrength, dump: true };
          try {
            const done = correctTank(tank);
            expect(done.finalMl).toBeLessThanOrEqual(tankMl * (1 + ROUNDING));
            expect(done.dumpMl).toBeGreaterThanOrEqual(0);
            expect(done.dumpMl).toBeLessThanOrEqual(presentMl);
            expect(done.addMl).toBeGreaterThanOrEqual(0);
            const inside = (presentMl - done.dumpMl) * before + done.addMl * addStrength;
            expect(Math.abs(inside / done.finalMl - target)).toBeLessThan(1e-9 * 100);
          } catch (error) {
            expect(error).toBeInstanceOf(InputError);
          }
        },
      ),
    );
  });
  it("re-diluted never needs less than nothing of anything", () => {
    fc.assert(
      fc.property(single, single, volume, (from, to, totalMl) => {
        const done = redilute({ from, to, totalMl });
        const { fromMl, waterMl, concentrateMl } = done;
        expect(Math.min(fromMl, waterMl, concentrateMl)).toBeGreaterThanOrEqual(0);
        expect(near(fromMl + waterMl + concentrateMl, totalMl)).toBe(true);
        const strengthOf = (text: string) => 1 / (1 + Number(text.slice(2)));
        const made = (fromMl * strengthOf(from) + concentrateMl) / totalMl;
        expect(near(made, strengthOf(to))).toBe(true);
      }),
    );
  });
});

describe("any finite numbers", () => {
  const any = fc.oneof(
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.double({ min: 0, max: 1e6, noNaN: true }),
    fc.constantFrom(0, 1, 100, 1e-300, 1e300, Number.MAX_VALUE, Number.MIN_VALUE),
  );
  const calls: readonly ((a: number, b: number, c: number, d: number) => unknown)[] = [
    (totalMl) => dilute({ ratio: "1+9", totalMl }),
    (a) => mostFromStock({ ratio: "1+9", availableMl: [a] }),
    (a, b) => redilute({ from: "1+4", to: `1+${Math.abs(b)}`, totalMl: a }),
    (first, second, target, totalMl) => blendToStrength({ first, second, target, totalMl }),
    (volumeMl, s, v, t) =>
      blendVolumes([
        { volumeMl, strength: s },
        { volumeMl: v, strength: t },
      ]),
    (tankMl, s, target, addStrength) =>
      correctTank({ tankMl, strength: s, target, addStrength, dump: true }),
    (massPercent, volumeMl) =>
      blendByMass({ substance: "acetic acid", portions: [{ massPercent, volumeMl }] }),
    (a, b, c) =>
      acidToStrength({ substance: "acetic acid", strongPercent: a, targetPercent: b, totalMl: c }),
    (a, b, totalMl) =>
      acidSheet({
        title: "t",
        substance: "sulfuric acid",
        strongPercent: a,
        targetPercent: b,
        totalMl,
      }),
    (massPercent, b) =>
      solutionHazards([
        { chemical: "acetic acid", massPercent },
        { chemical: "hydroquinone", massPercent: b },
      ]),
    (a, b) => diluteWithGraduates({ ratio: `1+${Math.abs(b)}`, totalMl: a, vessels: ["jug-1000"] }),
    (a, b) => kitSheet({ title: "t", parts: [{ what: "A", mlPerL: b }], volumeMl: a }),
    (tankMl, a, b) =>
      freshTankSheet({ title: "t", tankMl, replenisherMlPerL: a, starterMlPerL: b }),
    (volumeMl, capacityM2PerL, count) =>
      bathCapacity({ volumeMl, capacityM2PerL, used: [{ format: "120", count }] }),
    (onShelfMl, use, reserveMl) =>
      stockForecast({
        onShelfMl,
        reserveMl,
        weekUseMl: [use, use, use, use, use, 0, 0],
        from: "2026-03-02",
        leadDays: 5,
      }),
  ];
  it("give finite numbers or an InputError", () => {
    fc.assert(
      fc.property(fc.constantFrom(...calls), any, any, any, any, (call, a, b, c, d) => {
        try {
          for (const value of numbersIn(call(a, b, c, d))) {
            expect(Number.isFinite(value), `${call} of ${a}, ${b}, ${c}, ${d}`).toBe(true);
          }
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
        }
      }),
      { numRuns: 5000 },
    );
  });
});
