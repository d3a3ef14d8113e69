import { InputError, requireEntries, requireNumber } from "../../input/index.ts";
import { sumOf } from "./flat-vectors.ts";
import type { AverageRunLength } from "./run-length.ts";
import { computable } from "./survival-operator.ts";
import { type ZoneChain, zoneChain } from "./zone-chain.ts";
import { zoneChainStart, zoneChainStep, zoneProbabilities } from "./zone-chain-step.ts";
import type { ZoneRule } from "./zone-rule.ts";

const MAX_READINGS = 100_000;
const SETTLED = 1e-15;

/**
 * Average run length of an individuals chart with zone rules, by the Markov chain over everything
 * the rules must remember.
 *
 * The chain is run reading by reading; once the share that survives each reading has settled, the
 * rest of the sum is a geometric series. Readings are independent and normal with known mean and
 * standard deviation.
 *
 * @param rules the rules in force, at least one; sigmas 0 to 6, windows up to 20
 * @param options `shift` of the mean in standard deviations, −10 to 10; default 0, in control
 * @returns `zeroState` and `steadyState`, in readings
 * @throws InputError if no rule is given, a number is out of range, or the run length is beyond double
 *   precision
 *
 * @example
 * zoneRulesRunLength(westernElectricZoneRules).zeroState // => 91.750773
 *
 * Source: C. W. Champ and W. H. Woodall, Technometrics 29 (1987) 393–399.
 */
export function zoneRulesRunLength(
  rules: readonly ZoneRule[],
  options: { readonly shift?: number } = {},
): AverageRunLength {
  const where = "zoneRulesRunLength";
  requireEntries(where, "rules", rules);
  const shift = requireNumber(where, "shift", options.shift ?? 0, { min: -10, max: 10 });
  if (rules.length === 0) throw new InputError(where, "rules", "empty", "give at least one rule");
  for (const rule of rules) {
    const window = rule.pattern === "beyond" ? rule.window : rule.hits;
    requireNumber(where, "sigmas", rule.sigmas, { min: 0, max: 6 });
    requireNumber(where, "window", window, { min: 1, max: 20, whole: true });
    requireNumber(where, "hits", rule.hits, { min: 1, max: window, whole: true });
  }
  const chain = zoneChain(rules);
  const start = zoneChainStart(chain);
  const inControl = inControlRuns.get(chain) ?? run(where, chain, 0, start);
  inControlRuns.set(chain, inControl);
  const zeroState = shift === 0 ? inControl.readings : run(where, chain, shift, start).readings;
  return {
    zeroState: computable(where, zeroState),
    steadyState: computable(where, run(where, chain, shift, inControl.settled).readings),
  };
}

interface ChainRun {
  readonly readings: number;
  readonly settled: Float64Array;
}

/** In control a chain is run once. */
const inControlRuns = new WeakMap<ZoneChain, ChainRun>();

/** Readings to the signal from a distribution over the states, and the distribution it settles to. */
function run(where: string, chain: ZoneChain, shift: number, start: Float64Array): ChainRun {
  const probability = zoneProbabilities(chain.zones, shift);
  let now = start;
  let before = 1;
  let readings = 1;
  let ratio = 0;
  for (let t = 0; t < MAX_READINGS; t++) {
    const later = zoneChainStep(chain, now, probability);
    const left = sumOf(later);
    const change = largestChange(later, left, now, before);
    const nextRatio = left / before;
    readings += left;
    if (left < 1e-18 * readings) return { readings, settled: later };
    const settled = change < SETTLED || (change < 1e-12 && Math.abs(nextRatio - ratio) < 1e-16);
    ratio = nextRatio;
    now = later;
    before = left;
    if (settled && ratio < 1) {
      return {
        readings: readings + (left * ratio) / (1 - ratio),
        settled: now.map((p) => p / left),
      };
    }
  }
  throw new InputError(
    where,
    "rules",
    "as given",
    "the chart hardly ever signals; narrow the limits",
  );
}

function largestChange(a: Float64Array, sumA: number, b: Float64Array, sumB: number): number {
  let change = 0;
  for (let i = 0; i < a.length; i++) {
    change = Math.max(change, Math.abs((a[i] ?? 0) / sumA - (b[i] ?? 0) / sumB));
  }
  return change;
}
