import { describe, expect, it } from "vitest";
import { simulatedLines, simulateLab } from "wetside/simulate";
import { dateOf, possibleFaults } from "./labs.ts";

const DAYS = 40;
const MOMENT = 12;
const clean = simulateLab({ seed: 31, days: DAYS });
// Two readings to a tenth of a degree.
const TENTHS = 1e-9;

function warmer(kind: string, size: number, line = "film") {
  return simulateLab({ seed: 31, days: DAYS, faults: [{ kind, line, fromDay: MOMENT, size }] });
}

const readings = (lab: typeof clean, bath: string, instrument: string) =>
  lab.temperatures.filter((each) => each.bath === bath && each.instrument === instrument);

describe("the temperature log", () => {
  it("has the controller of every bath three times a day", () => {
    for (const { id } of simulatedLines.flatMap(({ baths }) => baths)) {
      expect(readings(clean, id, "controller"), id).toHaveLength(3 * DAYS);
    }
  });

  it("has a thermometer in a developer every morning, in another bath on Mondays", () => {
    expect(readings(clean, "film-developer", "thermometer")).toHaveLength(DAYS);
    const mondays = readings(clean, "film-fixer", "thermometer").map(({ readAt }) =>
      new Date(`${readAt.slice(0, 10)}T00:00Z`).getUTCDay(),
    );
    expect(new Set(mondays)).toEqual(new Set([1]));
    expect(mondays.length).toBe(6);
  });

  it("stays within half a degree of the set point of a developer in order", () => {
    for (const { temperatureC } of readings(clean, "paper-developer", "thermometer")) {
      expect(Math.abs(temperatureC - 35)).toBeLessThan(0.5);
    }
  });

  for (const [kind, sign] of [
    ["developer-too-warm", 1],
    ["developer-too-cool", -1],
  ] as const) {
    it(`shows ${kind} on the thermometer from that morning on, in full`, () => {
      const lab = warmer(kind, 0.8);
      const before = readings(clean, "film-developer", "thermometer");
      readings(lab, "film-developer", "thermometer").forEach(({ readAt, temperatureC }, i) => {
        const by = temperatureC - (before[i]?.temperatureC ?? Number.NaN);
        const due = readAt >= dateOf(lab, MOMENT) ? sign * 0.8 : 0;
        expect(Math.abs(by - due), readAt).toBeLessThan(TENTHS);
      });
    });

    it(`hides ${kind} from the controller, and leaves every other bath as it was`, () => {
      const others = (lab: typeof clean) =>
        lab.temperatures.filter(
          ({ bath, instrument }) => bath !== "film-developer" || instrument === "controller",
        );
      expect(others(warmer(kind, 0.8))).toEqual(others(clean));
    });
  }

  it("is the same whatever else goes wrong", () => {
    for (const { kind, line } of possibleFaults.filter(({ kind }) => !/warm|cool/.test(kind))) {
      const faults = [{ kind, line, fromDay: MOMENT }];
      const lab = simulateLab({ seed: 31, days: DAYS, faults });
      expect(lab.temperatures, kind).toEqual(clean.temperatures);
    }
  });

  it("has the heater's own wander in the strips, that morning's offset and no other", () => {
    // Without any noise a film strip tells the temperature: LD green by (ln 2/10)·1.15 + 0.020 a degree.
    const noise = { stripSd: 0, layerSd: 0, readingSd: 0, wanderSd: 0 };
    const lab = simulateLab({ seed: 31, days: DAYS, noise, mixSd: 0 });
    const controller = readings(lab, "film-developer", "controller");
    const perDegree = (Math.LN2 / 10) * 1.15 + 0.02;
    for (const { takenAt, patches } of lab.strips.filter((s) => s.process === "colour-negative")) {
      const shown = controller.find(({ readAt }) => readAt.slice(0, 10) === takenAt.slice(0, 10));
      const offset = (shown?.temperatureC ?? Number.NaN) - 37.8;
      const ld = (patches.ld?.green ?? Number.NaN) - 0.88;
      // A tenth of a degree is the log's step; the tank wanders by a few thousandths with the strokes.
      expect(Math.abs(ld - perDegree * offset), takenAt).toBeLessThan(0.05 * perDegree + 0.004);
    }
  });
});
