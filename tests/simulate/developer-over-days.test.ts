import { describe, expect, it } from "vitest";
import { tankOverDays } from "wetside/replenishment";
import { consecutiveDays } from "../../lib/simulate/days.ts";
import {
  type DeveloperHistory,
  type DeveloperState,
  developerOverDays,
} from "../../lib/simulate/developer-over-days.ts";
import { developerAims, developerTank } from "../../lib/simulate/developer-tank.ts";
import type { CheckedFault } from "../../lib/simulate/simulated-fault.ts";
import { simulatedLines } from "../../lib/simulate/simulated-line.ts";

// Concentrations over some months in doubles.
const ROUNDING = 1e-10;

const bath = simulatedLines[0]?.baths[0];
if (bath === undefined) throw new Error("the film line has a developer");
const rateMlPerM2 = bath.rateMlPerM2 ?? Number.NaN;

const DAYS = 60;
const days = consecutiveDays("test", "2026-05-17", DAYS);
const areaM2 = days.map((_, i) => [0.9, 3.5, 2.6, 0, 2.5, 3, 3.2][i % 7] ?? 0);
const usual: DeveloperHistory = {
  bath,
  days,
  areaM2,
  deliveredMl: areaM2.map((area) => area * rateMlPerM2),
  mixStrength: days.map(() => 1),
  faults: [],
};
const mean = usual.deliveredMl.reduce((sum, ml) => sum + ml, 0) / DAYS;

function fault(kind: string, size: number, fromDay: number, untilDay = DAYS): CheckedFault {
  return { kind, line: "film", size, fromDay, untilDay };
}

function of(state: DeveloperState | undefined, name: string): number {
  return state?.[name] ?? Number.NaN;
}

/** Tank turnovers from the morning of one day to that of another. */
function turnovers(from: number, until: number): number {
  const ml = usual.deliveredMl.slice(from, until).reduce((sum, each) => sum + each, 0);
  return ml / 1000 / (bath?.volumeL ?? Number.NaN);
}

describe("the developer of a simulated line", () => {
  it("is none for no days", () => {
    expect(developerOverDays({ ...usual, days: [], mixStrength: [] })).toEqual([]);
  });

  it("stays at its aim at any load, since each square metre uses what its replenisher brings", () => {
    for (const { morning, evening } of developerOverDays(usual)) {
      for (const { name, aimGPerL } of developerAims) {
        expect(Math.abs(of(morning, name) - aimGPerL)).toBeLessThan(ROUNDING);
        expect(Math.abs(of(evening, name) - aimGPerL)).toBeLessThan(ROUNDING);
      }
      expect([morning.fixer, morning.bleach]).toEqual([0, 0]);
    }
  });

  it("is tankOverDays for the same days, to the last bit", () => {
    const deliveredMl = usual.deliveredMl.map((ml, i) => ml * (i < 20 ? 1 : 0.8));
    const faults = [fault("under-replenished", 0.2, 20)];
    const tank = developerTank(bath, { mixStrength: 1, agentLossPerDay: 0 });
    const log = tankOverDays(
      tank,
      days.map((date, i) => ({
        date,
        areaM2: areaM2[i] ?? 0,
        replenisherMl: deliveredMl[i] ?? 0,
      })),
    );
    expect(
      developerOverDays({ ...usual, deliveredMl, faults }).map(({ evening }) => evening),
    ).toEqual(log.days.map(({ concentrationGPerL }) => concentrationGPerL));
  });

  it("begins each day where the one before ended, if nothing happens overnight", () => {
    const deliveredMl = usual.deliveredMl.map((ml) => 0.7 * ml);
    const states = developerOverDays({ ...usual, deliveredMl });
    states.slice(1).forEach(({ morning }, i) => {
      expect(morning).toBe(states[i]?.evening);
    });
  });

  it("does not know in the evening what goes wrong next morning", () => {
    for (const [kind, size] of [
      ["developer-too-strong", 0.2],
      ["developer-too-weak", 0.2],
      ["developer-oxidised", 0.2],
      ["contaminated-with-fixer", 2],
      ["contaminated-with-bleach", 2],
    ] as const) {
      const states = developerOverDays({ ...usual, faults: [fault(kind, size, 30)] });
      const without = developerOverDays(usual);
      expect(states.slice(0, 30), kind).toEqual(without.slice(0, 30));
      expect(states[30]?.morning, kind).not.toEqual(without[30]?.morning);
    }
  });

  it("goes half way to where a new mix takes it in 0.69 turnovers", () => {
    // Agent: replenisher 4 % stronger ends 4 %·(replenisher over aim) above the aim.
    const [agent] = developerAims;
    const mixStrength = days.map((_, i) => (i < 20 ? 1 : 1.04));
    const states = developerOverDays({ ...usual, mixStrength });
    expect(of(states[19]?.evening, agent.name)).toBeCloseTo(agent.aimGPerL, 9);
    const end = 0.04 * agent.replenisherOverAim;
    states.slice(20).forEach(({ morning }, i) => {
      const shown = of(morning, agent.name) / agent.aimGPerL - 1;
      const expected = end * (1 - Math.exp(-turnovers(20, 20 + i)));
      expect(Math.abs(shown - expected)).toBeLessThan(ROUNDING);
    });
  });

  it("is a mix too strong at once in all, then in what the replenisher brings", () => {
    const states = developerOverDays({
      ...usual,
      faults: [fault("developer-too-strong", 0.1, 10)],
    });
    for (const { name, aimGPerL } of developerAims) {
      expect(of(states[10]?.morning, name) / aimGPerL).toBeCloseTo(1.1, 12);
    }
    // Bromide comes off the film: the surplus of the mix is washed out.
    const bromide = developerAims[1];
    const left = of(states[50]?.morning, bromide.name) / bromide.aimGPerL - 1;
    expect(Math.abs(left - 0.1 * Math.exp(-turnovers(10, 50)))).toBeLessThan(ROUNDING);
  });

  it("is washed free of what fell into it by e^(−turnovers)", () => {
    for (const what of ["fixer", "bleach"]) {
      const states = developerOverDays({
        ...usual,
        faults: [fault(`contaminated-with-${what}`, 2, 10)],
      });
      states.slice(10).forEach(({ morning }, i) => {
        const expected = 2 * Math.exp(-turnovers(10, 10 + i));
        expect(Math.abs(of(morning, what) - expected)).toBeLessThan(ROUNDING);
      });
    }
  });

  it("loses agent to the air so that the share stays at the average load, and more on idle days", () => {
    const level = { ...usual, areaM2: days.map(() => 2), deliveredMl: days.map(() => 1200) };
    const faults = [fault("developer-oxidised", 0.16, 10)];
    const agent = developerAims[0];
    for (const { morning } of developerOverDays({ ...level, faults }).slice(10)) {
      expect(of(morning, agent.name) / agent.aimGPerL).toBeCloseTo(0.84, 9);
    }
    const states = developerOverDays({ ...usual, faults });
    const idle = areaM2.findIndex((area, i) => area === 0 && i > 10);
    const perDay = ((mean / 1000 / bath.volumeL) * 0.16) / 0.84;
    const kept = of(states[idle]?.evening, agent.name) / of(states[idle]?.morning, agent.name);
    expect(Math.abs(kept - Math.exp(-perDay))).toBeLessThan(ROUNDING);
    expect(of(states[idle]?.evening, "alkali")).toBe(of(states[idle]?.morning, "alkali"));
  });

  it("is mixed afresh when what was wrong in it is mended", () => {
    const faults = [fault("contaminated-with-bleach", 2, 10, 14)];
    const states = developerOverDays({ ...usual, faults });
    expect(of(states[13]?.evening, "bleach")).toBeGreaterThan(1.5);
    expect(of(states[14]?.morning, "bleach")).toBe(0);
  });

  it("takes its turnovers to come back when a pump is mended", () => {
    const deliveredMl = usual.deliveredMl.map((ml, i) => ml * (i >= 10 && i < 30 ? 0.8 : 1));
    const faults = [fault("under-replenished", 0.2, 10, 30)];
    const states = developerOverDays({ ...usual, deliveredMl, faults });
    const off = (day: number) => of(states[day]?.morning, "bromide") / 1.2 - 1;
    expect(off(30)).toBeGreaterThan(0.1);
    expect(Math.abs(off(50) - off(30) * Math.exp(-turnovers(30, 50)))).toBeLessThan(ROUNDING);
  });
});
