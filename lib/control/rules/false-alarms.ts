import { requireObject } from "../../input/index.ts";
import { publishedRunLength } from "./published-run-length.ts";
import { type RunRuleOptions, runRuleSettings } from "./run-rule-options.ts";
import type { RunRuleId } from "./run-rule-signal.ts";
import { windowProbability } from "./window-probability.ts";

/** How often run rules signal while nothing is wrong. */
export interface RunRuleFalseAlarms {
  /** For each rule, the probability that one full window of in-control readings shows its pattern. */
  readonly rules: readonly { readonly rule: RunRuleId; readonly windowProbability: number }[];
  /**
   * Mean number of in-control readings up to a false signal of any of the rules: a published value
   * where there is one for this set, else `null`.
   */
  readonly averageRunLength: number | null;
  /**
   * A bound that always holds in the long run: the rate of false signals per reading is at most the
   * sum of the window probabilities.
   */
  readonly highestRatePerReading: number;
  /** The same in one sentence. */
  readonly sentence: string;
  readonly assumptions: readonly string[];
}

/**
 * How often run rules signal falsely: the price of each rule that is switched on.
 *
 * Exact for one window of independent in-control normal readings: rule 1 `2Φ(−3)`; N on one side
 * `2·2^−N`; N rising or falling `2/N!`; N alternating `2 A_N/N!` (A_N the zigzag number); 2 of 3
 * beyond 2 sigma `2(3p²(1−p) + p³)`; 4 of 5 beyond 1 sigma `2(5p⁴(1−p) + p⁵)`; N within 1 sigma
 * `(2Φ(1)−1)^N`; N beyond 1 sigma `q^N`, less `2(q/2)^N` if both sides are needed.
 *
 * @param options the rules and their variants, as for `runRules`
 * @returns window probabilities, the average run length of the whole set where it is published, a
 * bound, and a sentence
 * @throws InputError as `runRules`
 *
 * @example
 * runRuleFalseAlarms({ rules: ["nelson-2"] }).rules[0]?.windowProbability // => 0.00390625
 *
 * Source: L. S. Nelson, Journal of Quality Technology 16 (1984) 237–239; C. W. Champ and
 * W. H. Woodall, Technometrics 29 (1987) 393–399, Table 1.
 */
export function runRuleFalseAlarms(options: RunRuleOptions = {}): RunRuleFalseAlarms {
  requireObject("runRuleFalseAlarms", "options", options, "an object of options, or leave it out");
  const settings = runRuleSettings("runRuleFalseAlarms", options);
  const enabled = [...new Set(settings.rules)];
  const rules = enabled.map((rule) => ({
    rule,
    windowProbability: windowProbability(rule, settings),
  }));
  const averageRunLength = publishedRunLength(enabled, settings, options);
  const highest = rules.reduce((sum, each) => sum + each.windowProbability, 0);
  return {
    rules,
    averageRunLength,
    highestRatePerReading: highest,
    sentence:
      enabled.length === 0
        ? "no run rule is switched on"
        : averageRunLength === null
          ? `while nothing is wrong, at most ${Number((highest * 100).toPrecision(2))} % of readings of each series signal falsely (sum of the rules' window probabilities)`
          : `while nothing is wrong, each series signals falsely once in ${Number(averageRunLength.toPrecision(4))} readings on average`,
    assumptions: ["readings are independent and normal about a known centre with known sigma"],
  };
}
