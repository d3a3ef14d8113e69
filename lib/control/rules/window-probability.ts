import { normalCdf } from "../../numerics/index.ts";
import type { RunRuleSettings } from "./run-rule-options.ts";
import type { RunRuleId } from "./run-rule-signal.ts";

/** Probability that one full window of independent in-control normal readings shows a rule's pattern. */
export function windowProbability(rule: RunRuleId, settings: RunRuleSettings): number {
  const p1 = normalCdf(-1);
  const p2 = normalCdf(-2);
  switch (rule) {
    case "nelson-1":
    case "western-electric-1":
      return 2 * normalCdf(-3);
    case "nelson-2":
      return 2 * 0.5 ** settings.oneSideNelson;
    case "western-electric-4":
      return 2 * 0.5 ** settings.oneSideWesternElectric;
    case "nelson-3":
      return 2 / factorial(settings.trend);
    case "nelson-4":
      return (2 * zigzag(settings.alternating)) / factorial(settings.alternating);
    case "nelson-5":
    case "western-electric-2":
      return 2 * (3 * p2 ** 2 * (1 - p2) + p2 ** 3);
    case "nelson-6":
    case "western-electric-3":
      return 2 * (5 * p1 ** 4 * (1 - p1) + p1 ** 5);
    case "nelson-7":
      return (1 - 2 * p1) ** settings.inside;
    case "nelson-8":
      return (
        (2 * p1) ** settings.outside - (settings.outsideAnySide ? 0 : 2 * p1 ** settings.outside)
      );
  }
}

function factorial(n: number): number {
  let product = 1;
  for (let i = 2; i <= n; i++) product *= i;
  return product;
}

/** Number of alternating permutations of n that begin with a rise: 1, 1, 2, 5, 16, 61, … for n = 1 on. */
function zigzag(n: number): number {
  let row = [1];
  for (let i = 1; i < n; i++) {
    const next = [0];
    for (let j = 0; j < row.length; j++) {
      next.push((next[j] ?? 0) + (row[row.length - 1 - j] ?? 0));
    }
    row = next;
  }
  return row.reduce((sum, each) => sum + each, 0);
}
