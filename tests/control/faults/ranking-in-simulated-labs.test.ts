import { describe, expect, it } from "vitest";
import { gammaLn } from "wetside/numerics";
import { kindsOf, rankedLabs, rankedLines, rightBy } from "../../bench/ranking-labs.ts";

// A small count of what `npm run fault-ranking -- 25` counts at length (docs/faults.md), with other seeds.

const SEEDS = [101, 102, 103];
const WANTED = 0.9;
/** So many right by luck at the wanted rate would be seen once in twenty such counts. */
const LUCK = 0.05;
const SLOW_MS = 240_000;

/** P(X ≥ hits) of a binomial count: how likely at least so many are if only `rate` of labs is right. */
function atLeast(hits: number, n: number, rate: number): number {
  let sum = 0;
  for (let k = Math.ceil(hits); k <= n; k++) {
    const choose = gammaLn(n + 1) - gammaLn(k + 1) - gammaLn(n - k + 1);
    sum += Math.exp(choose + k * Math.log(rate) + (n - k) * Math.log(1 - rate));
  }
  return sum;
}

describe("the ranking in simulated labs at twice the action limit", () => {
  const counts = { labs: 0, group: 0, fault: 0 };
  it("bounds luck by the binomial law", () => {
    expect(atLeast(0, 10, 0.9)).toBeCloseTo(1, 12);
    expect(atLeast(10, 10, 0.9)).toBeCloseTo(0.9 ** 10, 12);
  });

  for (const each of rankedLines) {
    const kinds = kindsOf(each).filter((kind) => kind !== "printer-at-fault");
    it(`finds the very fault first in over 90 % of ${each.line} labs that keep their logs`, {
      timeout: SLOW_MS,
    }, () => {
      let withLogs = 0;
      for (const kind of kinds) {
        for (const lab of SEEDS.flatMap((seed) => rankedLabs(each, kind, seed, [2]))) {
          const strips = rightBy(lab.alone, lab.truth, lab.group);
          counts.labs += 1;
          counts.group += strips.group;
          counts.fault += strips.fault;
          withLogs += rightBy(lab.withLogs, lab.truth, lab.group).fault;
        }
      }
      const labs = kinds.length * SEEDS.length;
      // Ties count in part; rounding up would flatter.
      expect(atLeast(Math.floor(withLogs), labs, WANTED)).toBeLessThan(LUCK);
    });
  }

  it("finds the group of the true fault first in over 90 % by the strips alone, the very fault less often", () => {
    expect(counts.labs).toBeGreaterThan(90);
    expect(atLeast(counts.group, counts.labs, WANTED)).toBeLessThan(LUCK);
    expect(counts.fault / counts.labs).toBeLessThan(WANTED);
  });
});
