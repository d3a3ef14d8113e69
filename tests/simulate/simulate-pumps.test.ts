import { describe, expect, it } from "vitest";
import { simulateLab } from "wetside/simulate";
import { productionAreaM2 } from "wetside/units";
import { dateOf, possibleFaults } from "./labs.ts";

const DAYS = 105;
const MOMENT = 40;
const clean = simulateLab({ seed: 41, days: DAYS });
// A stroke wanders by 0.4 % a day and the level is read to 50 mL at both ends.
const STRAY = 0.004;
// Twenty strokes into a cylinder, read to 0.6 % and to a millilitre.
const CYLINDER = 0.03;

type Lab = typeof clean;
const pump = (lab: Lab, id: string) => lab.pumps.filter((each) => each.pump === id);
const sum = (numbers: readonly number[]) => numbers.reduce((total, each) => total + each, 0);

function delivered(lab: Lab, id: string, from: number, until: number): number {
  const [a, b] = [dateOf(lab, from), dateOf(lab, until)];
  return sum(
    pump(lab, id)
      .filter(({ readAt }) => a <= readAt && readAt < b)
      .map(({ deliveredMl = Number.NaN }) => deliveredMl),
  );
}

const areaOn = (lab: Lab, process: string, until = DAYS) =>
  productionAreaM2(
    lab.production.filter((row) => row.process === process && row.date < dateOf(lab, until)),
  ).areaM2;

describe("the pump log", () => {
  it("has a reading of every pump every evening, and none of a bath without replenisher", () => {
    for (const id of ["film-developer", "film-bleach", "film-fixer", "film-rinse"]) {
      expect(pump(clean, id), id).toHaveLength(DAYS);
    }
    expect(pump(clean, "paper-wash")).toEqual([]);
    expect(clean.pumps.every(({ readAt }) => readAt.slice(11, 13) === "18")).toBe(true);
  });

  it("counts as many strokes as the area asks for, to the stroke", () => {
    for (const [id, process, rate, setting] of [
      ["film-developer", "colour-negative", 600, 5],
      ["paper-bleach-fix", "colour-paper", 215, 10],
    ] as const) {
      const log = pump(clean, id);
      const [first, last] = [log[0], log.at(-1)];
      const cylinders = log.slice(0, -1).filter(({ cylinder }) => cylinder !== undefined).length;
      const strokes =
        (last?.counterStrokes ?? Number.NaN) -
        (first?.counterStrokes ?? Number.NaN) -
        20 * cylinders;
      const asked = (areaOn(clean, process) - areaOn(clean, process, 1)) * (rate / setting);
      expect(Math.abs(strokes - asked), id).toBeLessThanOrEqual(1 + 1e-6);
    }
  });

  it("delivers what it counts, within what strokes and levels stray by", () => {
    const asked = areaOn(clean, "colour-negative") * 600;
    expect(Math.abs(delivered(clean, "film-developer", 0, DAYS) / asked - 1)).toBeLessThan(STRAY);
  });

  for (const [kind, factor] of [
    ["under-replenished", 0.75],
    ["over-replenished", 1.25],
  ] as const) {
    const faults = [{ kind, line: "film", fromDay: MOMENT, size: 0.25 }];
    const lab = simulateLab({ seed: 41, days: DAYS, faults });

    it(`does not know of ${kind} on its counter and setting`, () => {
      const told = (each: Lab) =>
        pump(each, "film-developer").map(({ readAt, counterStrokes, settingMlPerStroke }) => ({
          readAt,
          counterStrokes,
          settingMlPerStroke,
        }));
      expect(told(lab)).toEqual(told(clean));
    });

    it(`shows ${kind} in what was delivered, from its day on and by its size`, () => {
      const ratio = (from: number, until: number) =>
        delivered(lab, "film-developer", from, until) /
        delivered(clean, "film-developer", from, until);
      expect(ratio(0, MOMENT)).toBe(1);
      expect(Math.abs(ratio(MOMENT, DAYS) - factor)).toBeLessThan(STRAY);
    });

    it(`shows ${kind} in the measuring cylinder`, () => {
      const cylinders = pump(lab, "film-developer").flatMap(({ cylinder, readAt }) =>
        cylinder === undefined ? [] : [{ ...cylinder, readAt }],
      );
      expect(cylinders.map(({ strokes }) => strokes)).toEqual([20, 20, 20]);
      for (const { volumeMl, readAt } of cylinders) {
        const due = 100 * (readAt >= dateOf(lab, MOMENT) ? factor : 1);
        expect(Math.abs(volumeMl / due - 1), readAt).toBeLessThan(CYLINDER);
      }
    });

    it(`leaves every other pump as it was at ${kind}`, () => {
      const others = (each: Lab) => each.pumps.filter((row) => row.pump !== "film-developer");
      expect(others(lab)).toEqual(others(clean));
    });
  }

  it("is the same whatever else goes wrong", () => {
    for (const { kind, line } of possibleFaults.filter(({ kind }) => !/replenished/.test(kind))) {
      const lab = simulateLab({ seed: 41, days: DAYS, faults: [{ kind, line, fromDay: MOMENT }] });
      expect(lab.pumps, kind).toEqual(clean.pumps);
    }
  });
});
