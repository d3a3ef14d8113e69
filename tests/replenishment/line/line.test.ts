import { describe, expect, it } from "vitest";
import {
  counterCurrentRatio,
  counterCurrentResidual,
  lineFlows,
  type TankLine,
  tankLineOverTime,
  tankLineSteadyState,
  tankStepResponse,
} from "wetside/replenishment";
import { integrateOde } from "../odex.ts";

// The integrator works to 1e-13 a step; the demand on both together is 1e-8.
const INTEGRATOR = 1e-8;
// A matrix exponential of up to a dozen squarings.
const ROUNDING = 1e-10;

/** A film line, illustrative: developer, fixer, and a counter-current wash of three. */
const line: TankLine = {
  enteringMlPerM2: 0,
  tanks: [
    {
      name: "developer",
      volumeL: 20,
      rateMlPerM2: 600,
      carryOverMlPerM2: 60,
      evaporationMlPerDay: 100,
    },
    { name: "fixer", volumeL: 16, rateMlPerM2: 800, carryOverMlPerM2: 60 },
    { name: "wash 1", volumeL: 8, carryOverMlPerM2: 60 },
    { name: "wash 2", volumeL: 8, carryOverMlPerM2: 60, overflowTo: "wash 1" },
    {
      name: "wash 3",
      volumeL: 8,
      carryOverMlPerM2: 40,
      feedMlPerDay: 12_000,
      overflowTo: "wash 2",
    },
  ],
  components: [
    {
      name: "bromide",
      inTanks: { developer: { startGPerL: 1.2, feedGPerL: 0.3, releasedGPerM2: 0.6 } },
    },
    {
      name: "thiosulfate",
      inTanks: { fixer: { startGPerL: 120, feedGPerL: 130, lossPerDay: 0.002 } },
    },
    { name: "silver", inTanks: { fixer: { releasedGPerM2: 4 } } },
  ],
};

/** A counter-current wash of so many tanks, water R times the carry-over, 1 g/L carried in. */
function wash(stages: number, ratio: number): TankLine {
  return {
    enteringMlPerM2: 50,
    tanks: Array.from({ length: stages }, (_, i) => ({
      name: `wash ${i + 1}`,
      volumeL: 10,
      carryOverMlPerM2: 50,
      ...(i === stages - 1 ? { rateMlPerM2: 50 * ratio } : {}),
      ...(i > 0 ? { overflowTo: `wash ${i}` } : {}),
    })),
    components: [{ name: "thiosulfate", enteringGPerL: 1, inTanks: {} }],
  };
}

describe("the flows of a line", () => {
  it("balance in every tank", () => {
    for (const each of lineFlows(line, 5)) {
      const inL = each.carryInL + each.feedL + each.fromTanksL;
      expect(inL).toBeCloseTo(each.evaporationL + each.carryOutL + each.overflowL, 12);
    }
  });
  it("run counter to the film where overflows say so", () => {
    const overflows = lineFlows(line, 5).map((tank) => [tank.name, tank.overflowL]);
    // 12 L of water; wash 3 passes on 0.1 L a day less with the film than reaches it.
    expect(overflows.slice(2)).toEqual([
      ["wash 1", expect.closeTo(12.1, 12)],
      ["wash 2", expect.closeTo(12.1, 12)],
      ["wash 3", expect.closeTo(12.1, 12)],
    ]);
  });
  it("refuse circles, unknown tanks, and names that occur twice", () => {
    const [a, b] = line.tanks;
    if (a === undefined || b === undefined) throw new Error("no tanks");
    const flows =
      (...tanks: TankLine["tanks"]) =>
      () =>
        lineFlows({ ...line, tanks }, 5);
    expect(flows({ ...a, overflowTo: "fixer" }, { ...b, overflowTo: "developer" })).toThrow(
      "developer → fixer → developer",
    );
    expect(flows({ ...a, overflowTo: "river" }, b)).toThrow(
      'write "drain" or another tank of the line: "fixer"',
    );
    expect(flows({ ...a, overflowTo: "developer" }, b)).toThrow("overflowTo of developer");
    expect(flows(a, a)).toThrow("write each name once");
    expect(flows()).toThrow("at least one tank");
    expect(flows({ ...a, rateMlPerM2: -1 })).toThrow("rateMlPerM2 of developer is -1");
    expect(flows({ ...a, volumeL: "5 gal" as unknown as number })).toThrow("18.927");
  });
  it("report a tank that falls, and nothing is computed on it", () => {
    const dry = { ...line, tanks: line.tanks.map((tank) => ({ ...tank, rateMlPerM2: 0 })) };
    expect(lineFlows(dry, 5)[0]?.overflowL).toBeCloseTo(-0.4, 12);
    const settled = tankLineSteadyState(dry, 5);
    const inTime = tankLineOverTime(dry, 5, [0, 1]);
    for (const { falling, warnings, flows } of [settled, inTime]) {
      expect(falling).toEqual([{ name: "developer", mlPerDay: expect.closeTo(400, 9) }]);
      expect(warnings).toEqual([
        "developer falls: it loses 400 mL a day more than it gains. Concentrations are not computed; feed it more, top it up, or correct carry-over and evaporation.",
      ]);
      expect(flows).toEqual(lineFlows(dry, 5));
    }
    expect(inTime.moments).toEqual([]);
    expect(settled.concentrationGPerL.silver).toEqual({
      developer: null,
      fixer: null,
      "wash 1": null,
      "wash 2": null,
      "wash 3": null,
    });
    expect(settled.leavesGPerDay.silver).toEqual({});
    expect(tankLineSteadyState(line, 5).falling).toEqual([]);
    expect(() => tankLineOverTime(dry, 5, [-1])).toThrow("days[0] is -1");
  });
});

describe("a line over time", () => {
  it("keeps every gram of every component", () => {
    const { moments } = tankLineOverTime(line, 5, [0, 0.01, 1, 30, 365]);
    for (const moment of moments) {
      for (const component of ["bromide", "thiosulfate", "silver"]) {
        const inTanks = Object.values(moment.concentrationGPerL[component] ?? {}).map(
          (gPerL) => gPerL ?? Number.NaN,
        );
        const grams = inTanks.reduce((sum, c, i) => sum + c * (line.tanks[i]?.volumeL ?? 0), 0);
        const left = Object.values(moment.leftG[component] ?? {}).reduce((sum, g) => sum + g, 0);
        const imbalance = Math.abs(moment.imbalanceG[component] ?? Number.NaN);
        expect(imbalance / Math.max(1, grams + left), component).toBeLessThan(ROUNDING);
      }
    }
  });
  it("agrees with an independent integrator", () => {
    const flows = lineFlows(line, 5);
    const volumes = line.tanks.map((tank) => tank.volumeL);
    const derivative = (_: number, c: readonly number[]) =>
      flows.map((flow, i) => {
        const inTank = line.components[1]?.inTanks[flow.name] ?? {};
        const into = flows
          .map((other, j) => (other.overflowTo === flow.name ? other.overflowL * (c[j] ?? 0) : 0))
          .reduce((sum, value) => sum + value, 0);
        const carried = i > 0 ? flow.carryInL * (c[i - 1] ?? 0) : 0;
        const out = (flow.overflowL + flow.carryOutL) * (c[i] ?? 0);
        const perDay = carried + into + flow.feedL * (inTank.feedGPerL ?? 0) - out;
        return perDay / (volumes[i] ?? Number.NaN) - (inTank.lossPerDay ?? 0) * (c[i] ?? 0);
      });
    const exact = tankLineOverTime(line, 5, [12]).moments[0]?.concentrationGPerL.thiosulfate ?? {};
    integrateOde(derivative, 0, [0, 120, 0, 0, 0], 12).forEach((value, i) => {
      const name = flows[i]?.name ?? "";
      expect(Math.abs((exact[name] ?? Number.NaN) - value), name).toBeLessThan(INTEGRATOR * 130);
    });
  });
  it("is the tank's own step response when there is one tank", () => {
    const tank = { volumeL: 20, rateMlPerM2: 600, carryOutMlPerM2: 60 };
    const bromide = { startGPerL: 1.2, releasedGPerM2: 0.6, lossPerDay: 0.01 };
    const one = { ...tank, components: [{ name: "bromide", replenisherGPerL: 0.3, ...bromide }] };
    const asLine: TankLine = {
      tanks: [{ name: "developer", volumeL: 20, rateMlPerM2: 600, carryOverMlPerM2: 60 }],
      components: [{ name: "bromide", inTanks: { developer: { feedGPerL: 0.3, ...bromide } } }],
    };
    const days = [0, 0.5, 3, 40];
    const alone = tankStepResponse(one, 5, days).map(
      (m) => m.concentrationGPerL.bromide ?? Number.NaN,
    );
    const inLine = tankLineOverTime(asLine, 5, days).moments.map(
      (m) => m.concentrationGPerL.bromide?.developer ?? Number.NaN,
    );
    alone.forEach((value, i) => {
      expect(Math.abs((inLine[i] ?? Number.NaN) / value - 1)).toBeLessThan(ROUNDING);
    });
  });
  it("ends where the steady state is, and there as much leaves as comes", () => {
    const settled = tankLineSteadyState(line, 5);
    const [end] = tankLineOverTime(line, 5, [2000]).moments;
    for (const [component, tanks] of Object.entries(settled.concentrationGPerL)) {
      for (const [tank, value] of Object.entries(tanks)) {
        const then = end?.concentrationGPerL[component]?.[tank] ?? Number.NaN;
        expect(Math.abs(then - (value ?? Number.NaN)), `${component} ${tank}`).toBeLessThan(1e-8);
      }
    }
    const leaves = Object.values(settled.leavesGPerDay.silver ?? {}).reduce((sum, g) => sum + g, 0);
    expect(leaves).toBeCloseTo(20, 10);
  });
  it("warns when a component is used up", () => {
    const starved: TankLine = {
      tanks: [{ name: "developer", volumeL: 10, rateMlPerM2: 600, carryOverMlPerM2: 60 }],
      components: [{ name: "agent", inTanks: { developer: { startGPerL: 1, consumedGPerM2: 2 } } }],
    };
    // 10 L at 1 g/L, 10 g a day asked for, 3 L a day leave: empty after ln(1 + 0.3)/0.3 = 0.875 days.
    const { moments, warnings } = tankLineOverTime(starved, 5, [10, 0.87, 0.88]);
    expect(warnings).toEqual([
      "agent is used up in developer by day 0.88: more is asked for than comes in, and it is not computed from there on.",
    ]);
    expect(moments.map((moment) => moment.concentrationGPerL.agent?.developer)).toEqual([
      null,
      expect.closeTo((13 * Math.exp(-0.261) - 10) / 3, 12),
      null,
    ]);
    expect(moments[0]?.leftG.agent).toEqual({});
    const settled = tankLineSteadyState(starved, 5);
    expect(settled.concentrationGPerL.agent?.developer).toBeNull();
    expect(settled.leavesGPerDay.agent).toEqual({});
  });
  it("does not settle where two tanks only feed each other", () => {
    const tanks = [
      { name: "bath", volumeL: 10, carryOverMlPerM2: 40, evaporationMlPerDay: 1000 },
      { name: "rinse", volumeL: 10, carryOverMlPerM2: 0, feedMlPerDay: 1000, overflowTo: "bath" },
    ];
    const inTanks = { bath: { releasedGPerM2: 1 } };
    const closed: TankLine = { tanks, components: [{ name: "salt", inTanks }] };
    const { concentrationGPerL, leavesGPerDay, warnings } = tankLineSteadyState(closed, 5);
    expect(concentrationGPerL.salt).toEqual({ bath: null, rinse: null });
    expect(leavesGPerDay.salt).toEqual({});
    expect(warnings[0]).toContain("salt: nothing leaves one of the tanks");
    const [later] = tankLineOverTime(closed, 5, [10]).moments;
    const gPerL = Object.values(later?.concentrationGPerL.salt ?? {}).map((c) => c ?? Number.NaN);
    expect(10 * gPerL.reduce((sum, c) => sum + c, 0)).toBeCloseTo(50, 9);
  });
  it("gives no number that is not finite where next to nothing leaves", () => {
    const tanks = [
      { name: "dip", volumeL: 10, carryOverMlPerM2: 0, rateMlPerM2: 1e-320 },
      { name: "wash", volumeL: 10, carryOverMlPerM2: 40, feedMlPerDay: 1000 },
    ];
    const inTanks = { dip: { releasedGPerM2: 1 } };
    const settled = tankLineSteadyState({ tanks, components: [{ name: "silver", inTanks }] }, 5);
    expect(settled.concentrationGPerL.silver).toEqual({ dip: null, wash: null });
    expect(settled.warnings[0]).toContain("never settles");
  });
  it("does not settle where nothing leaves", () => {
    const closed: TankLine = {
      tanks: [{ name: "dip", volumeL: 10, carryOverMlPerM2: 0 }],
      components: [{ name: "silver", inTanks: { dip: { releasedGPerM2: 1 } } }],
    };
    const { concentrationGPerL, warnings } = tankLineSteadyState(closed, 5);
    expect(concentrationGPerL).toEqual({ silver: { dip: null } });
    expect(warnings[0]).toContain("never settles");
    expect(tankLineOverTime(closed, 5, [2]).moments[0]?.concentrationGPerL.silver?.dip).toBeCloseTo(
      1,
      12,
    );
  });
  it("refuses components in tanks that are not there", () => {
    const wrong = {
      ...line,
      components: [{ name: "silver", inTanks: { fixr: { releasedGPerM2: 1 } } }],
    };
    expect(() => tankLineSteadyState(wrong, 5)).toThrow(
      'inTanks of silver is "fixr"; write one of "developer"',
    );
    expect(() => tankLineOverTime(line, 5, [-1])).toThrow("days[0] is -1");
  });
});

describe("a counter-current wash", () => {
  it("is the closed form at steady state, for one to six tanks", () => {
    for (let stages = 1; stages <= 6; stages++) {
      for (const ratio of [0.5, 1, 3, 20]) {
        const { concentrationGPerL } = tankLineSteadyState(wash(stages, ratio), 8);
        const last = concentrationGPerL.thiosulfate?.[`wash ${stages}`] ?? Number.NaN;
        const closed = ratio === 1 ? 1 / (stages + 1) : (ratio - 1) / (ratio ** (stages + 1) - 1);
        expect(Math.abs(last / closed - 1)).toBeLessThan(ROUNDING);
        expect(Math.abs(counterCurrentResidual({ ratio, stages }) / closed - 1)).toBeLessThan(
          1e-13,
        );
      }
    }
  });
  it("needs the water that its residual asks for", () => {
    for (const stages of [1, 2, 5, 20]) {
      for (const dilution of [1, 1.5, 100, 1e9]) {
        const ratio = counterCurrentRatio({ dilution, stages });
        expect(counterCurrentResidual({ ratio, stages }) * dilution).toBeCloseTo(1, 9);
      }
    }
  });
  it("needs less than R^(1/n) + 1/n, whose second term has the wrong sign", () => {
    const ratio = counterCurrentRatio({ dilution: 1000, stages: 2 });
    expect(ratio).toBeLessThan(1000 ** (1 / 2));
    expect(ratio).toBeCloseTo(1000 ** (1 / 2) - 1 / 2, 1);
  });
  it("leaves everything without water", () => {
    expect(counterCurrentResidual({ ratio: 0, stages: 3 })).toBe(1);
    expect(() => counterCurrentResidual({ ratio: -1, stages: 3 })).toThrow("ratio is -1");
    expect(() => counterCurrentRatio({ dilution: 0.5, stages: 3 })).toThrow("dilution is 0.5");
    expect(() => counterCurrentRatio({ dilution: 10, stages: 2.5 })).toThrow("whole number");
  });
});
