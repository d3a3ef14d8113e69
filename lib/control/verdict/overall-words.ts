import type { ProcessSpecification } from "../process/process-specification.ts";
import { type Level, level } from "./limit-level.ts";
import { otherWords } from "./other-words.ts";
import type { ParameterVerdict } from "./verdict.ts";
import { customerWork, type WordedParameter } from "./word-parameter.ts";

/** The verdict on a whole process, before it is given its place in the result. */
export interface OverallWords {
  readonly level: Level;
  readonly reason: string;
  readonly next: string;
  readonly rows: readonly number[];
}

/** The worst parameter speaks for the process. */
export function overallWords(
  worded: readonly WordedParameter[],
  specification: ProcessSpecification,
): OverallWords {
  const ranked = [...worded].sort((a, b) => b.level - a.level || reach(b) - reach(a));
  const worst = ranked[0];
  if (worst === undefined || worst.level === level.run) {
    return {
      level: level.run,
      reason: `all ${worded.length} readings of the latest strip are within their limits`,
      next: `Run ${customerWork(specification)}.`,
      rows: [...new Set(worded.flatMap((each) => each.verdict.rows))].sort((a, b) => a - b),
    };
  }
  const more = otherWords(ranked.slice(1).filter((each) => each.level > level.run));
  return {
    level: worst.level,
    reason: `${worst.verdict.reason}${more}`,
    next: worst.verdict.next,
    rows: worst.verdict.rows,
  };
}

/** The latest strip is too old to say "run". */
export function freshStripWords(
  worded: readonly WordedParameter[],
  specification: ProcessSpecification,
  takenAt: string,
  ageHours: number,
  staleAfterHours: number,
): OverallWords {
  const found = overallWords(worded, specification);
  const age = `the latest strip, of ${takenAt.replace("T", " ")}, is ${ageWords(ageHours)} old (stale after ${staleAfterHours} hours)`;
  const left = found.level === level.run ? "" : `, and it left this: ${found.reason}`;
  const next =
    found.level === level.hold
      ? found.next
      : `Run a strip before any ${customerWork(specification)}.`;
  return {
    level: found.level === level.hold ? level.hold : level.wait,
    reason: `${age}${left}`,
    next,
    rows: found.rows,
  };
}

function ageWords(hours: number): string {
  return hours < 48
    ? `${Number(hours.toFixed(1))} hours`
    : `${Number((hours / 24).toFixed(1))} days`;
}

/** Nothing is known of the process. */
export function noStripWords(specification: ProcessSpecification, asOf: string) {
  const until = asOf === "" ? "" : ` up to ${asOf.replace("T", " ")}`;
  return {
    verdict: "hold" as const,
    workMayRun: false,
    reason: `no strip of this process was read${until}, so nothing is known of it`,
    next: `Run a strip before any ${customerWork(specification)}.`,
  };
}

function reach(each: WordedParameter): number {
  const { deviation, limits }: ParameterVerdict = each.verdict;
  if (deviation === null) return 0;
  const limit = limits.control ?? limits.action;
  const bound = deviation < 0 ? limit?.lower : limit?.upper;
  return bound === null || bound === undefined || bound === 0 ? 0 : Math.abs(deviation / bound);
}
