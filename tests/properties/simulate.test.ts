import { describe, expect, it } from "vitest";
import {
  formatCheckLog,
  formatProductionLog,
  formatPumpLog,
  formatRemakesLog,
  formatStripBatchRegister,
  formatStripLog,
  formatTemperatureLog,
  formatWorkLog,
  type ParsedLog,
  parseCheckLog,
  parseProductionLog,
  parsePumpLog,
  parseRemakesLog,
  parseStripBatchRegister,
  parseStripLog,
  parseTemperatureLog,
  parseWorkLog,
  requireCleanLog,
} from "wetside/records";
import {
  randomFault,
  revealFaults,
  type SimulatedEvent,
  type SimulatedFault,
  type SimulateLabOptions,
  simulatedFaultKinds,
  simulatedLines,
  simulateLab,
} from "wetside/simulate";
import { consecutiveDays } from "../../lib/simulate/days.ts";
import { developerOverDays } from "../../lib/simulate/developer-over-days.ts";
import { developerAims } from "../../lib/simulate/developer-tank.ts";
import { dateOf, logsBetween } from "../simulate/labs.ts";
import fc from "./fast-check.ts";

const file = "log.csv";
const RUNS = { numRuns: 60 };
// Fourth-order steps of a hundredth of a day, of rates of at most some tenths a day.
const INTEGRATOR = 1e-9;
const STEPS_A_DAY = 100;

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const pumps = simulatedLines.flatMap(({ baths }) =>
  baths.filter(({ rateMlPerM2 }) => rateMlPerM2 !== undefined).map(({ id }) => id),
);

/** A fault of any kind, moment and size, mended or not. */
function fault(days: number): fc.Arbitrary<SimulatedFault> {
  return fc
    .record({
      kind: fc.constantFrom(...simulatedFaultKinds),
      line: fc.constantFrom("film", "paper"),
      fromDay: fc.nat(days - 1),
      share: number(0.001, 1),
      lasts: fc.option(fc.integer({ min: 1, max: 10 }), { nil: undefined }),
    })
    .map(({ kind, line, fromDay, share, lasts }) => ({
      kind: kind.id,
      line: kind.id === "printer-at-fault" ? "paper" : line,
      fromDay,
      size: share * kind.largestSize,
      ...(lasts === undefined ? {} : { untilDay: Math.min(days, fromDay + lasts) }),
    }));
}

function event(days: number): fc.Arbitrary<SimulatedEvent> {
  const day = fc.nat(days - 1);
  const bath = fc.constantFrom(...pumps);
  return fc.oneof(
    fc.record({
      kind: fc.constant("fresh-bath" as const),
      line: fc.constantFrom("film", "paper"),
      day,
      at: fc.constantFrom("09:30", "11:45", "15:00"),
    }),
    fc.record({ kind: fc.constant("counter-reset" as const), bath, day }),
    fc.record({ kind: fc.constant("cylinder-check" as const), day }),
    fc.record({
      kind: fc.constant("pump-setting" as const),
      bath,
      day,
      settingMlPerStroke: number(1, 20),
    }),
  );
}

const noise = fc.record({
  stripSd: number(0, 0.05),
  layerSd: number(0, 0.05),
  readingSd: number(0, 0.05),
  wanderSd: number(0, 0.05),
});

const labs: fc.Arbitrary<SimulateLabOptions> = fc.integer({ min: 1, max: 25 }).chain((days) =>
  fc.record({
    seed: fc.maxSafeInteger(),
    days: fc.constant(days),
    from: fc.constantFrom("2026-05-17", "2028-02-20", "1999-12-25"),
    faults: fc.uniqueArray(fault(days), {
      maxLength: 3,
      selector: ({ kind, line }) => `${kind} ${line}`,
    }),
    events: fc.array(event(days), { maxLength: 4 }),
    noise,
    mixSd: number(0, 0.1),
    mixEveryDays: fc.integer({ min: 1, max: 20 }),
    repeatStrips: fc.boolean(),
    endsInTheMorning: fc.boolean(),
  }),
);

/** Whether rows, written and read, come back as they are; a lab that never worked has no rows. */
function expectBack<Row extends object>(
  rows: readonly Row[],
  write: (rows: readonly Row[]) => string,
  read: (text: string) => ParsedLog<Row>,
): void {
  if (rows.length === 0) return;
  const log = read(write(rows));
  expect(log.warnings).toEqual([]);
  expect(requireCleanLog(log).map((row) => ({ ...row, source: undefined }))).toEqual(rows);
}

const inOrder = (times: readonly string[]) =>
  times.every((time, i) => i === 0 || (times[i - 1] ?? "") <= time);

describe("any simulated lab", () => {
  it("reads densities on the densitometer's scale, 0 to 4.5, and every number is finite", () => {
    fc.assert(
      fc.property(labs, (options) => {
        const { lines, ...logs } = simulateLab(options);
        for (const { patches } of logs.strips) {
          const read = Object.values(patches).flatMap(({ red, green, blue }) => [red, green, blue]);
          expect(read.filter((v) => !(v >= 0 && v <= 4.5))).toEqual([]);
        }
        // JSON writes a number that is not finite as null.
        expect(JSON.stringify(logs)).not.toContain("null");
        for (const { deliveredMl = Number.NaN, counterStrokes } of logs.pumps) {
          expect(deliveredMl).toBeGreaterThanOrEqual(0);
          expect(Number.isInteger(counterStrokes) && counterStrokes >= 0).toBe(true);
        }
      }),
      RUNS,
    );
  });

  it("has its times in order, and no two strips of one process at one minute", () => {
    fc.assert(
      fc.property(labs, (options) => {
        const lab = simulateLab(options);
        for (const { process } of simulatedLines) {
          const times = lab.strips.filter((s) => s.process === process).map((s) => s.takenAt);
          expect(inOrder(times)).toBe(true);
          expect(new Set(times).size).toBe(times.length);
        }
        expect(inOrder(lab.pumps.map(({ readAt }) => readAt))).toBe(true);
        expect(inOrder(lab.temperatures.map(({ readAt }) => readAt))).toBe(true);
        expect(inOrder(lab.remakes.map(({ date }) => date))).toBe(true);
        expect(inOrder(lab.checks.map(({ readAt }) => readAt))).toBe(true);
        expect(inOrder(lab.work.map(({ doneAt }) => doneAt))).toBe(true);
      }),
      RUNS,
    );
  });

  it("keeps logs that, written as CSV, the readers take without a word and give back", () => {
    fc.assert(
      fc.property(labs, (options) => {
        const lab = simulateLab(options);
        const { batches } = lab;
        for (const { process } of simulatedLines) {
          const strips = lab.strips.filter((strip) => strip.process === process);
          expectBack(strips, formatStripLog, (text) => parseStripLog(text, { file, batches }));
          const own = batches.filter((batch) => batch.process === process);
          expectBack(own, formatStripBatchRegister, (t) => parseStripBatchRegister(t, { file }));
        }
        expectBack(lab.pumps, formatPumpLog, (text) => parsePumpLog(text, { file }));
        expectBack(lab.production, formatProductionLog, (t) => parseProductionLog(t, { file }));
        expectBack(lab.remakes, formatRemakesLog, (text) => parseRemakesLog(text, { file }));
        expectBack(lab.checks, formatCheckLog, (text) => parseCheckLog(text, { file }));
        expectBack(lab.work, formatWorkLog, (text) => parseWorkLog(text, { file }));
        expectBack(lab.temperatures, formatTemperatureLog, (text) =>
          parseTemperatureLog(text, { file }),
        );
      }),
      RUNS,
    );
  });

  it("gives back the faults it hid, and hides them in a text of one length", () => {
    fc.assert(
      fc.property(labs, (options) => {
        const { sealedAnswer } = simulateLab(options);
        const faults = options.faults ?? [];
        const found = revealFaults({ sealedAnswer });
        expect(found).toHaveLength(faults.length);
        found.forEach((each, i) => {
          const { kind, line, fromDay, size } = each;
          const { untilDay, ...given } = faults[i] as SimulatedFault;
          expect({ kind, line, fromDay, size }).toEqual(given);
          expect(each.fromDate).toBe(dateOf({ from: options.from ?? "" }, fromDay));
        });
        for (const { kind } of found) expect(sealedAnswer).not.toContain(kind);
      }),
      RUNS,
    );
  });

  it("is the same before the first fault as without any", () => {
    fc.assert(
      fc.property(labs, (options) => {
        const lab = simulateLab(options);
        const clean = simulateLab({ ...options, faults: [] });
        const first = Math.min(lab.days, ...revealFaults(lab).map(({ fromDay }) => fromDay));
        const until = dateOf(lab, first);
        expect(logsBetween(lab, lab.from, until)).toEqual(logsBetween(clean, lab.from, until));
      }),
      RUNS,
    );
  });

  it("is the same bytes for the same options", () => {
    fc.assert(
      fc.property(labs, (options) => {
        expect(JSON.stringify(simulateLab(options))).toBe(JSON.stringify(simulateLab(options)));
      }),
      { numRuns: 20 },
    );
  });
});

describe("any random fault", () => {
  it("can be switched on in the lab it was drawn for, and comes out of the seal", () => {
    const drawn = fc.tuple(fc.maxSafeInteger(), fc.integer({ min: 3, max: 40 }));
    fc.assert(
      fc.property(drawn, ([seed, days]) => {
        const [found] = revealFaults(simulateLab({ seed, days, faults: "random" }));
        expect(found).toMatchObject(randomFault(seed, { days }));
      }),
      RUNS,
    );
  });
});

describe("the developer over any days", () => {
  const bath = simulatedLines[0]?.baths[0];
  if (bath === undefined) throw new Error("the film line has a developer");
  const days = consecutiveDays("test", "2026-05-17", 15);
  const histories = fc.record({
    areaM2: fc.array(number(0, 6), { minLength: 15, maxLength: 15 }),
    pump: number(0.75, 1.5),
    mixStrength: fc.array(number(0.9, 1.1), { minLength: 15, maxLength: 15 }),
    lost: number(0.01, 0.3),
    fromDay: fc.integer({ min: 1, max: 14 }),
  });

  it("accounts for every gram, by an independent integrator with its own ledger", () => {
    fc.assert(
      fc.property(histories, ({ areaM2, pump, mixStrength, lost, fromDay }) => {
        const deliveredMl = areaM2.map((area) => area * (bath.rateMlPerM2 ?? 0) * pump);
        const faults = [
          { kind: "developer-oxidised", line: "film", fromDay, untilDay: 15, size: lost },
        ];
        const history = { bath, days, areaM2, deliveredMl, mixStrength, faults };
        const states = developerOverDays(history);
        const meanL = deliveredMl.reduce((sum, ml) => sum + ml, 0) / 15_000;
        const perDay = ((meanL / bath.volumeL) * lost) / (1 - lost);
        for (const { name, aimGPerL, replenisherOverAim } of developerAims) {
          const replenisher = aimGPerL * replenisherOverAim;
          const perM2 = ((bath.rateMlPerM2 ?? 0) / 1000) * (replenisher - aimGPerL);
          let grams = bath.volumeL * aimGPerL;
          const booked = { in: grams, used: 0, out: 0, lost: 0, oxidisedAtOnce: 0 };
          states.forEach(({ evening }, day) => {
            if (day === fromDay && name === "developing agent") {
              booked.oxidisedAtOnce = grams * lost;
              grams -= booked.oxidisedAtOnce;
            }
            const litres = (deliveredMl[day] ?? 0) / 1000;
            const air = day >= fromDay && name === "developing agent" ? perDay : 0;
            const rates = (g: number) => ({
              in: litres * replenisher * (mixStrength[day] ?? 1),
              used: perM2 * (areaM2[day] ?? 0),
              out: (litres * g) / bath.volumeL,
              lost: air * g,
            });
            const slope = (g: number) => {
              const r = rates(g);
              return r.in - r.used - r.out - r.lost;
            };
            const h = 1 / STEPS_A_DAY;
            for (let step = 0; step < STEPS_A_DAY; step++) {
              const k1 = slope(grams);
              const [g2, k2] = [grams + (h / 2) * k1, slope(grams + (h / 2) * k1)];
              const [g3, k3] = [grams + (h / 2) * k2, slope(grams + (h / 2) * k2)];
              const [g4, k4] = [grams + h * k3, slope(grams + h * k3)];
              for (const flow of ["in", "used", "out", "lost"] as const) {
                const at = (g: number) => rates(g)[flow];
                booked[flow] += (h / 6) * (at(grams) + 2 * at(g2) + 2 * at(g3) + at(g4));
              }
              grams += (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
            }
            const simulated = (evening[name] ?? Number.NaN) * bath.volumeL;
            const ledger =
              booked.in - booked.used - booked.out - booked.lost - booked.oxidisedAtOnce;
            expect(Math.abs(simulated - grams)).toBeLessThan(INTEGRATOR * (1 + grams));
            expect(Math.abs(simulated - ledger)).toBeLessThan(INTEGRATOR * (1 + booked.in));
          });
        }
      }),
      { numRuns: 30 },
    );
  });
});
