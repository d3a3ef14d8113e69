import { requireNumber, requireObject } from "../../input/index.ts";
import { type Readings, requireReadings, restartLookup } from "../charts/readings.ts";
import { describeSignal } from "./describe-signal.ts";
import { markRunRules, runRuleBits } from "./mark-run-rules.ts";
import { type RunRuleOptions, runRuleSettings } from "./run-rule-options.ts";
import type { RunRuleSignal } from "./run-rule-signal.ts";

/**
 * Run rules: patterns in a series that an in-control process seldom makes. The eight tests of Nelson
 * and the four rules of the Western Electric handbook, each switched on by name.
 *
 * Zones are counted in sigma from the centre. "Beyond" is strict: a reading on a line is not beyond
 * it, one on the centre line is on neither side and ends a run, equal neighbours end a rise, a fall
 * or an alternation. At the start of a series a pattern may complete before its window is full (four
 * of four beyond 1 sigma). At a restart every pattern starts afresh. A run that goes on signals again
 * with every further reading.
 *
 * @param values readings in the order of time, in any unit
 * @param scale centre line and sigma of the chart, in the same unit, sigma above 0
 * @param options rules and their published variants
 * @returns one signal for each rule and each reading that completes its pattern, in the order of
 * time: rule, position, the positions that led to it, side, sentence
 * @throws InputError if a rule is unknown, a length is out of range or a reading is not finite
 *
 * @example
 * const signals = runRules([0.1, 2.1, 0.3, 2.2, 0], { centre: 0, sigma: 1 }, { rules: ["nelson-5"] });
 * signals[0]?.rows // => [1, 3]
 *
 * Source: L. S. Nelson, Journal of Quality Technology 16 (1984) 237–239; Western Electric,
 * Statistical Quality Control Handbook, 1956.
 */
export function runRules(
  values: Readings,
  scale: { readonly centre: number; readonly sigma: number },
  options: RunRuleOptions = {},
): readonly RunRuleSignal[] {
  const where = "runRules";
  requireObject(where, "scale", scale, "an object with centre and sigma");
  requireObject(where, "options", options, "an object of options, or leave it out");
  requireReadings(where, "values", values, 0);
  requireNumber(where, "centre", scale.centre);
  requireNumber(where, "sigma", scale.sigma, { above: 0 });
  const settings = runRuleSettings(where, options);
  const restart = restartLookup(where, options.restartAt, values.length);
  const masks = markRunRules(values, scale, settings, restart);
  const enabled = [...new Set(settings.rules)];
  const signals: RunRuleSignal[] = [];
  let runStart = 0;
  for (let i = 0; i < masks.length; i++) {
    if (restart !== undefined && restart[i] === 1) runStart = i;
    const mask = masks[i] ?? 0;
    if (mask === 0) continue;
    for (const rule of enabled) {
      if ((mask & (runRuleBits.get(rule) ?? 0)) === 0) continue;
      signals.push(describeSignal(rule, i, values, scale, settings, runStart));
    }
  }
  return signals;
}
