import { describe, expect, it } from "vitest";
import {
  type LineDay,
  lineFlows,
  type TankLine,
  tankLineOverDays,
  tankLineOverTime,
  tankOverDays,
} from "wetside/replenishment";
import { integrateOde } from "../odex.ts";

// The integrator works to 1e-13 a step; the demand on both together is 1e-8.
const INTEGRATOR = 1e-8;
// A matrix exponential of up to a dozen squarings, a day.
const ROUNDING = 1e-10;

/** Fixer and a counter-current wash of two, illustrative. */
const line: TankLine = {
  enteringMlPerM2: 60,
  tanks: [
    { name: "fixer", volumeL: 16, rateMlPerM2: 800, carryOverMlPerM2: 60 },
    { name: "wash 1", volumeL: 8, carryOverMlPerM2: 60 },
    {
      name: "wash 2",
      volumeL: 8,
      carryOverMlPerM2: 40,
      feedMlPerDay: 9000,
      overflowTo: "wash 1",
    },
  ],
  components: [
    { name: "silver", inTanks: { fixer: { releasedGPerM2: 4, startGPerL: 1 } } },
    {
      name: "thiosulfate",
      inTanks: { fixer: { startGPerL: 120, feedGPerL: 130, lossPerDay: 0.002 } },
    },
  ],
};
const dated = (areas: readonly number[]): LineDay[] =>
  areas.map((areaM2, i) => ({
    date: new Date(Date.UTC(2026, 2, 2 + i)).toISOString().slice(0, 10),
    areaM2,
  }));

describe("a line over a log of days", () => {
  it("is the line at a constant load when every day is alike", () => {
    const { days } = tankLineOverDays(line, dated(new Array(20).fill(5)));
    const { moments } = tankLineOverTime(line, 5, [20]);
    for (const component of ["silver", "thiosulfate"]) {
      for (const { name } of line.tanks) {
        const byDays = days.at(-1)?.concentrationGPerL[component]?.[name] ?? Number.NaN;
        const atOnce = moments[0]?.concentrationGPerL[component]?.[name] ?? Number.NaN;
        expect(Math.abs(byDays / atOnce - 1), `${component} ${name}`).toBeLessThan(ROUNDING);
      }
    }
  });
  it("agrees with an independent integrator over uneven days and uneven feeds", () => {
    const days = dated([5, 0, 2.5, 7, 0.3]).map((day, i) =>
      i === 2 ? { ...day, feedMl: { "wash 2": 4000 } } : day,
    );
    let c: readonly number[] = [1, 0, 0];
    for (const day of days) {
      const tanks = line.tanks.map((tank) =>
        day.feedMl !== undefined && tank.name === "wash 2" ? { ...tank, feedMlPerDay: 4000 } : tank,
      );
      const flows = lineFlows({ ...line, tanks }, day.areaM2);
      const derivative = (_: number, y: readonly number[]) =>
        flows.map((flow, i) => {
          const into = flows.reduce((sum, other, j) => {
            return sum + (other.overflowTo === flow.name ? other.overflowL * (y[j] ?? 0) : 0);
          }, 0);
          const carried = i > 0 ? flow.carryInL * (y[i - 1] ?? 0) : 0;
          const released = i === 0 ? 4 * day.areaM2 : 0;
          const out = (flow.overflowL + flow.carryOutL) * (y[i] ?? 0);
          return (released + carried + into - out) / (line.tanks[i]?.volumeL ?? Number.NaN);
        });
      c = integrateOde(derivative, 0, c, 1);
    }
    const last = tankLineOverDays(line, days).days.at(-1)?.concentrationGPerL.silver ?? {};
    c.forEach((value, i) => {
      expect(Math.abs((Object.values(last)[i] ?? Number.NaN) - value)).toBeLessThan(INTEGRATOR);
    });
  });
  it("is the log of the tank when there is one tank, fresh baths and delivered volumes included", () => {
    const log = dated([4, 0, 6, 1]).map((day, i) => ({
      ...day,
      fresh: i === 2,
      ml: 500 * (i + 1),
    }));
    const own = { startGPerL: 1.2, releasedGPerM2: 0.6, lossPerDay: 0.01 };
    const alone = tankOverDays(
      {
        volumeL: 20,
        rateMlPerM2: 600,
        carryOutMlPerM2: 60,
        components: [{ name: "bromide", replenisherGPerL: 0.3, ...own }],
      },
      log.map(({ date, areaM2, fresh, ml }) => ({
        date,
        areaM2,
        freshBath: fresh,
        replenisherMl: ml,
      })),
    );
    const asLine = tankLineOverDays(
      {
        tanks: [{ name: "developer", volumeL: 20, rateMlPerM2: 600, carryOverMlPerM2: 60 }],
        components: [{ name: "bromide", inTanks: { developer: { feedGPerL: 0.3, ...own } } }],
      },
      log.map(({ date, areaM2, fresh, ml }) => ({
        date,
        areaM2,
        feedMl: { developer: ml },
        freshBaths: fresh ? ["developer"] : [],
      })),
    );
    asLine.days.forEach((day, i) => {
      const single = alone.days[i]?.concentrationGPerL.bromide ?? Number.NaN;
      const inLine = day.concentrationGPerL.bromide?.developer ?? Number.NaN;
      expect(Math.abs(inLine / single - 1)).toBeLessThan(ROUNDING);
    });
    const [ledger] = alone.ledgers;
    expect(asLine.dumpedG.bromide).toBeCloseTo(ledger?.dumpedG ?? Number.NaN, 9);
    expect(asLine.leftG.bromide?.["lost by itself"]).toBeCloseTo(ledger?.lostG ?? Number.NaN, 9);
  });
  it("keeps every gram over a year with changes of bath", () => {
    const areas = Array.from({ length: 365 }, (_, i) => (i % 7 === 6 ? 0 : 2 + (i % 5)));
    const days = dated(areas).map((day, i) =>
      i % 90 === 89 ? { ...day, freshBaths: ["fixer"] } : day,
    );
    const log = tankLineOverDays(line, days);
    expect(log.daysNotComputed).toBe(0);
    const silver = 4 * areas.reduce((sum, area) => sum + area, 0);
    expect(Math.abs(log.imbalanceG.silver ?? Number.NaN) / silver).toBeLessThan(ROUNDING);
    const left = Object.values(log.leftG.silver ?? {}).reduce((sum, g) => sum + g, 0);
    const inTanks = line.tanks.reduce((sum, { name, volumeL }) => {
      return sum + volumeL * (log.days.at(-1)?.concentrationGPerL.silver?.[name] ?? Number.NaN);
    }, 0);
    const all = left + inTanks + (log.dumpedG.silver ?? Number.NaN);
    expect(Math.abs(all / (silver + 16) - 1)).toBeLessThan(ROUNDING);
  });
  it("stops on the day a tank falls, and keeps the days before", () => {
    const tanks = line.tanks.map((tank) =>
      tank.name === "wash 2" ? { ...tank, feedMlPerDay: 0, evaporationMlPerDay: 50 } : tank,
    );
    const log = tankLineOverDays({ ...line, tanks }, dated([5, 5, 0, 5]));
    expect(log.falling).toEqual({ date: "2026-03-04", tank: "wash 2" });
    expect(log.days).toHaveLength(2);
    expect(log.daysNotComputed).toBe(2);
    expect(log.warnings[0]).toContain("wash 2 falls by 50 mL");
  });
  it("names the tank and day where a component is used up, and goes on with the others", () => {
    const [fixer] = line.tanks;
    const starved: TankLine = {
      tanks: fixer === undefined ? [] : [fixer],
      enteringMlPerM2: 60,
      components: [
        { name: "agent", inTanks: { fixer: { startGPerL: 1, consumedGPerM2: 2 } } },
        { name: "silver", inTanks: { fixer: { releasedGPerM2: 4 } } },
      ],
    };
    const log = tankLineOverDays(starved, dated([3, 3, 3, 3]));
    expect(log.usedUp).toEqual([{ name: "agent", tank: "fixer", date: "2026-03-04" }]);
    expect(log.days[2]?.concentrationGPerL.agent?.fixer).toBeNull();
    expect(log.days[3]?.concentrationGPerL.silver?.fixer).toBeGreaterThan(0);
  });
  it("refuses gaps, unknown tanks, negative areas and gallons, and takes no days at all", () => {
    const [first, second, third] = dated([1, 2, 3]);
    const with1 = (change: object) => () =>
      tankLineOverDays(line, first === undefined ? [] : [{ ...first, ...change }]);
    if (first && second && third) {
      expect(() => tankLineOverDays(line, [first, third])).toThrow("2026-03-03 is missing");
    }
    expect(with1({ areaM2: -1 })).toThrow("days[0].areaM2 is -1");
    expect(with1({ freshBaths: ["fixr"] })).toThrow('write one of "fixer", "wash 1", "wash 2"');
    expect(with1({ feedMl: { "wash 2": "2 gal" } })).toThrow("7570.8 for US gallons");
    expect(tankLineOverDays(line, []).days).toEqual([]);
    const lost = { name: "silver", inTanks: { bleach: {} } };
    expect(() => tankLineOverDays({ ...line, components: [lost] }, [])).toThrow(
      "inTanks of silver",
    );
  });
});
