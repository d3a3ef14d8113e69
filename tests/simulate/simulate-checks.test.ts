import { describe, expect, it } from "vitest";
import { simulateLab } from "wetside/simulate";
import { dateOf, possibleFaults } from "./labs.ts";

const DAYS = 42;
const MOMENT = 20;
const clean = simulateLab({ seed: 61, days: DAYS });
type Lab = typeof clean;

const withFault = (kind: string, size: number, line = "film") =>
  simulateLab({ seed: 61, days: DAYS, faults: [{ kind, line, fromDay: MOMENT, size }] });

const readings = (lab: Lab, check: string, line = "film") =>
  lab.checks.filter((each) => each.check === check && each.line === line);

/** By how much each reading from the moment on differs from that of the lab in order. */
function moved(lab: Lab, check: string): readonly number[] {
  const before = readings(clean, check);
  return readings(lab, check).flatMap(({ readAt, value }, i) =>
    readAt >= dateOf(lab, MOMENT) ? [value - (before[i]?.value ?? Number.NaN)] : [],
  );
}

// What each fault does to the check that is made for it; a reading has a step.
const telling = [
  { kind: "developer-too-long", size: 0.1, check: "developer-time", by: 0.1 * 195, step: 0.1 },
  { kind: "developer-too-short", size: 0.1, check: "developer-time", by: -0.1 * 195, step: 0.1 },
  { kind: "densitometer-at-fault", size: 0.06, check: "check-plaque", by: 0.06, step: 0.001 },
] as const;

describe("the check log", () => {
  it("has circulation and plaque every morning, the rest on Mondays and Thursdays", () => {
    expect(readings(clean, "circulation")).toHaveLength(DAYS);
    expect(readings(clean, "check-plaque", "paper")).toHaveLength(DAYS);
    for (const check of ["developer-time", "specific-gravity", "clearing-time"]) {
      expect(readings(clean, check), check).toHaveLength((2 * DAYS) / 7);
    }
  });

  for (const { kind, size, check, by, step } of telling) {
    it(`shows ${kind} in ${check}, in full and from its day on`, () => {
      const all = moved(withFault(kind, size), check);
      expect(all.length).toBeGreaterThan(5);
      for (const each of all) expect(Math.abs(each - by)).toBeLessThanOrEqual(step + 1e-9);
    });
  }

  it("shows a mix too strong in the specific gravity, one too weak the other way", () => {
    // 1.1 thousandths for each g/L of some 35 g/L.
    for (const each of moved(withFault("developer-too-strong", 0.3), "specific-gravity")) {
      expect(each).toBeGreaterThan(0.3 * 34 * 0.0011 - 0.0005);
    }
    for (const each of moved(withFault("developer-too-weak", 0.3), "specific-gravity")) {
      expect(each).toBeLessThan(-0.3 * 34 * 0.0011 + 0.0005);
    }
  });

  it("shows a fixer that lost half its strength in twice the clearing time", () => {
    const lab = withFault("fixer-exhausted", 0.5);
    const before = readings(clean, "clearing-time");
    readings(lab, "clearing-time").forEach(({ readAt, value }, i) => {
      const due = (before[i]?.value ?? Number.NaN) * (readAt >= dateOf(lab, MOMENT) ? 2 : 1);
      expect(Math.abs(value - due), readAt).toBeLessThanOrEqual(1.5);
    });
  });

  it("shows a poor wash in what is left of thiosulfate", () => {
    const lab = withFault("wash-poor", 0.5);
    const before = readings(clean, "residual-thiosulfate");
    readings(lab, "residual-thiosulfate").forEach(({ readAt, value }, i) => {
      const due = (before[i]?.value ?? Number.NaN) * (readAt >= dateOf(lab, MOMENT) ? 3 : 1);
      expect(Math.abs(value - due), readAt).toBeLessThanOrEqual(2);
    });
  });

  it("keeps every other check, and the other line's, as they were", () => {
    const tells: Readonly<Record<string, readonly string[]>> = {
      "developer-too-long": ["developer-time"],
      "developer-too-short": ["developer-time"],
      "densitometer-at-fault": ["check-plaque"],
      "fixer-exhausted": ["clearing-time", "residual-thiosulfate"],
      "wash-poor": ["residual-thiosulfate"],
    };
    const inDeveloper = /strong|weak|replenished|oxidised|contaminated/;
    for (const { kind, line } of possibleFaults) {
      const lab = simulateLab({ seed: 61, days: DAYS, faults: [{ kind, line, fromDay: MOMENT }] });
      const told = tells[kind] ?? (inDeveloper.test(kind) ? ["specific-gravity"] : []);
      const rest = (each: Lab) =>
        each.checks.filter((row) => row.line !== line || !told.includes(row.check));
      expect(rest(lab), `${kind} ${line}`).toEqual(rest(clean));
    }
  });
});

describe("the work log", () => {
  it("names work and line, never what went wrong with it", () => {
    const words = new Set(["developer-mixed", "fixer-handled", "bleach-handled"]);
    for (const { kind, line } of possibleFaults) {
      const lab = simulateLab({ seed: 61, days: DAYS, faults: [{ kind, line, fromDay: MOMENT }] });
      for (const { work, ...rest } of lab.work) {
        expect(words.has(work)).toBe(true);
        expect(Object.keys(rest).sort()).toEqual(["doneAt", "line"]);
      }
    }
  });

  it("has on a day of contamination at most one entry more than without, and fixer is often handled anyway", () => {
    const handled = clean.work.filter(({ work }) => work === "fixer-handled");
    expect(handled.length).toBeGreaterThan(2);
    for (let seed = 0; seed < 20; seed++) {
      const faults = [{ kind: "contaminated-with-fixer", line: "film", fromDay: MOMENT }];
      const [without, lab] = [
        simulateLab({ seed, days: DAYS }),
        simulateLab({ seed, days: DAYS, faults }),
      ];
      const more = lab.work.length - without.work.length;
      expect([0, 1]).toContain(more);
    }
  });
});
