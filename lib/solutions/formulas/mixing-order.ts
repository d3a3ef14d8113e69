import { requireEntries } from "../../input/index.ts";
import { chemicalInForm } from "../chemistry/find-chemical.ts";
import { type MixingRule, mixingRules } from "./mixing-rules.ts";

/** A pair of ingredients in the wrong order. */
export interface OrderFault {
  readonly before: string;
  readonly after: string;
  readonly why: string;
}

/**
 * Checks the order in which chemicals are dissolved.
 *
 * @param names chemicals in the order of mixing, as for `chemicalInForm`; unknown ones are passed over
 * @returns one entry for each pair in the wrong order, with the reason; empty if the order is right
 *
 * @example
 * checkMixingOrder(["sodium sulfite", "metol"])[0].before // => "metol"
 *
 * Source: the rules in `mixingRules`, each with its own.
 */
export function checkMixingOrder(names: readonly string[]): readonly OrderFault[] {
  requireEntries("checkMixingOrder", "names", names, "a list of texts");
  const tags = names.map(tagsOf);
  return mixingRules.flatMap((rule) =>
    names.flatMap((name, i) =>
      tags[i]?.includes(rule.after)
        ? names.flatMap((other, j) =>
            j > i && tags[j]?.includes(rule.before) && !tags[j]?.includes(rule.after)
              ? [{ before: other, after: name, why: rule.why }]
              : [],
          )
        : [],
    ),
  );
}

/**
 * Chemicals put in the order in which they should be dissolved.
 *
 * Keeps the order given wherever no rule says otherwise.
 *
 * @param names as for `checkMixingOrder`
 * @returns the same names, reordered
 *
 * @example
 * inMixingOrder(["borax", "hydroquinone", "sodium sulfite", "metol"]) // => ["metol", "sodium sulfite", "hydroquinone", "borax"]
 *
 * Source: the rules in `mixingRules`, each with its own.
 */
export function inMixingOrder(names: readonly string[]): readonly string[] {
  requireEntries("inMixingOrder", "names", names, "a list of texts");
  const waiting = names.map((name) => ({ name, tags: tagsOf(name) }));
  const ordered: string[] = [];
  while (waiting.length > 0) {
    const ready = waiting.findIndex(({ tags }) =>
      waiting.every((other) => other.tags === tags || !mustComeBefore(other.tags, tags)),
    );
    const [next] = waiting.splice(Math.max(0, ready), 1);
    if (next) ordered.push(next.name);
  }
  return ordered;
}

function mustComeBefore(a: readonly string[], b: readonly string[]): boolean {
  const holds = (rule: MixingRule) =>
    a.includes(rule.before) && b.includes(rule.after) && !a.includes(rule.after);
  return mixingRules.some(holds);
}

function tagsOf(name: string): readonly string[] {
  try {
    return [...chemicalInForm(name).chemical.tags];
  } catch {
    return [];
  }
}
