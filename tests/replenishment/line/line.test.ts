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
  it("refuse to compute on a tank that falls", () => {
    const dry = { ...line, tanks: line.tanks.map((tank) => ({ ...tank, rateMlPerM2: 0 })) };
    expect(() => tankLineSteadyState(dry, 5)).toThrow(
      'tank developer is "falling"; it loses 400 mL a day',
    );
    expect(lineFlows(dry, 5)[0]?.overflowL).toBeCloseTo(-0.4, 12);
  });
});

describe("a line over time", () => {
  it("keeps every gram of every component", () => {
    const { moments } = tankLineOverTime(line, 5, [0, 0.01, 1, 30, 365]);
    for (const moment of moments) {
      for (const component of ["bromide", "thiosulfate", "silver"]) {
        const inTanks = Object.values(moment.concentrationGPerL[component] ?? {});
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
    expect(tankLineOverTime(starved, 5, [10]).warnings[0]).toContain(
      "agent is used up in developer",
    );
    expect(tankLineSteadyState(starved, 5).concentrationGPerL.agent?.developer).toBeNull();
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
