import { normalCdf } from "../../numerics/index.ts";
import type { RunRuleOptions, RunRuleSettings } from "./run-rule-options.ts";
import { nelsonRules, type RunRuleId, westernElectricRules } from "./run-rule-signal.ts";

// Average run lengths of sets of rules, exact to the digits printed. Western Electric sets:
// C. W. Champ and W. H. Woodall, Technometrics 29 (1987) 393–399. Eight Nelson tests: Monte Carlo,
// 2e7 run lengths, standard error 0.015.
const published: readonly { readonly rules: readonly string[]; readonly arl: number }[] = [
  { rules: ["w1", "w2"], arl: 225.44 },
  { rules: ["w1", "w3"], arl: 166.05 },
  { rules: ["w1", "w4"], arl: 152.73 },
  { rules: ["w1", "w2", "w3"], arl: 132.89 },
  { rules: ["w1", "w2", "w4"], arl: 122.05 },
  { rules: ["w1", "w3", "w4"], arl: 105.78 },
  { rules: ["w1", "w2", "w3", "w4"], arl: 91.75 },
  { rules: ["n1", "n2", "n3", "n4", "n5", "n6", "n7", "n8"], arl: 73.5 },
];

/** In-control average run length of a set of rules, if it is published; rule 1 alone is computed. */
export function publishedRunLength(
  enabled: readonly RunRuleId[],
  settings: RunRuleSettings,
  options: RunRuleOptions,
): number | null {
  const short = enabled.map((rule) => (rule.startsWith("n") ? "n" : "w") + rule.slice(-1));
  const single = short.every((each) => each === "n1" || each === "w1");
  if (short.length > 0 && single) return 1 / (2 * normalCdf(-3));
  const usual =
    (enabled.every((rule) => nelsonRules.includes(rule)) && settings.oneSideNelson === 9) ||
    (enabled.every((rule) => westernElectricRules.includes(rule)) &&
      settings.oneSideWesternElectric === 8);
  const varied =
    options.trendLength ??
    options.alternatingLength ??
    options.insideLength ??
    options.outsideLength;
  if (!usual || varied !== undefined || settings.everyWindow) return null;
  const key = [...short].sort().join(" ");
  return published.find((each) => each.rules.join(" ") === key)?.arl ?? null;
}
