import { describe, expect, it } from "vitest";
import { faultLogKinds, faultWorkKinds } from "wetside/control";
import { type SimulatedLab, simulatedFaultIds, simulateLab } from "wetside/simulate";

const DAYS = 120;
const START = 60;
const labWith = (kind?: string, size?: number): SimulatedLab => {
  const fault = { kind: kind ?? "", line: "film", fromDay: START, ...(size ? { size } : {}) };
  return simulateLab({ seed: 5, days: DAYS, faults: kind === undefined ? [] : [fault] });
};
const dayOf = (at: string) =>
  (Date.parse(`${at.slice(0, 10)}T00:00Z`) - Date.parse("2026-05-17T00:00Z")) / 86_400_000;

/** Mean of a check before and since the fault, film line. */
function means({ checks }: SimulatedLab, check: string) {
  const film = checks.filter((each) => each.line === "film" && each.check === check);
  const mean = (some: typeof film) => some.reduce((s, { value }) => s + value, 0) / some.length;
  const since = film.filter(({ readAt }) => dayOf(readAt) >= START);
  return { before: mean(film.filter((each) => !since.includes(each))), since: mean(since) };
}
const ratio = (kind: string, check: string, size: number) => {
  const { before, since } = means(labWith(kind, size), check);
  return since / before;
};

describe("the check log of a simulated lab", () => {
  it("holds only checks and work that fault finding knows, in order of time, for every line", () => {
    const lab = labWith();
    const kinds = new Set(faultLogKinds.map(({ id }) => id));
    expect(lab.checks.every(({ check }) => kinds.has(check))).toBe(true);
    expect(lab.work.every(({ work }) => faultWorkKinds.some(({ id }) => id === work))).toBe(true);
    expect(new Set(lab.checks.map(({ line }) => line))).toEqual(new Set(["film", "paper"]));
    const times = lab.checks.map(({ readAt }) => readAt);
    expect([...times].sort()).toEqual(times);
  });

  it("shows each fault in the check that gives it away, by about its size", () => {
    expect(ratio("developer-too-long", "developer-time", 0.06)).toBeCloseTo(1.06, 2);
    expect(ratio("developer-too-short", "developer-time", 0.06)).toBeCloseTo(0.94, 2);
    expect(ratio("fixer-exhausted", "clearing-time", 0.5)).toBeCloseTo(2, 0);
    expect(ratio("wash-poor", "residual-thiosulfate", 0.4)).toBeGreaterThan(2);
    const plaque = means(labWith("densitometer-at-fault", 0.05), "check-plaque");
    expect(plaque.since - plaque.before).toBeCloseTo(0.05, 2);
    const gravity = means(labWith("developer-too-weak", 0.2), "specific-gravity");
    expect(gravity.since - gravity.before).toBeLessThan(-0.004);
  });

  it("shows nothing of a fault it cannot see", () => {
    for (const check of ["developer-time", "circulation", "check-plaque", "clearing-time"]) {
      expect(ratio("developer-too-warm", check, 0.6), check).toBeCloseTo(1, 1);
    }
  });
});

describe("the work log of a simulated lab", () => {
  it("does not name what went wrong, and is full of work that let nothing in", () => {
    const text = JSON.stringify([labWith("contaminated-with-fixer").work, labWith().checks]);
    for (const id of simulatedFaultIds) expect(text).not.toContain(id);
    const upkeep = labWith().work.filter(({ work }) => work === "fixer-handled");
    expect(upkeep.length).toBeGreaterThan(DAYS / 24);
  });

  it("usually holds the work that went before a contamination, and now and then does not", () => {
    const held = Array.from({ length: 40 }, (_, seed) => {
      const faults = [{ kind: "contaminated-with-bleach", line: "film", fromDay: 10 }];
      const { work } = simulateLab({ seed, days: 12, faults });
      return work.some(
        ({ doneAt, line, work: what }) =>
          line === "film" && what === "bleach-handled" && dayOf(doneAt) === 10,
      );
    }).filter(Boolean).length;
    // Binomial with 40 and about 0.86: all 40 would come once in 400, 25 or fewer far more rarely.
    expect(held).toBeGreaterThan(25);
    expect(held).toBeLessThan(40);
  });
});
