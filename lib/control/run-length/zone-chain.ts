import { type Zone, zoneMemories } from "./zone-memory.ts";
import type { ZoneRule } from "./zone-rule.ts";

/** A Markov chain over everything a set of rules must remember. State 0 is the start. */
export interface ZoneChain {
  readonly zones: readonly Zone[];
  readonly states: number;
  /** `next[state · zones + zone]`: the state after a reading in that zone, −1 for a signal. */
  readonly next: Int32Array;
}

const chains = new Map<string, ZoneChain>();
const MOST_CHAINS = 50;

/** The chain of a set of rules, which is built once. */
export function zoneChain(rules: readonly ZoneRule[]): ZoneChain {
  const name = JSON.stringify(rules);
  const known = chains.get(name);
  if (known) return known;
  const chain = builtChain(rules);
  if (chains.size >= MOST_CHAINS) chains.clear();
  chains.set(name, chain);
  return chain;
}

/** Builds the chain: all states that can be reached, then those that cannot be told apart merged. */
function builtChain(rules: readonly ZoneRule[]): ZoneChain {
  const zones = zonesOf(rules);
  const memories = rules.flatMap(zoneMemories);
  const first = memories.map(() => 0);
  const numbers = new Map<string, number>([[first.join(), 0]]);
  const states: (readonly number[])[] = [first];
  const next: number[][] = [];
  for (let i = 0; i < states.length; i++) {
    const state = states[i] ?? first;
    next.push(
      zones.map((zone) => {
        const after: number[] = [];
        for (const [j, memory] of memories.entries()) {
          const value = memory(state[j] ?? 0, zone);
          if (value === undefined) return -1;
          after.push(value);
        }
        const key = after.join();
        const known = numbers.get(key);
        if (known !== undefined) return known;
        numbers.set(key, states.length);
        states.push(after);
        return states.length - 1;
      }),
    );
  }
  const rows = merged(next);
  return { zones, states: rows.length, next: Int32Array.from(rows.flat()) };
}

function zonesOf(rules: readonly ZoneRule[]): Zone[] {
  const cuts = new Set(rules.flatMap((rule) => [rule.sigmas, -rule.sigmas].map((s) => s + 0)));
  const edges = [
    Number.NEGATIVE_INFINITY,
    ...[...cuts].sort((a, b) => a - b),
    Number.POSITIVE_INFINITY,
  ];
  return edges
    .slice(1)
    .map((upper, i) => ({ lower: edges[i] ?? Number.NEGATIVE_INFINITY, upper }))
    .filter((zone) => zone.lower < zone.upper);
}

/** Moore's partition refinement: states are split until those in a class lead to the same classes. */
function merged(next: readonly (readonly number[])[]): number[][] {
  let classOf = next.map(() => 0);
  for (let count = 0; ; ) {
    const names = new Map<string, number>();
    const refined = next.map((row, i) => {
      const key = `${classOf[i]}|${row.map((to) => (to < 0 ? -1 : classOf[to])).join()}`;
      const known = names.get(key) ?? names.size;
      names.set(key, known);
      return known;
    });
    if (names.size === count) {
      const rows: number[][] = [];
      next.forEach((row, i) => {
        const own = refined[i] ?? 0;
        rows[own] ??= row.map((to) => (to < 0 ? -1 : (refined[to] ?? 0)));
      });
      return rows;
    }
    count = names.size;
    classOf = refined;
  }
}
