import type { DevelopingTank } from "./developing-tank.ts";
import { loadOf } from "./film-need.ts";
import type { PackedBatch, PackingKind } from "./pack-batches.ts";

// One batch costs more than any number of mixed ones, a mixed one more than any half-empty one.
const BATCH = 1e6;
const MIXED = 1e3;

/** A load that fits the tank, and what it costs in the search. */
export interface Pattern {
  readonly films: readonly number[];
  readonly cost: number;
}

/** A batch with the volume and spirals its films ask for. */
export function packed(films: readonly number[], kinds: readonly PackingKind[]): PackedBatch {
  const load = kinds.map(({ spiral }, i) => ({ spiral, films: films[i] ?? 0 }));
  const { coverMl, spirals } = loadOf(load);
  const needed = kinds.reduce((total, kind, i) => total + kind.leastMl * (films[i] ?? 0), 0);
  return { films, coverMl, volumeMl: Math.max(coverMl, needed), spirals };
}

function fits(films: readonly number[], kinds: readonly PackingKind[], tank: DevelopingTank) {
  const load = kinds.map(({ spiral }, i) => ({ spiral, films: films[i] ?? 0 }));
  return (
    loadOf(load).heightMm <= tank.columnHeightMm + 1e-9 &&
    packed(films, kinds).volumeMl <= tank.fullMl + 1e-9
  );
}

/** Every load of one film or more that fits the tank. */
export function allPatterns(
  kinds: readonly PackingKind[],
  tank: DevelopingTank,
): readonly Pattern[] {
  let found: number[][] = [[]];
  kinds.forEach((kind, i) => {
    found = found.flatMap((start) => {
      const longer: number[][] = [];
      for (let films = 0; films <= kind.films; films++) {
        const next = [...start, films];
        if (!fits(next, kinds.slice(0, i + 1), tank)) break;
        longer.push(next);
      }
      return longer;
    });
  });
  return found
    .filter((films) => sum(films) > 0)
    .map((films) => {
      const mixed = new Set(kinds.filter((_, i) => (films[i] ?? 0) > 0).map((k) => k.spiral.name));
      // Squares reward full tanks: 2 + 1 costs less than 1.5 + 1.5 would.
      return { films, cost: BATCH + (mixed.size - 1) * MIXED - sum(films) ** 2 };
    });
}

/** Cheapest set of loads that takes all films, by dynamic programming. */
export function exactPacking(counts: readonly number[], patterns: readonly Pattern[]): number[][] {
  const best = new Map<string, { cost: number; pattern: Pattern | null }>();
  const solve = (left: readonly number[]): number => {
    if (sum(left) === 0) return 0;
    const key = left.join();
    const known = best.get(key);
    if (known) return known.cost;
    let cost = Number.POSITIVE_INFINITY;
    let pattern: Pattern | null = null;
    for (const each of patterns) {
      if (each.films.some((n, i) => n > (left[i] ?? 0))) continue;
      const total = each.cost + solve(left.map((n, i) => n - (each.films[i] ?? 0)));
      if (total < cost) [cost, pattern] = [total, each];
    }
    best.set(key, { cost, pattern });
    return cost;
  };
  solve(counts);
  const batches: number[][] = [];
  let left = [...counts];
  while (sum(left) > 0) {
    const films = best.get(left.join())?.pattern?.films;
    if (films === undefined) break;
    batches.push([...films]);
    left = left.map((n, i) => n - (films[i] ?? 0));
  }
  return batches;
}

/** Each film into the first tank with room: not always the fewest tanks. */
export function firstFit(
  counts: readonly number[],
  kinds: readonly PackingKind[],
  tank: DevelopingTank,
) {
  const batches: number[][] = [];
  counts.forEach((count, i) => {
    for (let film = 0; film < count; film++) {
      const plus = (batch: readonly number[]) => batch.map((n, j) => (j === i ? n + 1 : n));
      const open = batches.findIndex((batch) => fits(plus(batch), kinds, tank));
      if (open >= 0) batches[open] = plus(batches[open] ?? []);
      else batches.push(plus(kinds.map(() => 0)));
    }
  });
  return batches;
}

/** Sum of some numbers. */
export function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
