import { type FaultCheck, outcomeProbabilities } from "./fault-check.ts";
import type { CourseShape } from "./fault-courses.ts";
import { logSum } from "./hypothesis-evidence.ts";
import type { LogOfReadings, LogOfWork } from "./lab-log.ts";
import { logShift } from "./log-shift.ts";

/** ln of what a log says for a hypothesis that took a course, beside "the log shows nothing". */
export type LogTerm = (hypothesis: string, course: CourseShape) => number;

const DAY_MS = 86_400_000;
/** How long before it shows a fault may have begun: at once, or little by little. */
const EARLIER_DAYS = { step: 0, singleStrip: 0, gradual: 7 } as const;
/** Days looked at before the first strip of the window. */
const BEFORE_DAYS = 3;

/** When a course began: after the strip before its first one, up to that one. */
export function beginning(takenAt: readonly string[], { from }: Pick<CourseShape, "from">) {
  const until = takenAt[from] ?? "";
  const after = from > 0 ? (takenAt[from - 1] ?? "") : daysBefore(until, BEFORE_DAYS);
  return { after, until };
}

/**
 * The shift since a course began, with its variance; `undefined` without a reading.
 *
 * By generalised least squares over all readings after the base period, those before the beginning
 * included, which share an unknown offset of variance `c = s²/n₀ + w²`: `gᵀK⁻¹y / gᵀK⁻¹g` with
 * `K = s²·diag(1/weight) + c·11ᵀ`. However many readings, no shift is known better than to w.
 */
export function changeSince(
  log: LogOfReadings,
  takenAt: readonly string[],
  course: Pick<CourseShape, "kind" | "from">,
): { readonly mean: number; readonly variance: number; readonly readings: number } | undefined {
  const { after, until } = beginning(takenAt, course);
  const day = until.slice(0, 10);
  const offset = log.sd ** 2 / log.baseWeight + log.wander ** 2;
  let [all, allY, since, sinceY, count] = [0, 0, 0, 0, 0];
  for (const { at, change, weight } of log.readings) {
    const precision = weight / log.sd ** 2;
    all += precision;
    allY += precision * change;
    if (at <= after || (course.kind === "singleStrip" && at.slice(0, 10) > day)) continue;
    since += precision;
    sinceY += precision * change;
    count += 1;
  }
  if (!(since > 0)) return undefined;
  const shared = (offset * since) / (1 + offset * all);
  const information = since - shared * since;
  const mean = (sinceY - shared * allY) / information;
  const variance = Math.max(1 / information, 1 / since + log.wander ** 2);
  return { mean, variance, readings: count };
}

/**
 * A log of readings is a check already made, whose outcome is only as sure as its noise allows:
 * `ln Σ_o p(o | hypothesis) · p(mean change | o) / p(mean change | no shift)`.
 *
 * A shift that the fault makes begins with the fault, or, where strips show it only little by little, at
 * any strip up to its first. One that it does not make, of an instrument that drifts or a log that is
 * wrong, may have begun at any strip of the window.
 */
export function readingsTerm(
  log: LogOfReadings,
  check: FaultCheck,
  takenAt: readonly string[],
): LogTerm {
  const known = new Map<string, readonly number[]>();
  const ratios = (course: Pick<CourseShape, "kind" | "from">): readonly number[] => {
    const key = `${course.kind === "singleStrip"} ${course.from}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    const made = outcomeRatios(log, check, changeSince(log, takenAt, course));
    known.set(key, made);
    return made;
  };
  const starts = takenAt.map((_, from) => ratios({ kind: "step", from }));
  const startedIn = (some: readonly (readonly number[])[]) =>
    check.outcomes.map((_, o) =>
      logSum(some.map((each) => ({ log: each[o] ?? 0, weight: 1 / some.length }))),
    );
  const byChance = startedIn(starts);
  const slip = log.logError / check.outcomes.length;
  const termOf = (p: readonly number[], withFault: readonly number[]) =>
    logSum(
      check.outcomes.flatMap((_, o) => [
        { log: withFault[o] ?? 0, weight: (1 - log.logError) * (p[o] ?? 0) },
        { log: byChance[o] ?? 0, weight: slip },
      ]),
    );
  const otherwise = termOf(check.otherwise, byChance);
  const made = new Map<string, number>();
  return (hypothesis, course) => {
    if (!Object.hasOwn(check.expects, hypothesis)) return otherwise;
    const key = `${hypothesis} ${course.kind} ${course.from}`;
    const before = made.get(key);
    if (before !== undefined) return before;
    const withFault =
      course.kind === "gradual" ? startedIn(starts.slice(0, course.from + 1)) : ratios(course);
    const term = termOf(outcomeProbabilities(check, hypothesis), withFault);
    made.set(key, term);
    return term;
  };
}

function outcomeRatios(
  log: LogOfReadings,
  check: FaultCheck,
  change: ReturnType<typeof changeSince>,
): readonly number[] {
  if (change === undefined) return check.outcomes.map(() => 0);
  const { mean, variance } = change;
  const up = logShift(mean, variance, log.scale);
  const down = logShift(-mean, variance, log.scale);
  return check.outcomes.map((outcome) => {
    const sides = [
      ...(outcome === log.above ? [up] : []),
      ...(outcome === log.below ? [down] : []),
    ];
    if (outcome === log.within || sides.length === 0) return 0;
    const top = Math.max(...sides);
    const sum = sides.reduce((total, side) => total + Math.exp(side - top), 0);
    return top + Math.log(sum / sides.length);
  });
}

/**
 * An entry where a fault begins: with r the probability that its cause is written down and q that
 * such an entry stands there anyway, `ln((r + (1 − r)q)/q)` with it and `ln(1 − r)` without.
 */
export function workTerm(log: LogOfWork, takenAt: readonly string[]): LogTerm {
  return (hypothesis, course) => {
    const r = Object.hasOwn(log.recorded, hypothesis) ? (log.recorded[hypothesis] ?? 0) : 0;
    // What grew from before the window began nobody knows when.
    if (r === 0 || (course.kind === "gradual" && course.from === 0)) return 0;
    const { found, days } = entriesAt(log, takenAt, course);
    const q = 1 - Math.exp(-log.perDay * days);
    return found.length > 0 ? Math.log((r + (1 - r) * q) / q) : Math.log(1 - r);
  };
}

/** The entries that stand where a course began. */
export function entriesAt(log: LogOfWork, takenAt: readonly string[], course: CourseShape) {
  const { after, until } = beginning(takenAt, course);
  const from = daysBefore(after, EARLIER_DAYS[course.kind]);
  const days = Math.max(0.25, (Date.parse(`${until}Z`) - Date.parse(`${from}Z`)) / DAY_MS);
  // An entry with its day only may have been made at any time of that day.
  const found = log.at.filter((at) => at <= until && at >= from.slice(0, at.length));
  return { found, days };
}

function daysBefore(time: string, days: number): string {
  if (days === 0) return time;
  return new Date(Date.parse(`${time}Z`) - days * DAY_MS).toISOString().slice(0, 16);
}
