import { InputError, requireEntries, requireObject, requireOneOf } from "../../input/index.ts";
import { type FaultCheck, faultChecks, outcomeProbabilities } from "./fault-check.ts";
import type { FaultRanking } from "./fault-ranking.ts";
import { percentWords } from "./fault-words.ts";
import { type FaultHypothesis, type SeparatingCheck, separatingCheck } from "./separating-check.ts";

/** A check that was made, with what came out. */
export interface CheckMade {
  /** Id of the check. */
  readonly check: string;
  /** One of its outcomes, as written there. */
  readonly outcome: string;
}

/** Where things stand after one or more checks. */
export interface AfterCheck {
  /** Faults, `"none-of-these"` and `"nothing-wrong"`, most likely first; probabilities sum to 1. */
  readonly hypotheses: readonly FaultHypothesis[];
  readonly leading: string;
  /** The check to make next, `null` if none would tell the leading two apart. */
  readonly next: SeparatingCheck | null;
  readonly sentence: string;
}

/**
 * The ranking after checks at the bath, the densitometer or the strip have been made.
 *
 * Bayes' rule: each hypothesis's probability times the probability of the outcome under it,
 * normalised. Checks are taken to be independent given the fault; the same check twice adds less
 * than this says.
 *
 * @param ranking from `rankFaults`
 * @param made checks with their outcomes, in any order; none gives the ranking as it was
 * @param checks default: the checks that come with the library
 * @returns hypotheses with new probabilities and the next check, of those not yet made
 * @throws InputError for an unknown check or outcome, with the closest one, or outcomes that no
 * hypothesis allows
 *
 * @example
 * const components = [{ parameter: "ld", name: "LD", colour: "red" as const, limit: 0.06 }];
 * const window = { process: "colour-negative", components, takenAt: ["2026-08-14T07:10"], deviations: [[0.12]], noise: [[1e-4]] };
 * const ranking = rankFaults({ ...window, lagOne: 0, wander: 0.1, assumptions: [], warnings: [] });
 * afterCheck(ranking, [{ check: "thermometer", outcome: "above its temperature" }]).leading // => "developer-too-warm"
 */
export function afterCheck(
  ranking: FaultRanking,
  made: readonly CheckMade[],
  checks: readonly FaultCheck[] = faultChecks,
): AfterCheck {
  const where = "afterCheck";
  requireObject(where, "ranking", ranking, "an object with process, faults, groups, …");
  requireEntries(where, "logs", ranking.logs);
  requireEntries(where, "faults", ranking.faults);
  requireEntries(where, "made", made);
  const start: readonly FaultHypothesis[] = [
    ...ranking.faults.map(({ id, name, probability }) => ({ id, name, probability })),
    { id: "none-of-these", name: "none of these", probability: ranking.noneOfThese },
    { id: "nothing-wrong", name: "nothing wrong", probability: ranking.nothingWrong },
  ];
  const ids = checks.map(({ id }) => id);
  let weighed = start;
  for (const { check: id, outcome } of made) {
    const known = requireOneOf(where, "check", id, ids);
    for (const check of checks.filter((each) => each.id === known)) {
      const o = check.outcomes.indexOf(requireOneOf(where, "outcome", outcome, check.outcomes));
      weighed = weighed.map((each) => ({
        ...each,
        probability: each.probability * (outcomeProbabilities(check, each.id)[o] ?? 0),
      }));
    }
  }
  const total = weighed.reduce((sum, { probability }) => sum + probability, 0);
  if (!(total > 1e-12)) {
    const advice =
      "together with the strips no hypothesis allows these outcomes; repeat the checks";
    throw new InputError(where, "made", made, advice);
  }
  const hypotheses = weighed
    .map((each) => ({ ...each, probability: each.probability / total }))
    .sort((a, b) => b.probability - a.probability);
  const done = [...made, ...ranking.logs].map(({ check }) => check);
  const left = checks.filter(({ id }) => !done.includes(id));
  const next = separatingCheck(hypotheses, left);
  const [first, second] = hypotheses;
  const percent = (p = 0) => percentWords(p);
  const then = next === null ? "" : ` To be surer: ${next.name} (${next.tool}).`;
  const sentence = `Now most likely: ${first?.name} (${percent(first?.probability)}), then ${second?.name} (${percent(second?.probability)}).${then}`;
  return { hypotheses, leading: first?.id ?? "", next, sentence };
}
