import { describe, expect, it } from "vitest";
import {
  coatedSilver,
  electrolyticSilver,
  hoursToPlate,
  metallicExchange,
  recoveryGoals,
  type SilverFixer,
  silverByTitration,
  silverCautions,
  silverDischarge,
  silverOverDays,
  silverRemoved,
  silverToxicityThreshold,
  tankOverDays,
} from "wetside/replenishment";
import { integrateOde } from "../odex.ts";
import { unevenDays } from "../tank/example-tank.ts";

// The integrator meets a corner where the cell stops; split there, it is as good as elsewhere.
const INTEGRATOR = 1e-8;

const fixer: SilverFixer = {
  tank: { volumeL: 16, rateMlPerM2: 800, carryInMlPerM2: 60, carryOutMlPerM2: 60, components: [] },
  coatedGPerM2: 5,
  fractionRemoved: 1,
};
const cell = { currentA: 8, currentEfficiency: 0.8, hoursPerDay: 6, stopsAtGPerL: 0.5 };

describe("silver in a fixer over days", () => {
  it("without a cell is the balance of any released component", () => {
    const days = unevenDays(60);
    const silver = { name: "silver", replenisherGPerL: 0, releasedGPerM2: 5, startGPerL: 0 };
    const asTank = tankOverDays({ ...fixer.tank, components: [silver] }, days);
    const asSilver = silverOverDays(fixer, days);
    asSilver.days.forEach((day, i) => {
      expect(day.silverGPerL).toBeCloseTo(
        asTank.days[i]?.concentrationGPerL.silver ?? Number.NaN,
        12,
      );
    });
    expect(asSilver.overflowedG).toBeCloseTo(asTank.ledgers[0]?.overflowedG ?? Number.NaN, 9);
  });
  it("accounts for every gram, with cell, changed baths and carry-in", () => {
    const days = unevenDays(200).map((day, i) => ({ ...day, freshBath: i % 50 === 49 }));
    const log = silverOverDays(
      { ...fixer, recovery: cell, startGPerL: 2, carryInGPerL: 0.01 },
      days,
    );
    expect(Math.abs(log.imbalanceG) / log.removedG).toBeLessThan(1e-12);
    expect(log.platedG).toBeGreaterThan(0);
    expect(log.dumpedG).toBeGreaterThan(0);
  });
  it("agrees with an independent integrator while the cell runs all day", () => {
    const days = unevenDays(5);
    const gentle = { ...cell, currentA: 1, stopsAtGPerL: 0 };
    const strong = { ...fixer, startGPerL: 8, recovery: gentle };
    const plating = electrolyticSilver({ ...gentle, hours: 6 });
    let state: readonly number[] = [8];
    for (const { areaM2 } of days) {
      state = integrateOde(
        (_, [c = 0]) => [(areaM2 * 5 - plating - areaM2 * 0.86 * c) / 16],
        0,
        state,
        1,
      );
    }
    const end = silverOverDays(strong, days).days.at(-1)?.silverGPerL ?? Number.NaN;
    expect(Math.abs(end / (state[0] ?? Number.NaN) - 1)).toBeLessThan(INTEGRATOR);
  });
  it("rises to the cell's stop, is held there, and never plated below it", () => {
    const days = unevenDays(80).map((day) => ({ ...day, areaM2: 3 }));
    const log = silverOverDays({ ...fixer, recovery: cell }, days);
    for (const day of log.days) expect(day.silverGPerL).toBeLessThanOrEqual(0.5 + 1e-12);
    expect(log.days.at(-1)?.silverGPerL).toBeCloseTo(0.5, 12);
    // At the stop what comes and does not leave by itself is plated: 15 − 3·0.86·0.5 g.
    expect(log.days.at(-1)?.platedG).toBeCloseTo(15 - 3 * 0.86 * 0.5, 9);
  });
  it("falls from above to the stop within the day, exactly when the sums say", () => {
    const [still] = unevenDays(1).map((day) => ({ ...day, areaM2: 0 }));
    if (still === undefined) throw new Error("no day");
    const log = silverOverDays({ ...fixer, startGPerL: 2, recovery: cell }, [still]);
    const couldPlate = electrolyticSilver({ ...cell, hours: 6 });
    expect(couldPlate).toBeGreaterThan(1.5 * 16);
    expect(log.days[0]?.platedG).toBeCloseTo(1.5 * 16, 10);
    expect(log.days[0]?.silverGPerL).toBeCloseTo(0.5, 12);
  });
  it("sinks below the stop when fresh fixer alone thins it", () => {
    const days = unevenDays(1).map((day) => ({ ...day, areaM2: 4, replenisherMl: 20_000 }));
    const poor = { ...fixer, coatedGPerM2: 0.1, startGPerL: 0.5, recovery: cell };
    const log = silverOverDays(poor, days);
    expect(log.days[0]?.silverGPerL).toBeLessThan(0.5);
    expect(log.platedG).toBe(0);
    expect(Math.abs(log.imbalanceG)).toBeLessThan(1e-12);
  });
  it("gives no number that is not finite where next to nothing comes in", () => {
    const still = { volumeL: 0.5, rateMlPerM2: 0, components: [] };
    const recovery = { currentA: 1, currentEfficiency: 1, hoursPerDay: 10, stopsAtGPerL: 0.1 };
    const little = [{ date: "2026-03-02", areaM2: 1e-323 }];
    for (const startGPerL of [0, 5]) {
      const log = silverOverDays({ ...fixer, tank: still, recovery, startGPerL }, little);
      expect(log.days[0]?.silverGPerL).toBeCloseTo(startGPerL === 0 ? 0 : 0.1, 12);
      expect(log.recoveredShare === null || Number.isFinite(log.recoveredShare)).toBe(true);
      expect(Math.abs(log.imbalanceG)).toBeLessThan(1e-14);
    }
    const { litresToChange, daysToChange } = metallicExchange({
      ironG: 1000,
      utilisation: 0.5,
      silverGPerL: 1e-320,
      share: 0.5,
      litresPerDay: 1e-300,
    });
    expect([litresToChange, daysToChange]).toEqual([null, null]);
  });
  it("names the first day above the limit, or none", () => {
    const days = unevenDays(40).map((day) => ({ ...day, areaM2: 3 }));
    const log = silverOverDays({ ...fixer, limitGPerL: 4 }, days);
    const first = log.days.find((day) => day.silverGPerL > 4)?.date;
    expect(log.aboveLimitOn).toBe(first);
    expect(first).toBeDefined();
    expect(silverOverDays({ ...fixer, limitGPerL: 20 }, days).aboveLimitOn).toBeNull();
  });
  it("is reported and not computed on when the level falls", () => {
    const open = { ...fixer, tank: { ...fixer.tank, evaporationMlPerDay: 200 } };
    const log = silverOverDays(open, unevenDays(10));
    expect(log.fallingOn).toBe("2026-03-08");
    expect(log.days).toHaveLength(6);
    expect(log.warnings[0]).toContain("The tank falls by 200 mL a day");
  });
  it("always defers to local codes", () => {
    const { cautions } = silverOverDays(fixer, []);
    expect(cautions).toEqual(silverCautions);
    expect(cautions.join()).toContain("local discharge code");
  });
  it("refuses gaps in the days, negative coatings and more than a whole day of current", () => {
    const gap = unevenDays(4).filter((_, i) => i !== 2);
    expect(() => silverOverDays(fixer, gap)).toThrow("2026-03-04 is missing");
    expect(() => silverOverDays({ ...fixer, coatedGPerM2: -1 }, [])).toThrow("coatedGPerM2 is -1");
    expect(() => silverOverDays({ ...fixer, recovery: { ...cell, hoursPerDay: 25 } }, [])).toThrow(
      "hoursPerDay is 25",
    );
  });
});

describe("recovery", () => {
  it("plates 4.025 g for an ampere-hour, no more", () => {
    expect(electrolyticSilver({ currentA: 1, hours: 1, currentEfficiency: 1 })).toBeCloseTo(
      4.0247,
      4,
    );
    expect(() => electrolyticSilver({ currentA: 1, hours: 1, currentEfficiency: 1.2 })).toThrow(
      "currentEfficiency is 1.2",
    );
  });
  it("needs the hours that plate the mass", () => {
    const hours = hoursToPlate({ silverG: 100, currentA: 6, currentEfficiency: 0.7 });
    expect(electrolyticSilver({ currentA: 6, hours, currentEfficiency: 0.7 })).toBeCloseTo(100, 10);
  });
  it("by exchange gives two atoms of silver for one of iron", () => {
    const exchange = metallicExchange({
      ironG: 55.845,
      utilisation: 1,
      silverGPerL: 4,
      share: 1,
      litresPerDay: 2,
    });
    expect(exchange.capacityG).toBeCloseTo(2 * 107.8682, 9);
    expect(exchange.daysToChange).toBeCloseTo((2 * 107.8682) / 8, 9);
    expect(exchange.ironGPerL).toBeCloseTo((4 * 55.845) / (2 * 107.8682), 12);
    expect(exchange.afterOneMgPerL).toBe(0);
  });
  it("by two cartridges in series passes the square of what one passes", () => {
    const { afterOneMgPerL, afterTwoMgPerL } = metallicExchange({
      ironG: 1000,
      utilisation: 0.5,
      silverGPerL: 4,
      share: 0.95,
    });
    expect(afterOneMgPerL).toBeCloseTo(200, 9);
    expect(afterTwoMgPerL).toBeCloseTo(10, 9);
  });
  it("of a fixer without silver is never due", () => {
    const { litresToChange, daysToChange } = metallicExchange({
      ironG: 1000,
      utilisation: 0.5,
      silverGPerL: 0,
      share: 0.95,
      litresPerDay: 2,
    });
    expect([litresToChange, daysToChange]).toEqual([null, null]);
  });
});

describe("what goes down the drain", () => {
  it("is what no step took, and all that went by them", () => {
    const waste = silverDischarge({
      treatedG: 100,
      untreatedG: 0.2,
      recoveryShares: [0.95, 0.9],
      waterL: 500,
      limitMgPerL: 1,
    });
    expect(waste.toDrainG).toBeCloseTo(0.7, 12);
    expect(waste.mgPerL).toBeCloseTo(1.4, 12);
    expect(waste.withinLimit).toBe(false);
    expect(waste.recoveredG + waste.toDrainG).toBeCloseTo(100.2, 12);
  });
  it("is judged by the caller's limit alone; the threshold only warns", () => {
    const waste = silverDischarge({ treatedG: 10, waterL: 1000 });
    expect(waste.withinLimit).toBeNull();
    expect(waste.aboveToxicityThreshold).toBe(true);
    expect(waste.assumptions.join()).toContain("forbid diluting");
    expect(silverToxicityThreshold.note).toContain("not a permission to discharge");
  });
  it("refuses shares above one and water of nothing", () => {
    expect(() => silverDischarge({ treatedG: 1, recoveryShares: [1.5], waterL: 1 })).toThrow(
      "recoveryShares[0] is 1.5",
    );
    expect(() => silverDischarge({ treatedG: 1, waterL: 0 })).toThrow("waterL is 0");
  });
});

describe("the data of silver", () => {
  it("gives ranges with their weak source, and goals below one", () => {
    for (const { lowGPerM2, highGPerM2, howObtained } of coatedSilver) {
      expect(lowGPerM2).toBeLessThan(highGPerM2);
      expect(howObtained).toContain("weak source");
    }
    for (const { share } of recoveryGoals) expect(share).toBeLessThan(1);
  });
  it("removed is weight times area times fraction", () => {
    expect(silverRemoved({ coatedGPerM2: 5, areaM2: 0, fractionRemoved: 1 })).toBe(0);
    expect(() => silverRemoved({ coatedGPerM2: 5, areaM2: 1, fractionRemoved: 1.2 })).toThrow(
      "fractionRemoved is 1.2",
    );
  });
  it("found by titration warns of what is titrated with", () => {
    const { mgPerMl, cautions } = silverByTitration({
      sampleMl: 10,
      titrantMl: 0,
      normality: 0.00926,
    });
    expect(mgPerMl).toBeCloseTo(0.99886, 5);
    expect(cautions[0]).toContain("fume hood");
  });
});
