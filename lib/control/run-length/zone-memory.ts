import type { ZoneRule } from "./zone-rule.ts";

/** A stretch of the standardised scale that no rule cuts. */
export interface Zone {
  readonly lower: number;
  readonly upper: number;
}

/** What one rule must remember, as a whole number; 0 at the start. `undefined` is the signal. */
export type ZoneMemory = (state: number, zone: Zone) => number | undefined;

/** The memories a rule needs: one, or one for each side. */
export function zoneMemories(rule: ZoneRule): readonly ZoneMemory[] {
  if (rule.pattern === "within") {
    return [inARow(rule.hits, (z) => z.lower >= -rule.sigmas && z.upper <= rule.sigmas)];
  }
  const above = (z: Zone) => z.lower >= rule.sigmas;
  const below = (z: Zone) => z.upper <= -rule.sigmas;
  if (rule.pattern === "outside") {
    return [
      rule.bothSides
        ? outsideOnBothSides(rule.hits, above, below)
        : inARow(rule.hits, (z) => above(z) || below(z)),
    ];
  }
  const { hits, window } = rule;
  const memory = (hit: (z: Zone) => boolean) =>
    hits === window ? inARow(hits, hit) : someOf(hits, window, hit);
  return [memory(above), memory(below)];
}

/** Counts hits in a row. */
function inARow(hits: number, hit: (zone: Zone) => boolean): ZoneMemory {
  return (count, zone) => {
    if (!hit(zone)) return 0;
    return count + 1 >= hits ? undefined : count + 1;
  };
}

/** Remembers which of the last window − 1 readings were hits, as bits; the newest is the lowest. */
function someOf(hits: number, window: number, hit: (zone: Zone) => boolean): ZoneMemory {
  const keep = 2 ** (window - 1) - 1;
  return (bits, zone) => {
    const newest = hit(zone) ? 1 : 0;
    const all = (bits << 1) | newest;
    if (newest === 1 && ones(all) >= hits) return undefined;
    return all & keep;
  };
}

/**
 * Counts readings outside in a row, and how many of the last lie on one side: the window holds both
 * sides unless that run fills it. State: 1 + run (0 … hits − 1) + hits · count + hits² · side.
 */
function outsideOnBothSides(
  hits: number,
  above: (zone: Zone) => boolean,
  below: (zone: Zone) => boolean,
): ZoneMemory {
  return (state, zone) => {
    const side = above(zone) ? 1 : below(zone) ? 2 : 0;
    if (side === 0) return 0;
    const run = state % hits;
    const count = Math.floor(state / hits) % hits;
    const lastSide = Math.floor(state / (hits * hits));
    const nextRun = side === lastSide ? run + 1 : 1;
    if (count + 1 >= hits && nextRun < hits) return undefined;
    return Math.min(nextRun, hits - 1) + hits * Math.min(count + 1, hits - 1) + hits * hits * side;
  };
}

function ones(bits: number): number {
  let count = 0;
  for (let rest = bits; rest > 0; rest >>= 1) count += rest & 1;
  return count;
}
