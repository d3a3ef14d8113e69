import { describe, expect, it } from "vitest";
import {
  colourNegativeFaults,
  type FaultEvidence,
  type FaultRanking,
  type FaultTable,
  labLogs,
  rankFaults,
} from "wetside/control";
import { components, window } from "../control/faults/window.ts";
import fc from "./fast-check.ts";

const RUNS = { numRuns: 25 };
const SUM = 1e-9; // some thirty doubles added
const SAME = 1e-6; // quadrature nodes fall differently where the peak is found differently

const reading = fc.integer({ min: -300, max: 300 }).map((k) => k / 1000);
const row = fc.array(reading, { minLength: components.length, maxLength: components.length });
const rows = fc.array(row, { minLength: 1, maxLength: 6 });

const all = (ranking: FaultRanking) => [
  ...ranking.faults.map(({ id, probability }) => [id, probability] as const),
  ["none", ranking.noneOfThese] as const,
  ["nothing", ranking.nothingWrong] as const,
];

function expectSame(a: FaultRanking, b: FaultRanking): void {
  const other = new Map<string, number>(all(b));
  for (const [id, p] of all(a)) expect(Math.abs(p - (other.get(id) ?? -1))).toBeLessThan(SAME);
}

/** Every number anywhere in a result. */
function numbers(value: unknown): readonly number[] {
  if (typeof value === "number") return [value];
  if (typeof value !== "object" || value === null) return [];
  return Object.values(value).flatMap(numbers);
}

const scaled = (e: FaultEvidence, k: number): FaultEvidence => ({
  ...e,
  components: e.components.map((c) => ({ ...c, limit: c.limit * k })),
  deviations: e.deviations.map((r) => r.map((v) => v * k)),
  noise: e.noise.map((r) => r.map((v) => v * k * k)),
});

function scaledTable(table: FaultTable, k: number): FaultTable {
  const limits = Object.entries(table.limits).map(([id, v]) => [id, v * k]);
  return { ...table, limits: Object.fromEntries(limits) };
}

/** The table with every direction turned round. */
function turned(table: FaultTable): FaultTable {
  const patterns = Object.entries(table.patterns).map(([id, pattern]) => {
    const shape = Object.entries(pattern.shape).map(([parameter, values]) => {
      const three = Object.entries(values).map(([colour, v]) => [colour, -v]);
      return [parameter, Object.fromEntries(three)];
    });
    return [id, { ...pattern, shape: Object.fromEntries(shape) }];
  });
  return { ...table, patterns: Object.fromEntries(patterns) };
}

describe("fault finding", () => {
  it("gives finite numbers and probabilities that sum to 1, whatever the deviations", () => {
    fc.assert(
      fc.property(rows, (deviations) => {
        const ranking = rankFaults(window(deviations));
        expect(numbers(ranking).every(Number.isFinite)).toBe(true);
        const sum = all(ranking).reduce((s, [, p]) => s + p, 0);
        expect(Math.abs(sum - 1)).toBeLessThan(SUM);
        for (const [, p] of all(ranking)) expect(p >= 0 && p <= 1).toBe(true);
        const ordered = ranking.faults.map(({ probability }) => probability);
        expect(ordered).toEqual([...ordered].sort((a, b) => b - a));
      }),
      RUNS,
    );
  });

  it("does not depend on the unit of density", () => {
    fc.assert(
      fc.property(rows, fc.constantFrom(0.25, 4), (deviations, k) => {
        const evidence = window(deviations);
        const table = scaledTable(colourNegativeFaults, k);
        expectSame(rankFaults(evidence), rankFaults(scaled(evidence, k), { table }));
      }),
      RUNS,
    );
  });

  it("treats up and down alike: all signs turned round give the same probabilities", () => {
    fc.assert(
      fc.property(rows, (deviations) => {
        const down = deviations.map((r) => r.map((v) => -v));
        const table = turned(colourNegativeFaults);
        expectSame(rankFaults(window(deviations)), rankFaults(window(down), { table }));
      }),
      RUNS,
    );
  });

  it("does not depend on the order of the readings", () => {
    fc.assert(
      fc.property(rows, (deviations) => {
        const evidence = window(deviations);
        const back = <T>(list: readonly T[]): readonly T[] => [...list].reverse();
        const mirrored: FaultEvidence = {
          ...evidence,
          components: back(evidence.components),
          deviations: evidence.deviations.map(back),
          noise: back(evidence.noise.map(back)),
        };
        expectSame(rankFaults(evidence), rankFaults(mirrored));
      }),
      RUNS,
    );
  });

  it("is the surer that something is wrong the larger a fault's own pattern stands", () => {
    const ids = Object.entries(colourNegativeFaults.patterns).filter(
      ([, { shape }]) => Object.keys(shape).length > 0,
    );
    fc.assert(
      fc.property(fc.constantFrom(...ids), fc.integer({ min: 1, max: 5 }), ([, pattern], n) => {
        let before = 1;
        for (const size of [0.25, 0.5, 1, 2, 4]) {
          const one = components.map(({ parameter, colour }) => {
            return size * (pattern.shape[parameter]?.[colour] ?? 0);
          });
          const { nothingWrong } = rankFaults(window(Array.from({ length: n }, () => one)));
          expect(nothingWrong).toBeLessThanOrEqual(before + SUM);
          before = nothingWrong;
        }
      }),
      RUNS,
    );
  });

  it("is the surer that something is wrong the more strips show it", () => {
    fc.assert(
      fc.property(fc.constantFrom(0.03, -0.04, 0.06), (ld) => {
        const one = components.map(({ parameter }) => (parameter === "ld" ? ld : ld / 2));
        let before = 1;
        for (const n of [1, 2, 4, 8, 16]) {
          const ranking = rankFaults(window(Array.from({ length: n }, () => one)));
          expect(ranking.nothingWrong).toBeLessThanOrEqual(before + SUM);
          before = ranking.nothingWrong;
        }
      }),
      RUNS,
    );
  });
});

describe("a ranking with logs", () => {
  const basePeriod = { from: "2026-07-01", to: "2026-07-20" };
  const at = (i: number) => new Date(Date.UTC(2026, 6, 1 + i, 7)).toISOString().slice(0, 16);
  const few = fc.array(fc.integer({ min: -40, max: 40 }), { minLength: 40, maxLength: 40 });
  const checkLog = (changes: readonly number[], unit = 1) =>
    changes.map((change, i) => ({
      readAt: at(i),
      line: "film",
      check: "developer-time",
      value: unit * (195 + change / 20),
    }));
  const rankWith = (readings: ReturnType<typeof checkLog>, deviations: readonly number[][]) =>
    rankFaults(window(deviations), {
      logs: labLogs({ basePeriod, checks: { line: "film", readings } }),
    });

  it("does not depend on the unit or the order of the readings", () => {
    fc.assert(
      fc.property(few, rows, (changes, deviations) => {
        const made = rankWith(checkLog(changes), deviations);
        expectSame(made, rankWith(checkLog(changes, 1 / 60), deviations));
        expectSame(made, rankWith([...checkLog(changes)].reverse(), deviations));
      }),
      RUNS,
    );
  });

  it("never moves two faults' odds by more than the stated errors of check and log, and the moment, allow", () => {
    // 0.97 of a stopwatch that finds a wrong time, beside 0.02 of logs that are wrong, a third each
    // way; a log that is wrong may be so from any of the n strips.
    const bound = (n: number) => Math.log((0.98 * 0.97 * n + 0.02 / 3) / (0.02 / 3));
    fc.assert(
      fc.property(few, fc.integer({ min: -400, max: 400 }), rows, (changes, off, deviations) => {
        const shifted = changes.map((change, i) => (i > 28 ? change + off : change));
        const alone = new Map<string, number>(all(rankFaults(window(deviations))));
        const made = all(rankWith(checkLog(shifted), deviations));
        const moved = made.flatMap(([id, p]) => {
          const before = alone.get(id) ?? 0;
          return p > 1e-200 && before > 1e-200 ? [Math.log(p / before)] : [];
        });
        const spread = Math.max(...moved) - Math.min(...moved);
        expect(spread).toBeLessThan(bound(deviations.length) + SAME);
      }),
      RUNS,
    );
  });
});
