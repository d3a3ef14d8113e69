import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { requireVolumeMl } from "../dilution/require-volume.ts";
import { type ReuseRule, reuseRules } from "./capacity-data.ts";

/** A development time lengthened for a developer used before. */
export interface ReuseTime {
  readonly timeMin: number;
  /** timeMin over the first time. */
  readonly factor: number;
  readonly filmsDonePerL: number;
  /** Films (whole) the bath may still take under the rule. */
  readonly filmsLeft: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * Development time for a developer that has been used before and not replenished.
 *
 * t = t1 · (1 + p·⌊n / n_step⌋), with n films per litre done
 *
 * @param given.timeMin time for the first film, min, above 0
 * @param given.filmsDone films already developed, at least 0 (a 135-36 or a 120 is one)
 * @param given.volumeMl volume of the developer, mL, above 0
 * @param given.rule a name in `reuseRules`, or a rule of your own
 * @returns time in minutes, its factor, films left under the rule
 * @throws InputError for an unknown rule, or when the rule allows no further film
 *
 * @example
 * reuseTime({ timeMin: 8, filmsDone: 3, volumeMl: 1000, rule: "10 % a film" }).timeMin // => 10.4
 *
 * Source: per rule in data/solutions/reuse-rules.json (from memory: check yours).
 */
export function reuseTime(given: {
  readonly timeMin: number;
  readonly filmsDone: number;
  readonly volumeMl: number;
  readonly rule: string | ReuseRule;
}): ReuseTime {
  const where = "reuseTime";
  requireObject(where, "given", given, "an object with timeMin, filmsDone, volumeMl, …");
  const first = requireNumber(where, "timeMin", given.timeMin, { above: 0, max: 1e6, unit: "min" });
  const done = requireNumber(where, "filmsDone", given.filmsDone, { min: 0, max: 1e9 });
  const volumeL = requireVolumeMl(where, "volumeMl", given.volumeMl) / 1000;
  const rule = ruleOf(given.rule);
  const most = rule.mostFilmsPerL * volumeL;
  const filmsDonePerL = done / volumeL;
  const filmsLeft = Math.floor((most - done) * (1 + 1e-12));
  if (filmsLeft < 1) {
    const advice = `mix fresh developer: the rule allows ${Number(most.toPrecision(4))} films in this volume`;
    throw new InputError(where, "filmsDone", done, advice);
  }
  const steps = Math.floor((filmsDonePerL / rule.filmsPerLPerStep) * (1 + 1e-12));
  const factor = 1 + (rule.percentPerStep / 100) * steps;
  return {
    timeMin: first * factor,
    factor,
    filmsDonePerL,
    filmsLeft,
    assumptions: [`${rule.name} (${rule.source}; ${rule.howObtained})`],
    warnings: filmsLeft === 1 ? ["the next film is the last one under the rule"] : [],
  };
}

function ruleOf(given: string | ReuseRule): ReuseRule {
  const where = "reuseTime";
  if (typeof given === "object" && given !== null) {
    requireNumber(where, "rule.filmsPerLPerStep", given.filmsPerLPerStep, { above: 0 });
    requireNumber(where, "rule.percentPerStep", given.percentPerStep, { min: 0, max: 1000 });
    requireNumber(where, "rule.mostFilmsPerL", given.mostFilmsPerL, { above: 0 });
    return given;
  }
  const found = reuseRules.find(({ id }) => id === given);
  if (found) return found;
  const advice = `write one of ${reuseRules.map(({ id }) => `"${id}"`).join(", ")}, or a rule as an object`;
  throw new InputError(where, "rule", given, advice);
}
