import { describe, expect, it } from "vitest";
import {
  type BathTank,
  breakEvenUtilisation,
  correctBath,
  counterCurrentRatio,
  counterCurrentResidual,
  deliveredRates,
  type LineTank,
  machineWash,
  rateForSteadyState,
  rateTable,
  silverOverDays,
  type TankDay,
  type TankLine,
  tankLineOverTime,
  tankOverDays,
  tankSteadyState,
  tankStepResponse,
} from "wetside/replenishment";
import fc from "./fast-check.ts";

// Sums over some weeks in doubles, compared to what went through.
const ROUNDING = 1e-11;
// A matrix exponential of rates up to thousands a day.
const EXPONENTIAL = 1e-9;

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const component = (name: string) =>
  fc.record({
    name: fc.constant(name),
    replenisherGPerL: number(0, 50),
    startGPerL: number(0, 50),
    carryInGPerL: number(0, 20),
    consumedGPerM2: number(0, 2),
    releasedGPerM2: number(0, 2),
    lossPerDay: number(0, 0.5),
  });

const tanks: fc.Arbitrary<BathTank> = fc.record({
  volumeL: number(0.5, 200),
  rateMlPerM2: number(0, 3000),
  carryInMlPerM2: number(0, 400),
  carryOutMlPerM2: number(0, 400),
  evaporationMlPerDay: number(0, 1000),
  topUp: fc.constant("water" as const),
  components: fc.tuple(component("developing agent"), component("bromide")),
});

/** To a millionth, as nobody measures closer: no differences of numbers that are next to nothing. */
function measured(tank: BathTank): BathTank {
  const rounded = (_: string, value: unknown) =>
    typeof value === "number" ? Math.round(value * 1e6) / 1e6 : value;
  return JSON.parse(JSON.stringify(tank, rounded));
}

const logs: fc.Arbitrary<readonly TankDay[]> = fc
  .array(fc.oneof(fc.constant(0), number(0, 20)), { minLength: 1, maxLength: 30 })
  .map((areas) =>
    areas.map((areaM2, i) => ({
      date: new Date(Date.UTC(2026, 1, 20 + i)).toISOString().slice(0, 10),
      areaM2,
    })),
  );

describe("a tank over any log of days", () => {
  it("loses no gram of any component", () => {
    fc.assert(
      fc.property(tanks, logs, (tank, days) => {
        for (const ledger of tankOverDays(tank, days).ledgers) {
          const { startG, broughtInG, releasedG, consumedG, unmetG, imbalanceG } = ledger;
          const turned = 1 + startG + broughtInG + releasedG + consumedG + unmetG;
          expect(Math.abs(imbalanceG) / turned).toBeLessThan(ROUNDING);
        }
      }),
    );
  });
  it("never holds less than nothing", () => {
    fc.assert(
      fc.property(tanks, logs, (tank, days) => {
        const log = tankOverDays(tank, days);
        for (const day of log.days) {
          for (const value of Object.values(day.concentrationGPerL)) {
            expect(value).toBeGreaterThanOrEqual(0);
          }
        }
        for (const ledger of log.ledgers) {
          expect(ledger.unmetG).toBeGreaterThanOrEqual(0);
          expect(ledger.overflowedG).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });
  it("is the same cut into two logs as in one", () => {
    fc.assert(
      fc.property(tanks, logs, fc.nat(), (tank, days, where) => {
        const cut = where % (days.length + 1);
        const whole = tankOverDays(tank, days).days.at(-1)?.concentrationGPerL;
        const first = tankOverDays(tank, days.slice(0, cut)).days.at(-1)?.concentrationGPerL ?? {};
        const components = tank.components.map((each) => ({
          ...each,
          startGPerL: first[each.name] ?? each.startGPerL ?? 0,
        }));
        const rest = tankOverDays({ ...tank, components }, days.slice(cut));
        expect(rest.days.at(-1)?.concentrationGPerL ?? first).toEqual(whole);
      }),
    );
  });
  it("ends stronger when its replenisher is stronger", () => {
    fc.assert(
      fc.property(tanks, logs, number(0, 10), (tank, days, more) => {
        const stronger = tank.components.map((each) => ({
          ...each,
          replenisherGPerL: each.replenisherGPerL + more,
        }));
        const plain = tankOverDays(tank, days).days.at(-1)?.concentrationGPerL ?? {};
        const rich = tankOverDays({ ...tank, components: stronger }, days).days.at(-1);
        for (const [name, value] of Object.entries(plain)) {
          expect(rich?.concentrationGPerL[name]).toBeGreaterThanOrEqual(value * (1 - ROUNDING));
        }
      }),
    );
  });
});

describe("the steady state of any tank", () => {
  it("does not move from itself", () => {
    fc.assert(
      fc.property(tanks, number(0.1, 20), number(0, 100), (tank, area, days) => {
        const settled = tankSteadyState(tank, area).components;
        const components = tank.components.flatMap((each, i) => {
          const startGPerL = settled[i]?.steadyGPerL;
          return startGPerL == null || startGPerL > 1e6 ? [] : [{ ...each, startGPerL }];
        });
        const [then] = tankStepResponse({ ...tank, components }, area, [days]);
        for (const { name, startGPerL } of components) {
          const moved = (then?.concentrationGPerL[name] ?? Number.NaN) - startGPerL;
          expect(Math.abs(moved)).toBeLessThanOrEqual(ROUNDING * (1 + startGPerL));
        }
      }),
    );
  });
  it("is approached from one side only, ever closer", () => {
    fc.assert(
      fc.property(tanks, number(0.1, 20), number(0.01, 30), (tank, area, step) => {
        const settled = tankSteadyState(tank, area).components;
        const moments = tankStepResponse(tank, area, [0, step, 2 * step, 3 * step]);
        for (const { name, steadyGPerL } of settled) {
          if (steadyGPerL === null) continue;
          const gaps = moments.map((m) => (m.concentrationGPerL[name] ?? Number.NaN) - steadyGPerL);
          gaps.slice(1).forEach((gap, i) => {
            const before = gaps[i] ?? Number.NaN;
            expect(Math.abs(gap)).toBeLessThanOrEqual(Math.abs(before) + 1e-9);
            expect(gap * before).toBeGreaterThanOrEqual(-1e-12);
          });
        }
      }),
    );
  });
  it("is where the rate that was asked for puts it", () => {
    fc.assert(
      fc.property(tanks, number(0.1, 20), number(0.05, 0.95), (tank, area, share) => {
        const [agent] = tank.components;
        if (agent === undefined) return;
        const aim = { component: agent.name, concentrationGPerL: share * agent.replenisherGPerL };
        let rateMlPerM2 = 0;
        try {
          ({ rateMlPerM2 } = rateForSteadyState(tank, area, aim));
        } catch {
          return; // No rate of this replenisher holds that aim; the message is tested elsewhere.
        }
        const { flows, components } = tankSteadyState({ ...tank, rateMlPerM2 }, area);
        const reached = components[0]?.steadyGPerL ?? null;
        if (reached === null) {
          // Nothing leaves and nothing comes: it stays wherever it is.
          expect(flows.overflowL + flows.carryOutL).toBeCloseTo(0, 12);
          return;
        }
        // What leaves may be a small remainder of large flows, and carries their rounding.
        const through = flows.replenisherL + flows.carryInL + flows.evaporationL;
        const loss = (agent.lossPerDay ?? 0) * tank.volumeL;
        const magnified = 1 + through / (flows.overflowL + flows.carryOutL + loss);
        expect(Math.abs(reached - aim.concentrationGPerL)).toBeLessThan(
          1e-10 * (1 + aim.concentrationGPerL) * magnified,
        );
      }),
    );
  });
  it("keeps the aim above the load that is named, and not just below it", () => {
    const loads = fc.array(number(0.01, 50), { minLength: 1, maxLength: 5 });
    const topUp = fc.constantFrom("water" as const, "none" as const);
    fc.assert(
      fc.property(tanks, topUp, number(0.05, 0.95), loads, (tank, level, share, more) => {
        const open: BathTank = { ...measured(tank), topUp: level };
        const [agent] = open.components;
        if (agent === undefined || agent.replenisherGPerL < 0.01) return;
        const concentrationGPerL = share * agent.replenisherGPerL;
        const aim = { component: agent.name, concentrationGPerL };
        const from = breakEvenUtilisation(open, aim).rateHoldsFromM2PerDay;
        if (from === null || from > 1e6) return;
        const held = (area: number) => {
          const { flows, components } = tankSteadyState(open, area);
          const steady = components[0]?.steadyGPerL ?? null;
          // Where nothing leaves it only rises, unless more is used than comes.
          const broughtG = open.rateMlPerM2 * agent.replenisherGPerL;
          const carriedG = (open.carryInMlPerM2 ?? 0) * (agent.carryInGPerL ?? 0);
          const comesG = (broughtG + carriedG) / 1000 + (agent.releasedGPerM2 ?? 0);
          const rises = comesG >= (agent.consumedGPerM2 ?? 0);
          const holds = steady === null ? rises : steady >= concentrationGPerL * (1 - 1e-9);
          return flows.level === "holds" && holds;
        };
        for (const each of more) expect(held(from + each)).toBe(true);
        if (from > 1e-6) expect(held(from * 0.99)).toBe(false);
      }),
    );
  });
});

const lines: fc.Arbitrary<TankLine> = fc
  .array(
    fc.record({
      volumeL: number(1, 50),
      rateMlPerM2: number(400, 1500),
      carryOverMlPerM2: number(0, 200),
      feedMlPerDay: number(0, 20_000),
      startGPerL: number(0, 100),
      releasedGPerM2: number(0, 5),
      lossPerDay: number(0, 0.2),
      back: fc.boolean(),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((given) => ({
    enteringMlPerM2: 30,
    tanks: given.map(
      ({ volumeL, rateMlPerM2, carryOverMlPerM2, feedMlPerDay, back }, i): LineTank => ({
        name: `tank ${i}`,
        volumeL,
        rateMlPerM2,
        carryOverMlPerM2,
        feedMlPerDay,
        overflowTo: back && i > 0 ? `tank ${i - 1}` : "drain",
      }),
    ),
    components: [
      {
        name: "silver",
        enteringGPerL: 2,
        inTanks: Object.fromEntries(
          given.map(({ startGPerL, releasedGPerM2, lossPerDay }, i) => [
            `tank ${i}`,
            { startGPerL, releasedGPerM2, lossPerDay },
          ]),
        ),
      },
    ],
  }));

describe("any line of tanks", () => {
  it("loses no gram, and never holds less than nothing", () => {
    fc.assert(
      fc.property(lines, number(0.1, 20), number(0, 60), (line, area, days) => {
        const [moment] = tankLineOverTime(line, area, [days]).moments;
        const inTanks = Object.values(moment?.concentrationGPerL.silver ?? {}).map(
          (gPerL) => gPerL ?? Number.NaN,
        );
        const grams = inTanks.reduce((sum, c, i) => sum + c * (line.tanks[i]?.volumeL ?? 0), 0);
        const left = Object.values(moment?.leftG.silver ?? {});
        const turned = 1 + grams + left.reduce((sum, g) => sum + g, 0);
        expect(Math.abs(moment?.imbalanceG.silver ?? Number.NaN) / turned).toBeLessThan(
          EXPONENTIAL,
        );
        for (const value of [...inTanks, ...left])
          expect(value).toBeGreaterThan(-EXPONENTIAL * turned);
      }),
    );
  });
});

describe("washing and silver", () => {
  it("counter-current water and its residual undo each other", () => {
    fc.assert(
      fc.property(number(1, 1e8), fc.integer({ min: 1, max: 12 }), (dilution, stages) => {
        const ratio = counterCurrentRatio({ dilution, stages });
        expect(counterCurrentResidual({ ratio, stages }) * dilution).toBeCloseTo(1, 8);
      }),
    );
  });
  it("a wash sends away all it does not leave, and more water never leaves more", () => {
    const washes = fc.record({
      areaM2PerHour: number(0.1, 50),
      carryOverMlPerM2: number(5, 400),
      carriedInGPerL: number(0.01, 200),
      stages: fc.integer({ min: 1, max: 6 }),
      flow: fc.constantFrom("counter-current" as const, "each fresh" as const),
      exchange: number(0.05, 1),
    });
    fc.assert(
      fc.property(washes, number(0.1, 500), number(1, 5), (wash, waterLPerHour, factor) => {
        const one = machineWash({ ...wash, waterLPerHour });
        const comes = (wash.areaM2PerHour * wash.carryOverMlPerM2 * wash.carriedInGPerL) / 1000;
        const goes = one.toDrainGPerHour + one.withMaterialGPerHour;
        expect(Math.abs(goes / comes - 1)).toBeLessThan(1e-9);
        const more = machineWash({ ...wash, waterLPerHour: waterLPerHour * factor });
        expect(more.residualGPerM2).toBeLessThanOrEqual(one.residualGPerM2 * (1 + 1e-9));
      }),
    );
  });
  it("silver is all somewhere, and a cell never takes more than its current can", () => {
    const cells = fc.record({
      currentA: number(0, 20),
      currentEfficiency: number(0, 1),
      hoursPerDay: number(0, 24),
      stopsAtGPerL: number(0, 2),
    });
    fc.assert(
      fc.property(tanks, logs, cells, number(0, 10), (tank, days, recovery, startGPerL) => {
        const log = silverOverDays(
          { tank, coatedGPerM2: 5, fractionRemoved: 0.9, startGPerL, carryInGPerL: 0.1, recovery },
          days,
        );
        const turned = 1 + log.removedG + log.carriedInG + startGPerL * tank.volumeL;
        expect(Math.abs(log.imbalanceG) / turned).toBeLessThan(ROUNDING);
        const most =
          4.02469 * recovery.currentA * recovery.hoursPerDay * recovery.currentEfficiency;
        for (const day of log.days) {
          expect(day.platedG).toBeGreaterThanOrEqual(0);
          expect(day.platedG).toBeLessThanOrEqual(most * 1.00001 + 1e-9);
          expect(day.silverGPerL).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });
});

describe("rates and corrections", () => {
  it("a rate per roll times rolls is the rate per area times area", () => {
    fc.assert(
      fc.property(number(0, 5000), fc.integer({ min: 0, max: 500 }), (mlPerM2, rolls) => {
        const [each] = rateTable({ mlPerM2, formats: ["135-36"] }).formats;
        expect(rolls * (each?.mlEach ?? Number.NaN)).toBeCloseTo(mlPerM2 * rolls * 0.0567, 6);
      }),
    );
  });
  it("no pump log makes the reducer lose a good interval or throw away a number", () => {
    const counters = fc.array(fc.integer({ min: 0, max: 100_000 }), {
      minLength: 2,
      maxLength: 12,
    });
    fc.assert(
      fc.property(counters, (given) => {
        const readings = given.map((counterStrokes, i) => ({
          readAt: `2026-03-${String(i + 1).padStart(2, "0")}T18:00`,
          counterStrokes,
          settingMlPerStroke: 5,
        }));
        const days = given.slice(1).map((_, i) => ({
          date: `2026-03-${String(i + 2).padStart(2, "0")}`,
          areaM2: 2,
        }));
        const { intervals, problems } = deliveredRates({ readings, days });
        const backwards = given.slice(1).filter((count, i) => count < (given[i] ?? 0)).length;
        expect(intervals).toHaveLength(given.length - 1);
        expect(problems).toHaveLength(backwards);
        expect(intervals.filter((each) => each.strokes === null)).toHaveLength(backwards);
      }),
    );
  });
  it("a correction never leaves the range between the bath and what is added", () => {
    const steps = fc.array(
      fc.record({
        add: fc.constant("starter"),
        litres: number(0.01, 20),
        gPerL: fc.record({ bromide: number(0, 60) }),
        how: fc.constantFrom("dump first" as const, "overflow" as const),
        times: fc.integer({ min: 1, max: 5 }),
      }),
      { minLength: 1, maxLength: 5 },
    );
    fc.assert(
      fc.property(number(0, 60), steps, (bromide, given) => {
        const corrected = correctBath({ volumeL: 20, gPerL: { bromide } }, given);
        const all = [bromide, ...given.map((step) => step.gPerL.bromide)];
        const after = corrected.components[0]?.afterGPerL ?? Number.NaN;
        expect(after).toBeGreaterThanOrEqual(Math.min(...all) - 1e-9);
        expect(after).toBeLessThanOrEqual(Math.max(...all) + 1e-9);
        expect(corrected.keptShare).toBeGreaterThanOrEqual(0);
        expect(corrected.keptShare).toBeLessThan(1);
      }),
    );
  });
});
