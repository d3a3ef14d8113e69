import { describe, expect, it } from "vitest";
import {
  type BathTank,
  breakEvenUtilisation,
  lowUtilisationRate,
  rateForSteadyState,
  replenisherForRate,
  tankFlows,
  tankSteadyState,
  tankStepResponse,
  waterToTopUp,
} from "wetside/replenishment";
import { developer } from "./example-tank.ts";

// Quotients of a few doubles.
const ROUNDING = 1e-12;
const steadyOf = (tank: BathTank, area: number, name: string) =>
  tankSteadyState(tank, area).components.find((each) => each.name === name)?.steadyGPerL ??
  Number.NaN;

describe("the steady state of a tank", () => {
  it("is where the step response ends", () => {
    const settled = tankSteadyState(developer, 3);
    const slowest = Math.max(...settled.components.map((each) => each.timeConstantDays ?? 0));
    const [end] = tankStepResponse(developer, 3, [40 * slowest]);
    for (const { name, steadyGPerL } of settled.components) {
      const gap = (end?.concentrationGPerL[name] ?? Number.NaN) / (steadyGPerL ?? Number.NaN) - 1;
      expect(Math.abs(gap), name).toBeLessThan(ROUNDING);
    }
  });
  it("is reached to 63 % in one time constant, whatever the component", () => {
    const { components } = tankSteadyState(developer, 3);
    for (const { name, steadyGPerL, timeConstantDays } of components) {
      const start = developer.components.find((each) => each.name === name)?.startGPerL ?? 0;
      const [then] = tankStepResponse(developer, 3, [timeConstantDays ?? 0]);
      const share = ((then?.concentrationGPerL[name] ?? 0) - start) / ((steadyGPerL ?? 0) - start);
      expect(share).toBeCloseTo(1 - Math.exp(-1), 10);
    }
  });
  it("is null without a way out, and says so", () => {
    const closed = {
      volumeL: 10,
      rateMlPerM2: 0,
      components: [{ name: "bromide", replenisherGPerL: 0, releasedGPerM2: 1 }],
    };
    const { components, warnings, turnoverM2, turnoverDays } = tankSteadyState(closed, 2);
    expect(components).toEqual([{ name: "bromide", steadyGPerL: null, timeConstantDays: null }]);
    expect([turnoverM2, turnoverDays]).toEqual([null, null]);
    expect(warnings[0]).toContain("nothing leaves the tank");
  });
  it("is null where the replenisher brings less than is used", () => {
    const poor = {
      volumeL: 10,
      rateMlPerM2: 100,
      components: [{ name: "agent", replenisherGPerL: 1, consumedGPerM2: 1 }],
    };
    const { components, warnings } = tankSteadyState(poor, 2);
    expect(components[0]?.steadyGPerL).toBeNull();
    expect(warnings[0]).toContain("uses up more than the replenisher brings");
  });
  it("is not computed for a tank that falls; the flows still are", () => {
    const { flows, components, warnings } = tankSteadyState({ ...developer, topUp: "none" }, 0.2);
    expect(flows.level).toBe("falling");
    // 120 mL replenisher and 6 mL carried in; 250 mL evaporate, 14 mL are carried out.
    expect(flows.shortfallL).toBeCloseTo(0.138, 12);
    expect(components.every((each) => each.steadyGPerL === null)).toBe(true);
    expect(warnings[0]).toContain("falls by 138 mL a day");
    expect(() => tankStepResponse({ ...developer, topUp: "none" }, 0.2, [1])).toThrow("falling");
  });
  it("does not call equal flows a fall", () => {
    const even = {
      volumeL: 10,
      rateMlPerM2: 100,
      carryOutMlPerM2: 70,
      evaporationMlPerDay: 90,
      components: [],
    };
    expect(tankFlows(even, 3).level).toBe("holds");
  });
  it("tops up with exactly what is missing", () => {
    expect(waterToTopUp(developer, 0.2).waterMlPerDay).toBeCloseTo(138, 9);
    expect(waterToTopUp(developer, 3).waterMlPerDay).toBe(0);
  });
});

describe("the rate for a wanted steady state", () => {
  it("gives that steady state back, for use and for release", () => {
    for (const [component, aim] of [
      ["developing agent", 3.4],
      ["bromide", 1.1],
      ["alkali", 34],
    ] as const) {
      const { rateMlPerM2 } = rateForSteadyState(developer, 12, {
        component,
        concentrationGPerL: aim,
      });
      const reached = steadyOf({ ...developer, rateMlPerM2 }, 12, component);
      expect(Math.abs(reached / aim - 1), component).toBeLessThan(ROUNDING);
    }
  });
  it("splits into a part for the area and a part for the day", () => {
    const aim = { component: "developing agent", concentrationGPerL: 3.4 };
    const at = (area: number) => rateForSteadyState(developer, area, aim);
    expect(at(4).perAreaMlPerM2).toBeCloseTo(at(8).perAreaMlPerM2, 9);
    expect(at(4).rateMlPerM2).toBeCloseTo(at(4).perAreaMlPerM2 + at(4).standingMlPerDay / 4, 9);
  });
  it("and the replenisher for a wanted rate are each other's inverse", () => {
    const aim = { component: "bromide", concentrationGPerL: 1.1 };
    const strength = replenisherForRate(developer, 4, aim);
    const tank = {
      ...developer,
      components: developer.components.map((each) =>
        each.name === "bromide" ? { ...each, replenisherGPerL: strength } : each,
      ),
    };
    expect(rateForSteadyState(tank, 4, aim).rateMlPerM2).toBeCloseTo(600, 8);
    expect(steadyOf(tank, 4, "bromide")).toBeCloseTo(1.1, 12);
  });
  it("refuses an aim on the wrong side of the replenisher", () => {
    const ask = (component: string, concentrationGPerL: number) => () =>
      rateForSteadyState(developer, 4, { component, concentrationGPerL });
    expect(ask("developing agent", 6)).toThrow("must be stronger than the 6 g/L");
    expect(ask("developing agent", 5.2)).toThrow("must be stronger");
    expect(ask("bromide", 0.2)).toThrow("must be weaker");
    expect(ask("bromid", 1)).toThrow('write one of "developing agent", "bromide"');
  });
  it("says which rate would do when no replenisher can", () => {
    const ask = () =>
      replenisherForRate({ ...developer, rateMlPerM2: 200 }, 4, {
        component: "bromide",
        concentrationGPerL: 1.1,
      });
    expect(ask).toThrow(/write a rate of at least \d+ mL/);
    const least = Number(/at least (\d+) mL/.exec(String(catching(ask)))?.[1]);
    const aim = { component: "bromide", concentrationGPerL: 1.1 };
    expect(replenisherForRate({ ...developer, rateMlPerM2: least }, 4, aim)).toBeGreaterThanOrEqual(
      0,
    );
    expect(() => replenisherForRate({ ...developer, rateMlPerM2: least - 1 }, 4, aim)).toThrow();
  });
});

function catching(run: () => unknown): unknown {
  try {
    return run();
  } catch (error) {
    return error;
  }
}

describe("low utilisation", () => {
  const agent = { component: "developing agent", concentrationGPerL: 3.4 };
  const covered = { ...developer, evaporationMlPerDay: 0 };
  it("breaks even where loss by itself equals what the film uses", () => {
    const { lossEqualsUseM2PerDay, lossGPerDay } = breakEvenUtilisation(covered, agent);
    expect(lossGPerDay).toBeCloseTo(0.01 * 20 * 3.4, 12);
    expect((lossEqualsUseM2PerDay ?? 0) * 0.9).toBeCloseTo(lossGPerDay, 12);
  });
  it("names the load from which the present rate holds the aim", () => {
    const { rateHoldsFromM2PerDay } = breakEvenUtilisation(covered, agent);
    const load = rateHoldsFromM2PerDay ?? Number.NaN;
    expect(steadyOf(covered, load, "developing agent")).toBeCloseTo(3.4, 10);
    expect(steadyOf(covered, load / 2, "developing agent")).toBeLessThan(3.4);
    expect(steadyOf(covered, load * 2, "developing agent")).toBeGreaterThan(3.4);
  });
  it("asks for more the less there is to do, and washes the bromide out", () => {
    const at = (area: number) => lowUtilisationRate(covered, area, agent);
    expect(at(0.5).rateMlPerM2).toBeGreaterThan(at(1).rateMlPerM2);
    expect(at(1).rateMlPerM2).toBeGreaterThan(at(10).rateMlPerM2);
    expect(at(1e6).factor).toBeCloseTo(1, 4);
    const bromide = (area: number) =>
      at(area).settled.components.find(({ name }) => name === "bromide")?.steadyGPerL ?? 0;
    expect(bromide(0.5)).toBeLessThan(bromide(10));
  });
  it("says when no load is enough, or any is", () => {
    const weak = { ...covered, rateMlPerM2: 100 };
    expect(breakEvenUtilisation(weak, agent).rateHoldsFromM2PerDay).toBeNull();
    // 0.1 L brings 0.1·(5.2 − 3.4) = 0.18 g above the aim; film takes 0.9 g and 30 mL of water thin
    // by 0.03·3.4 = 0.102 g.
    expect(breakEvenUtilisation(weak, agent).warnings[0]).toContain("takes 0.822 g more");
    expect(breakEvenUtilisation(covered, agent).warnings).toEqual([]);
    const stable = {
      ...covered,
      components: [{ name: "developing agent", replenisherGPerL: 9, consumedGPerM2: 0.1 }],
    };
    expect(breakEvenUtilisation(stable, agent).rateHoldsFromM2PerDay).toBe(0);
  });
  it("says so when the air concentrates the bath faster than its work uses it", () => {
    const open = { ...developer, evaporationMlPerDay: 1500, topUp: "none" as const };
    expect(() => lowUtilisationRate(open, 0.5, agent)).toThrow(
      /cover the tank.*or let water top up the level/,
    );
  });
  it("finds the rate of a tank that evaporates more than it is fed and is topped up with water", () => {
    const open = { ...developer, evaporationMlPerDay: 1500 };
    // r = (w_o·c − w_i·c_i + q + k·V·c/a)/c_r = (0.07·3.4 + 0.9 + 0.01·20·3.4/0.5)/5.2 L/m²
    const { rateMlPerM2, settled } = rateForSteadyState(open, 0.5, agent);
    expect(rateMlPerM2).toBeCloseTo((1000 * (0.07 * 3.4 + 0.9 + 1.36)) / 5.2, 9);
    expect(settled.flows.overflowL).toBe(0);
    expect(settled.flows.waterL).toBeGreaterThan(1);
    const low = lowUtilisationRate(open, 0.5, agent);
    expect(low.rateMlPerM2).toBe(rateMlPerM2);
    // A busy line overflows, whatever evaporates: (w_i·c + q)/(c_r − c).
    expect(low.busyRateMlPerM2).toBeCloseTo((1000 * (0.03 * 3.4 + 0.9)) / (5.2 - 3.4), 9);
    expect(() =>
      rateForSteadyState(open, 0.5, { component: "bromide", concentrationGPerL: 50 }),
    ).toThrow("write a stronger replenisher, or a lower aim");
  });
  it("asks for more work, or feeding by the day, where no rate per area can do it", () => {
    expect(() => lowUtilisationRate(covered, 1e-6, agent)).toThrow("or feed by the day");
    expect(() => lowUtilisationRate({ ...developer }, 1e-310, agent)).toThrow("feed by the day");
  });
  it("knows that water which tops up the level holds no agent", () => {
    const open = { ...developer, evaporationMlPerDay: 300 };
    const load = breakEvenUtilisation(open, agent).rateHoldsFromM2PerDay ?? Number.NaN;
    // k·V·c/(r·c_r − w_o·c − q), far below the load from which on the tank overflows.
    expect(load).toBeCloseTo(0.68 / (0.6 * 5.2 - 0.07 * 3.4 - 0.9), 12);
    expect(steadyOf(open, load, "developing agent")).toBeCloseTo(3.4, 10);
    expect(steadyOf(open, load / 2, "developing agent")).toBeLessThan(3.4);
    for (const times of [1.1, 1.5, 2, 5, 50]) {
      expect(steadyOf(open, load * times, "developing agent")).toBeGreaterThan(3.4);
    }
  });
  it("counts a level that falls as not held", () => {
    const open = { ...developer, evaporationMlPerDay: 300, topUp: "none" as const };
    const { rateHoldsFromM2PerDay, warnings } = breakEvenUtilisation(open, agent);
    expect(rateHoldsFromM2PerDay).toBeCloseTo(0.3 / (0.6 + 0.03 - 0.07), 12);
    expect(warnings).toEqual([
      'Below 0.536 m² a day the level falls; top up with water (topUp: "water").',
    ]);
    const dry = breakEvenUtilisation({ ...open, rateMlPerM2: 30 }, agent);
    expect(dry.rateHoldsFromM2PerDay).toBeNull();
    expect(dry.warnings[0]).toContain("falls at every load");
  });
  it("says between which loads a rate holds that only evaporation makes enough", () => {
    const open = { ...developer, evaporationMlPerDay: 900, rateMlPerM2: 400 };
    const { rateHoldsFromM2PerDay, warnings } = breakEvenUtilisation(open, agent);
    expect(rateHoldsFromM2PerDay).toBeNull();
    const [, from, to] = (/from ([\d.]+) to ([\d.]+) m²/.exec(warnings[0] ?? "") ?? []).map(Number);
    for (const end of [from, to]) {
      // The sentence has three digits.
      expect(steadyOf(open, end ?? Number.NaN, "developing agent")).toBeCloseTo(3.4, 2);
    }
  });
  it("takes equal flows for no overflow, whichever way they round", () => {
    const still = { ...developer, carryInMlPerM2: 0, carryOutMlPerM2: 0, rateMlPerM2: 100 };
    for (const [evaporationMlPerDay, load] of [
      [300, 3],
      [70, 0.7],
    ] as const) {
      const { flows, components } = tankSteadyState({ ...still, evaporationMlPerDay }, load);
      expect([flows.overflowL, flows.waterL, flows.level]).toEqual([0, 0, "holds"]);
      expect(components.find(({ name }) => name === "bromide")?.steadyGPerL).toBeNull();
    }
  });
  it("has no answer for a load of nothing", () => {
    expect(() => lowUtilisationRate(covered, 0, agent)).toThrow("greater than 0 m²/day");
  });
});

describe("a tank that cannot be meant", () => {
  const flows = (change: object) => () => tankFlows({ ...developer, ...change } as BathTank, 3);
  it("answers gallons with litres", () => {
    expect(flows({ volumeL: "5 gal" })).toThrow(
      "18.927 for US gallons, 22.73 for imperial gallons",
    );
    expect(flows({ volumeL: "5.5 US gallons" })).toThrow("20.82 for US gallons");
  });
  it("answers other units, decimal commas and volumes under other names with what to write", () => {
    expect(flows({ volumeL: "20 L" })).toThrow("write litres, the number alone: 20");
    expect(flows({ volumeL: "20000 ml" })).toThrow("the number alone: 20");
    expect(flows({ volumeL: "20,5" })).toThrow("a number, not text: 20.5");
    expect(flows({ volumeL: "5 imp gal" })).toThrow(/write litres: 22.73 for imperial gallons$/);
    expect(flows({ volumeL: "80 pints" })).toThrow(
      "37.854 for US pints, 45.461 for imperial pints",
    );
    const { volumeL: _, ...rest } = developer;
    const named = (change: object) => () => tankFlows({ ...rest, ...change } as BathTank, 3);
    expect(named({ volumeGal: 5 })).toThrow(
      "in place of volumeGal write volumeL in litres; write litres: 18.927 for US gallons",
    );
    expect(named({ volumeMl: 20000 })).toThrow("the number alone: 20");
    expect(named({ volume: 20 })).toThrow(/in place of volume write volumeL in litres$/);
    expect(named({})).toThrow("volumeL is missing");
  });
  it("suspects the unit when a tank turns over many times a day", () => {
    expect(tankFlows({ ...developer, volumeL: 0.02 }, 3).warnings[0]).toContain(
      "volumeL is in litres",
    );
  });
  it("refuses negative rates, flows and losses", () => {
    expect(flows({ rateMlPerM2: -1 })).toThrow("rateMlPerM2 is -1");
    expect(flows({ carryInMlPerM2: -1 })).toThrow("carryInMlPerM2 is -1");
    expect(flows({ evaporationMlPerDay: Number.NaN })).toThrow("evaporationMlPerDay is NaN");
    expect(flows({ volumeL: 0 })).toThrow("volumeL is 0");
    expect(flows({ topUp: "wine" })).toThrow('write one of "none", "water"');
    expect(() => tankFlows(developer, -1)).toThrow("areaM2PerDay is -1");
  });
  it("refuses components without a name, twice the same, or with impossible numbers", () => {
    const one = { name: "bromide", replenisherGPerL: 1 };
    expect(flows({ components: [one, one] })).toThrow("write each component once");
    expect(flows({ components: [{ ...one, name: "" }] })).toThrow('a name like "bromide"');
    expect(flows({ components: [{ ...one, lossPerDay: -0.1 }] })).toThrow(
      "lossPerDay of bromide is -0.1",
    );
    expect(flows({ components: undefined })).toThrow("write a list like");
  });
});
