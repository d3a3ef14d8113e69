import { describe, expect, it } from "vitest";
import {
  colourNegativeFaults,
  colourNegativeProcess,
  colourPaperFaults,
  colourPaperProcess,
  faultChecks,
} from "wetside/control";

describe("the tables of faults", () => {
  const tables = [
    [colourNegativeFaults, colourNegativeProcess],
    [colourPaperFaults, colourPaperProcess],
  ] as const;
  it("speak only of parameters their process has", () => {
    for (const [table, process] of tables) {
      const known = process.parameters.map(({ id }) => id);
      for (const pattern of Object.values(table.patterns)) {
        const shapes = [pattern.shape, ...(pattern.factors ?? []).map(({ shape }) => shape)];
        for (const id of shapes.flatMap(Object.keys)) expect(known).toContain(id);
      }
    }
  });
  it("use every pattern, and give every illustrative size no published source", () => {
    for (const [table] of tables) {
      const used = new Set(table.faults.map(({ pattern }) => pattern));
      expect([...used].sort()).toEqual(Object.keys(table.patterns).sort());
      for (const { howObtained } of Object.values(table.patterns)) {
        expect(howObtained).toBe("illustrative");
      }
    }
  });
  it("say of every fault how it is confirmed and what then", () => {
    for (const [table] of tables) {
      for (const { confirm, remedy } of table.faults) {
        expect(confirm.length).toBeGreaterThan(10);
        expect(remedy.length).toBeGreaterThan(10);
      }
    }
  });
});

describe("the checks", () => {
  const ids = new Set(
    [...colourNegativeFaults.faults, ...colourPaperFaults.faults].map(({ id }) => id),
  );
  ids.add("nothing-wrong");
  it("give every outcome a probability, for known faults only", () => {
    for (const { outcomes, otherwise, expects, id } of faultChecks) {
      for (const row of [otherwise, ...Object.values(expects)]) {
        expect(row, id).toHaveLength(outcomes.length);
        expect(
          row.reduce((sum, p) => sum + p, 0),
          id,
        ).toBeCloseTo(1, 12);
        expect(row.every((p) => p >= 0)).toBe(true);
      }
      for (const fault of Object.keys(expects)) expect([...ids], id).toContain(fault);
    }
  });
});
