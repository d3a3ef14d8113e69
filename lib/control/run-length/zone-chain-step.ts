import { normalCdf } from "../../numerics/index.ts";
import type { ZoneChain } from "./zone-chain.ts";
import type { Zone } from "./zone-memory.ts";

/** The start of a chart with zone rules: all in the first state. */
export function zoneChainStart(chain: ZoneChain): Float64Array {
  const start = new Float64Array(chain.states);
  start[0] = 1;
  return start;
}

/** Probability of each zone for a reading about `mean`. */
export function zoneProbabilities(zones: readonly Zone[], mean: number): Float64Array {
  return Float64Array.from(zones, ({ lower, upper }) => cdf(upper - mean) - cdf(lower - mean));
}

/** One reading: what is left without a signal, state by state. */
export function zoneChainStep(
  chain: ZoneChain,
  mass: Float64Array,
  probability: Float64Array,
): Float64Array {
  const { next } = chain;
  const zones = probability.length;
  const later = new Float64Array(chain.states);
  for (let state = 0, at = 0; state < mass.length; state++) {
    const weight = mass[state] ?? 0;
    for (let zone = 0; zone < zones; zone++, at++) {
      const to = next[at] ?? -1;
      if (to >= 0) later[to] = (later[to] ?? 0) + weight * (probability[zone] ?? 0);
    }
  }
  return later;
}

/** Beyond 40 standard deviations, and at infinity, nothing is left in double precision. */
function cdf(z: number): number {
  return normalCdf(Math.min(40, Math.max(-40, z)));
}
