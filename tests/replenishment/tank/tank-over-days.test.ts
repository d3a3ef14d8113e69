import { describe, expect, it } from "vitest";
import { type BathTank, type TankDay, tankOverDays, tankStepResponse } from "wetside/replenishment";
import { integrateOde } from "../odex.ts";
import { developer, unevenDays } from "./example-tank.ts";

// The integrator works to 1e-13 a step; the demand on both together is 1e-8.
const INTEGRATOR = 1e-8;
// A year of sums in doubles.
const ROUNDING = 1e-11;

/** The balance written down once more, straight from the equation, for the independent integrator. */
function derivative(tank: BathTank, day: TankDay) {
  const { volumeL, carryInMlPerM2 = 0, carryOutMlPerM2 = 0, evaporationMlPerDay = 0 } = tank;
  const a = day.areaM2;
  const replenisher = day.replenisherMl ?? a * tank.rateMlPerM2;
  const out = Math.max(a * carryOutMlPerM2, replenisher + a * carryInMlPerM2 - evaporationMlPerDay);
  return (_: number, c: readonly number[]) =>
    tank.components.map((each, i) => {
      const { carryInGPerL = 0, releasedGPerM2 = 0, consumedGPerM2 = 0, lossPerDay = 0 } = each;
      const into = replenisher * each.replenisherGPerL + a * carryInMlPerM2 * carryInGPerL;
      const now = c[i] ?? Number.NaN;
      const net = a * (releasedGPerM2 - consumedGPerM2);
      return (into / 1000 - (out / 1000) * now + net) / volumeL - lossPerDay * now;
    });
}

function byIntegrator(tank: BathTank, days: readonly TankDay[]): readonly number[] {
  let state: readonly number[] = tank.components.map(({ startGPerL = 0 }) => startGPerL);
  for (const day of days) state = integrateOde(derivative(tank, day), 0, state, 1);
  return state;
}

describe("a tank over a log of days", () => {
  it("agrees with an independent integrator for four components over a hundred uneven days", () => {
    const days = unevenDays(100);
    const end = tankOverDays(developer, days).days.at(-1)?.concentrationGPerL ?? {};
    byIntegrator(developer, days).forEach((value, i) => {
      const name = developer.components[i]?.name ?? "";
      expect(Math.abs((end[name] ?? Number.NaN) / value - 1), name).toBeLessThan(INTEGRATOR);
    });
  });
  it("agrees with it for delivered volumes that are not the set rate", () => {
    const days = unevenDays(40).map((day, i) => ({
      ...day,
      replenisherMl: day.areaM2 * (i < 20 ? 600 : 504),
    }));
    const end = tankOverDays(developer, days).days.at(-1)?.concentrationGPerL ?? {};
    byIntegrator(developer, days).forEach((value, i) => {
      const name = developer.components[i]?.name ?? "";
      expect(Math.abs((end[name] ?? Number.NaN) / value - 1), name).toBeLessThan(INTEGRATOR);
    });
  });
  it("accounts for every gram of every component over a year", () => {
    const { ledgers } = tankOverDays(developer, unevenDays(365));
    for (const ledger of ledgers) {
      const turned = ledger.startG + ledger.broughtInG + ledger.releasedG;
      expect(Math.abs(ledger.imbalanceG) / turned, ledger.name).toBeLessThan(ROUNDING);
      expect(ledger.unmetG).toBe(0);
    }
    const agent = ledgers.find(({ name }) => name === "developing agent");
    expect(agent?.lostG).toBeGreaterThan(0);
    expect(agent?.consumedG).toBeCloseTo(
      0.9 * unevenDays(365).reduce((s, d) => s + d.areaM2, 0),
      8,
    );
  });
  it("gives the same as one step response when every day is alike", () => {
    const days = unevenDays(30).map((day) => ({ ...day, areaM2: 3 }));
    const log = tankOverDays(developer, days).days.at(-1)?.concentrationGPerL ?? {};
    const step = tankStepResponse(developer, 3, [30])[0]?.concentrationGPerL ?? {};
    for (const [name, value] of Object.entries(log)) {
      expect(Math.abs(value / (step[name] ?? Number.NaN) - 1)).toBeLessThan(ROUNDING);
    }
  });
  it("stands still without load, loss and evaporation", () => {
    const still = {
      ...developer,
      evaporationMlPerDay: 0,
      components: developer.components.map((each) => ({ ...each, lossPerDay: 0 })),
    };
    const rest = unevenDays(5).map((day) => ({ ...day, areaM2: 0 }));
    const end = tankOverDays(still, rest);
    expect(end.days.at(-1)?.concentrationGPerL).toEqual({
      "developing agent": 4.5,
      bromide: 1.3,
      alkali: 33,
      sulfite: 4,
    });
    expect(end.days.at(-1)?.turnovers).toBe(0);
  });
  it("begins again where the bath is changed, and books what was poured away", () => {
    const days = unevenDays(60).map((day, i) => ({ ...day, freshBath: i === 30 }));
    const changed = tankOverDays(developer, days);
    const afresh = tankOverDays(developer, days.slice(30));
    expect(changed.days.at(-1)?.concentrationGPerL).toEqual(afresh.days.at(-1)?.concentrationGPerL);
    const bromide = changed.ledgers.find(({ name }) => name === "bromide");
    const before = changed.days[29]?.concentrationGPerL.bromide ?? Number.NaN;
    expect(bromide?.dumpedG).toBeCloseTo((before - 1.3) * 20, 9);
    expect(Math.abs(bromide?.imbalanceG ?? Number.NaN)).toBeLessThan(1e-10);
  });
  it("holds a component that is used up at nothing, names the day, and books what was missing", () => {
    const starved: BathTank = {
      volumeL: 10,
      rateMlPerM2: 100,
      components: [
        { name: "developing agent", replenisherGPerL: 2, startGPerL: 1, consumedGPerM2: 1 },
      ],
    };
    const days = unevenDays(10).map((day) => ({ ...day, areaM2: 4 }));
    const log = tankOverDays(starved, days);
    // c = 0 after ln(1 + 0.04·1/0.32)/0.04 = 2.94 days.
    expect(log.usedUp).toEqual([{ name: "developing agent", date: "2026-03-04" }]);
    expect(log.days.at(-1)?.concentrationGPerL["developing agent"]).toBe(0);
    const [ledger] = log.ledgers;
    expect(ledger?.unmetG).toBeGreaterThan(0);
    expect((ledger?.consumedG ?? 0) + (ledger?.unmetG ?? 0)).toBeCloseTo(40, 9);
    expect(Math.abs(ledger?.imbalanceG ?? Number.NaN)).toBeLessThan(1e-12);
    expect(log.warnings.join()).toContain("used up on 2026-03-04");
  });
  it("stops on the day the level falls, and keeps the days before", () => {
    const open = { ...developer, topUp: "none" as const };
    const log = tankOverDays(open, unevenDays(10));
    expect(log.fallingOn).toBe("2026-03-08");
    expect(log.days).toHaveLength(6);
    expect(log.daysNotComputed).toBe(4);
    expect(log.warnings[0]).toContain("The tank falls by 250 mL a day");
    expect(log.warnings[0]).toContain('topUp: "water"');
  });
  it("takes an empty log as no days at all", () => {
    const log = tankOverDays(developer, []);
    expect(log.days).toEqual([]);
    expect(log.ledgers.every(({ imbalanceG }) => imbalanceG === 0)).toBe(true);
  });
  it("keeps its digits for hardly any load and for a flood", () => {
    const tiny = tankOverDays(developer, [{ date: "2026-03-02", areaM2: 1e-12 }]);
    expect(tiny.days[0]?.concentrationGPerL.alkali).toBeCloseTo(33, 10);
    const flood = tankOverDays(developer, [{ date: "2026-03-02", areaM2: 1e6 }]);
    const alkali = flood.days[0]?.concentrationGPerL.alkali ?? Number.NaN;
    expect(alkali).toBeCloseTo((600e6 * 36 - 300e6) / (630e6 - 250), 9);
    expect(flood.warnings.join()).toContain("tank turnovers a day");
  });
  it("is safe for JSON and leaves its arguments alone", () => {
    const log = tankOverDays(developer, Object.freeze(unevenDays(3)));
    expect(JSON.parse(JSON.stringify(log))).toEqual(log);
  });
});

describe("a log of days that cannot be used", () => {
  const day = (date: string, areaM2: number = 1) => ({ date, areaM2 });
  const run =
    (...days: TankDay[]) =>
    () =>
      tankOverDays(developer, days);
  it("names the days that are missing", () => {
    expect(run(day("2026-03-02"), day("2026-03-06"))).toThrow(
      "2026-03-03 to 2026-03-05 are missing",
    );
    expect(run(day("2026-02-28"), day("2026-03-02"))).toThrow("2026-03-01 is missing");
  });
  it("refuses a day that comes twice or out of order", () => {
    expect(run(day("2026-03-02"), day("2026-03-02"))).toThrow("add the two rows and write one");
    expect(run(day("2026-03-02"), day("2026-03-01"))).toThrow("write the days in order");
  });
  it("refuses dates that do not exist and areas that cannot be", () => {
    expect(run(day("2026-02-30"))).toThrow("a date that exists");
    expect(run(day("2.3.2026"))).toThrow("YYYY-MM-DD");
    expect(run(day("2026-03-02", -1))).toThrow("days[0].areaM2 is -1");
    expect(run(day("2026-03-02", Number.NaN))).toThrow("days[0].areaM2 is NaN");
    expect(run({ date: "2026-03-02", areaM2: 1, replenisherMl: -5 })).toThrow(
      "replenisherMl is -5",
    );
  });
  it("still refuses a bad row after the day on which the level falls", () => {
    const open = { ...developer, topUp: "none" as const };
    const days = [day("2026-03-02", 0), day("2026-03-03", Number.NaN)];
    expect(() => tankOverDays(open, days)).toThrow("days[1].areaM2");
  });
  it("asks for the start of a component", () => {
    const tank = {
      volumeL: 20,
      rateMlPerM2: 600,
      components: [{ name: "bromide", replenisherGPerL: 0 }],
    };
    expect(() => tankOverDays(tank, [])).toThrow("startGPerL of bromide is missing");
  });
});
