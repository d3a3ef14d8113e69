import { describe, expect, it } from "vitest";
import { simulateLab } from "wetside/simulate";
import { dateOf, possibleFaults } from "./labs.ts";

const DAYS = 120;
const MOMENT = 60;
const clean = simulateLab({ seed: 51, days: DAYS });
type Lab = typeof clean;

function shares(lab: Lab, from = MOMENT): Readonly<Record<string, number>> {
  const days = lab.remakes.filter(({ date }) => date >= dateOf(lab, from));
  const made = days.reduce((sum, day) => sum + day.printsMade, 0);
  const reasons = Object.keys(days[0]?.remade ?? {});
  return Object.fromEntries(
    reasons.map((reason) => [
      reason,
      days.reduce((sum, day) => sum + (day.remade[reason] ?? 0), 0) / made,
    ]),
  );
}

const withFault = (kind: string, line: string, size?: number) =>
  simulateLab({
    seed: 51,
    days: DAYS,
    faults: [{ kind, line, fromDay: MOMENT, ...(size === undefined ? {} : { size }) }],
  });

describe("the log of remakes", () => {
  it("counts the prints that were made", () => {
    for (const { date, printsMade } of clean.remakes) {
      const made = clean.production.filter(
        (row) => row.process === "colour-paper" && row.date === date,
      );
      expect(printsMade).toBe(made.reduce((sum, { count }) => sum + count, 0));
    }
  });

  it("never has more prints made again than were made", () => {
    for (const { printsMade, remade } of withFault("printer-at-fault", "paper", 0.5).remakes) {
      const all = Object.values(remade).reduce((sum, count) => sum + count, 0);
      expect(all).toBeLessThanOrEqual(printsMade);
    }
  });

  it("has about as many of each reason as on ordinary days, within five Poisson deviations", () => {
    const usual = { tooBright: 0.008, tooDim: 0.009, unsharp: 0.004, colour: 0.007, marks: 0.005 };
    const prints = clean.remakes.reduce((sum, day) => sum + day.printsMade, 0);
    for (const [reason, share] of Object.entries(usual)) {
      const found = (shares(clean, 0)[reason] ?? Number.NaN) * prints;
      // Days differ by exp(0.12·z), whose mean is 1.007; the line's wander adds a little.
      const expected = share * prints * Math.exp(0.12 ** 2 / 2);
      const sd = Math.sqrt(expected + (0.12 * expected) ** 2 / DAYS);
      expect(Math.abs(found - expected), reason).toBeLessThan(5 * sd + 0.02 * expected);
    }
  });

  it("doubles prints too dim, and halves those too bright, for 0.08 of the printer", () => {
    const [before, after] = [shares(clean), shares(withFault("printer-at-fault", "paper", 0.08))];
    expect((after.tooDim ?? 0) / (before.tooDim ?? 1)).toBeGreaterThan(1.8);
    expect((after.tooDim ?? 0) / (before.tooDim ?? 1)).toBeLessThan(2.2);
    expect((after.tooBright ?? 0) / (before.tooBright ?? 1)).toBeLessThan(0.65);
  });

  it("shows a printer at fault alone: the strips are in order", () => {
    const lab = withFault("printer-at-fault", "paper", 0.3);
    expect(lab.strips).toEqual(clean.strips);
    expect(lab.remakes).not.toEqual(clean.remakes);
  });

  it("shows a paper developer that does too much in prints too dim", () => {
    const after = shares(withFault("developer-too-warm", "paper", 2));
    expect(after.tooDim).toBeGreaterThan(1.5 * (shares(clean).tooDim ?? Number.NaN));
  });

  it("is the same whatever goes wrong on the film line", () => {
    for (const { kind } of possibleFaults.filter(({ line }) => line === "film")) {
      expect(withFault(kind, "film").remakes, kind).toEqual(clean.remakes);
    }
  });
});
