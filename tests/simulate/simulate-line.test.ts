import { describe, expect, it } from "vitest";
import { simulatedFaultEffect, simulateLab } from "wetside/simulate";
import {
  atOnce,
  dateOf,
  difference,
  inARow,
  logsBetween,
  possibleFaults,
  processOf,
} from "./labs.ts";

const DAYS = 40;
const MOMENT = 17;
const clean = simulateLab({ seed: 21, days: DAYS });
const momentDate = dateOf(clean, MOMENT);

// Two readings, each rounded to a thousandth.
const TWO_ROUNDINGS = 0.001 + 1e-9;
// After nine turnovers e^-9 of an effect of 0.15 is missing, and strokes wander by 0.4 %.
const SETTLED = 0.0015;

function faulty(kind: string, line: "film" | "paper", more: { readonly untilDay?: number } = {}) {
  return simulateLab({ seed: 21, days: DAYS, faults: [{ kind, line, fromDay: MOMENT, ...more }] });
}

/** The strips of a line, of two labs that differ by a fault alone. */
function pairs(lab: typeof clean, line: "film" | "paper") {
  return clean.strips
    .map((strip, i) => ({ strip, other: lab.strips[i] }))
    .filter(({ strip }) => strip.process === processOf[line]);
}

describe("before its moment", () => {
  for (const { kind, line } of possibleFaults) {
    it(`${kind} on ${line} changes no number in any log`, () => {
      const before = logsBetween(clean, clean.from, momentDate);
      expect(before.strips.length).toBeGreaterThan(50);
      expect(logsBetween(faulty(kind, line), clean.from, momentDate)).toEqual(before);
    });
  }
});

describe("from its moment on", () => {
  for (const { kind, line } of possibleFaults) {
    it(`${kind} on ${line} leaves the other line's strips, the work and the times alone`, () => {
      const lab = faulty(kind, line);
      const others = (log: typeof clean) =>
        log.strips.filter(({ process }) => process !== processOf[line]);
      expect(others(lab)).toEqual(others(clean));
      expect(lab.production).toEqual(clean.production);
      expect(lab.strips.map(({ takenAt }) => takenAt)).toEqual(
        clean.strips.map(({ takenAt }) => takenAt),
      );
    });
  }

  for (const { kind, line } of atOnce) {
    it(`${kind} on ${line} moves the first strip by its whole effect`, () => {
      const first = pairs(faulty(kind, line), line).find(
        ({ strip }) => strip.takenAt >= momentDate,
      );
      const moved = difference(first?.other, first?.strip);
      for (const [patch, three] of Object.entries(simulatedFaultEffect(processOf[line], kind))) {
        inARow(three).forEach((effect, at) => {
          const by = moved[patch]?.[at] ?? Number.NaN;
          expect(Math.abs(by - effect), `${patch} ${at}`).toBeLessThanOrEqual(TWO_ROUNDINGS);
        });
      }
    });
  }

  for (const line of ["film", "paper"] as const) {
    for (const kind of ["over-replenished", "under-replenished"]) {
      it(`${kind} on ${line} moves no strip that morning, some by midday, and settles at its effect`, () => {
        const days = 150;
        const options = { seed: 22, days, mixSd: 0 };
        const without = simulateLab(options).strips;
        const lab = simulateLab({ ...options, faults: [{ kind, line, fromDay: 20 }] });
        const own = without
          .map((strip, i) => ({ strip, other: lab.strips[i] }))
          .filter(({ strip }) => strip.process === processOf[line]);
        const date = dateOf(lab, 20);
        const first = own.findIndex(({ strip }) => strip.takenAt >= date);
        expect(own[first]?.other).toEqual(own[first]?.strip);
        const ld = (at: number) => {
          const [red = 0, green = 0, blue = 0] =
            difference(own[at]?.other, own[at]?.strip).ld ?? [];
          return (red + green + blue) / 3;
        };
        const towards = kind === "over-replenished" ? 1 : -1;
        const week = own.findIndex(({ strip }) => strip.takenAt >= dateOf(lab, 27));
        expect(towards * ld(first + 1)).toBeGreaterThanOrEqual(0);
        expect(towards * ld(week)).toBeGreaterThan(0.01);
        expect(towards * ld(own.length - 1)).toBeGreaterThan(towards * ld(week));
        const effect = simulatedFaultEffect(processOf[line], kind);
        const last = difference(own.at(-1)?.other, own.at(-1)?.strip);
        for (const [patch, three] of Object.entries(effect)) {
          inARow(three).forEach((v, at) => {
            const off = Math.abs((last[patch]?.[at] ?? Number.NaN) - v);
            expect(off, `${patch} ${at}`).toBeLessThanOrEqual(TWO_ROUNDINGS + SETTLED);
          });
        }
      });
    }
  }

  it("a mishandled strip is the first of its day, and no other", () => {
    for (const line of ["film", "paper"] as const) {
      const odd = pairs(faulty("strip-mishandled", line), line).filter(
        ({ strip, other }) => JSON.stringify(strip.patches) !== JSON.stringify(other?.patches),
      );
      expect(odd).toHaveLength(1);
      expect(odd[0]?.strip.takenAt.slice(0, 10)).toBe(momentDate);
    }
  });
});

describe("once it is mended", () => {
  const lasting = /replenished|too-strong|too-weak|oxidised|printer/;
  for (const { kind, line } of possibleFaults.filter(({ kind }) => !lasting.test(kind))) {
    it(`${kind} on ${line} leaves the strips as if it had never been`, () => {
      const lab = faulty(kind, line, { untilDay: 25 });
      const after = pairs(lab, line).filter(({ strip }) => strip.takenAt >= dateOf(lab, 25));
      expect(after.length).toBeGreaterThan(20);
      for (const { strip, other } of after) {
        for (const [patch, three] of Object.entries(difference(other, strip))) {
          // A bath mixed afresh for contamination stands at its aim, not where the old one had drifted.
          const drift = kind.startsWith("contaminated") ? 0.012 : 0;
          for (const by of three)
            expect(Math.abs(by), patch).toBeLessThanOrEqual(TWO_ROUNDINGS + drift);
        }
      }
    });
  }

  it("a pump that delivered too little leaves a bath that comes back by e^(−n)", () => {
    const options = { seed: 22, days: 120, mixSd: 0 };
    const without = simulateLab(options).strips;
    const faults = [{ kind: "under-replenished", line: "film", fromDay: 20, untilDay: 60 }];
    const { strips } = simulateLab({ ...options, faults });
    const ldOff = (day: number) => {
      const at = without.findIndex(
        ({ takenAt, process }) =>
          process === "colour-negative" && takenAt >= dateOf({ from: "2026-05-17" }, day),
      );
      return Math.abs(difference(strips[at], without[at]).ld?.[1] ?? Number.NaN);
    };
    const steps = [60, 70, 80, 100, 119].map(ldOff);
    for (let i = 1; i < steps.length; i++) {
      expect(steps[i]).toBeLessThanOrEqual((steps[i - 1] ?? 0) + TWO_ROUNDINGS);
    }
    expect(steps[0]).toBeGreaterThan(0.06);
    expect(steps.at(-1)).toBeLessThan(0.006);
  });
});
