import { describe, expect, it } from "vitest";
import {
  carryOvers,
  counterCurrentResidual,
  type MachineWash,
  machineWash,
  thiosulfateLimit,
  waterForLimit,
} from "wetside/replenishment";
import washRules from "../../../data/session/wash-rules.json" with { type: "json" };

const ROUNDING = 1e-12;
const wash: MachineWash = Object.freeze({
  areaM2PerHour: 4,
  carryOverMlPerM2: 40,
  carriedInGPerL: 120,
  stages: 3,
  flow: "counter-current",
  waterLPerHour: 6,
});

describe("a machine wash", () => {
  it("is the closed form of the counter-current rinse when exchange is complete", () => {
    for (let stages = 1; stages <= 8; stages++) {
      const { leavesGPerL, tanksGPerL } = machineWash({ ...wash, stages });
      const closed = 120 * counterCurrentResidual({ ratio: 6 / 0.16, stages });
      expect(Math.abs(leavesGPerL / closed - 1)).toBeLessThan(1e-10);
      expect(tanksGPerL).toHaveLength(stages);
    }
  });
  it("is dilution by 1/(1 + R/n) in each tank with fresh water in all", () => {
    const { leavesGPerL } = machineWash({ ...wash, flow: "each fresh" });
    expect(leavesGPerL).toBeCloseTo(120 / (1 + 2 / 0.16) ** 3, 12);
  });
  it("sends to the drain what does not stay in the film", () => {
    for (const flow of ["counter-current", "each fresh"] as const) {
      for (const exchange of [1, 0.8, 0.3]) {
        const { toDrainGPerHour, withMaterialGPerHour } = machineWash({ ...wash, flow, exchange });
        expect(Math.abs((toDrainGPerHour + withMaterialGPerHour) / (0.16 * 120) - 1)).toBeLessThan(
          ROUNDING,
        );
      }
    }
  });
  it("with unlimited water leaves what the exchange has not finished, (1 − η)^n", () => {
    const { leavesGPerL } = machineWash({ ...wash, exchange: 0.75, waterLPerHour: 1e9 });
    expect(leavesGPerL / 120).toBeCloseTo(0.25 ** 3, 6);
  });
  it("gets better with water, stages, squeegees and exchange, and counter-current beats fresh", () => {
    const left = (change: Partial<MachineWash>) =>
      machineWash({ ...wash, ...change }).residualGPerM2;
    expect(left({ waterLPerHour: 12 })).toBeLessThan(left({}));
    expect(left({ stages: 4 })).toBeLessThan(left({}));
    expect(left({ carryOverMlPerM2: 19 })).toBeLessThan(left({}));
    expect(left({ exchange: 0.9 })).toBeGreaterThan(left({}));
    expect(left({ flow: "each fresh" })).toBeGreaterThan(left({}));
  });
  it("says in both units whether the limit is kept", () => {
    const good = machineWash({ ...wash, waterLPerHour: 60 });
    expect(good.withinLimit).toBe(true);
    expect(good.residualUgPerCm2).toBeCloseTo(100 * good.residualGPerM2, 15);
    expect(machineWash({ ...wash, waterLPerHour: 0.5 }).withinLimit).toBe(false);
    expect(machineWash({ ...wash, waterLPerHour: 0.1 }).warnings[0]).toContain("hardly dilutes");
  });
  it("refuses what cannot be", () => {
    const run = (change: object) => () => machineWash({ ...wash, ...change });
    expect(run({ exchange: 1.1 })).toThrow("exchange is 1.1");
    expect(run({ exchange: 0 })).toThrow("exchange is 0");
    expect(run({ stages: 0 })).toThrow("stages is 0");
    expect(run({ flow: "backwards" })).toThrow('"counter-current", "each fresh"');
    expect(run({ waterLPerHour: -1 })).toThrow("waterLPerHour is -1");
  });
});

describe("water for a limit", () => {
  it("keeps exactly the limit", () => {
    for (const stages of [1, 2, 3, 4]) {
      const found = waterForLimit({ ...wash, stages });
      expect(found.wash.residualGPerM2 / thiosulfateLimit.gPerM2).toBeCloseTo(1, 9);
    }
  });
  it("falls steeply with each further tank", () => {
    const water = [1, 2, 3, 4].map((stages) => waterForLimit({ ...wash, stages }).waterLPerHour);
    water.slice(1).forEach((each, i) => {
      expect(each).toBeLessThan((water[i] ?? 0) / 1.5);
    });
    // c_0/c_n = 0.04·120/0.014 = 342.9 with one tank: R = 341.9.
    expect(water[0]).toBeCloseTo(0.16 * (4.8 / 0.014 - 1), 6);
  });
  it("says when no water is enough, or none is needed", () => {
    expect(() => waterForLimit({ ...wash, exchange: 0.5 })).toThrow(
      /even unlimited water leaves 0\.60/,
    );
    expect(() => waterForLimit({ ...wash, carriedInGPerL: 0.1 })).toThrow("without washing");
  });
});

describe("the data of washing", () => {
  it("has the same limit as washing by hand", () => {
    expect(thiosulfateLimit.gPerM2).toBe(washRules.thiosulfateLimit.gPerM2);
    expect(thiosulfateLimit.ugPerCm2).toBeCloseTo(100 * thiosulfateLimit.gPerM2, 12);
  });
  it("spans carry-over from squeegees to not drained", () => {
    expect(carryOvers.map(({ mlPerM2 }) => mlPerM2)).toEqual([19, 70, 390]);
  });
});
