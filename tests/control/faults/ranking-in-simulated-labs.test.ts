import { beforeAll, describe, expect, it } from "vitest";
import { gammaLn } from "wetside/numerics";
import { kindsOf, rankedLabs, rankedLines, rightBy } from "../../bench/ranking-labs.ts";

// A small count of what `npm run fault-ranking -- 25` counts at length (docs/faults.md), with other seeds.

const SEEDS = [101, 102, 103];
const WANTED = 0.9;
/** So many right although only the wanted rate is true would be seen once in twenty such counts. */
const LUCK = 0.05;
/** So few right although the wanted rate is true would be seen once in a hundred such counts. */
const BAD_LUCK = 0.01;
const SLOW_MS = 1_200_000;

/** P(X ≥ hits) of a binomial count: how likely at least so many are if only `rate` of labs is right. */
function atLeast(hits: number, n: number, rate: number): number {
  let sum = 0;
  for (let k = Math.ceil(hits); k <= n; k++) {
    const choose = gammaLn(n + 1) - gammaLn(k + 1) - gammaLn(n - k + 1);
    sum += Math.exp(choose + k * Math.log(rate) + (n - k) * Math.log(1 - rate));
  }
  return sum;
}

/** Labs of one line by how they were ranked right. */
interface Count {
  readonly line: string;
  readonly labs: number;
  readonly group: number;
  readonly fault: number;
  readonly withLogs: number;
}

function countOf(each: (typeof rankedLines)[number]): Count {
  const kinds = kindsOf(each).filter((kind) => kind !== "printer-at-fault");
  const labs = kinds.flatMap((kind) => SEEDS.flatMap((seed) => rankedLabs(each, kind, seed, [2])));
  const sum = (of: (lab: (typeof labs)[number]) => number) =>
    labs.reduce((total, lab) => total + of(lab), 0);
  return {
    line: each.line,
    labs: labs.length,
    group: sum(({ alone, truth, group }) => rightBy(alone, truth, group).group),
    fault: sum(({ alone, truth, group }) => rightBy(alone, truth, group).fault),
    withLogs: sum(({ withLogs, truth, group }) => rightBy(withLogs, truth, group).fault),
  };
}

describe("the ranking in simulated labs at twice the action limit", () => {
  let counts: readonly Count[] = [];
  beforeAll(() => {
    counts = rankedLines.map(countOf);
  }, SLOW_MS);

  it("bounds luck by the binomial law", () => {
    expect(atLeast(0, 10, 0.9)).toBeCloseTo(1, 12);
    expect(atLeast(10, 10, 0.9)).toBeCloseTo(0.9 ** 10, 12);
  });

  it("finds the very fault first in over 90 % of labs that keep their logs, on each line", () => {
    expect(counts.map(({ line }) => line)).toEqual(["film", "paper"]);
    for (const { line, labs, withLogs } of counts) {
      // Ties count in part; rounding up would flatter.
      expect(atLeast(Math.floor(withLogs), labs, WANTED), line).toBeLessThan(LUCK);
    }
  });

  it("finds the group first by the strips alone no more rarely than 90 % would, the very fault less often", () => {
    const all = (of: (count: Count) => number) => counts.reduce((sum, each) => sum + of(each), 0);
    const labs = all((each) => each.labs);
    const fewer = 1 - atLeast(all(({ group }) => group) + 1, labs, WANTED);
    expect(fewer).toBeGreaterThan(BAD_LUCK);
    expect(all(({ fault }) => fault) / labs).toBeLessThan(WANTED);
  });
});
