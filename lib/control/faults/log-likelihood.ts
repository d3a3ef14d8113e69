import { type FaultCheck, outcomeProbabilities } from "./fault-check.ts";
import type { CourseShape } from "./fault-courses.ts";
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
export function beginning(takenAt: readonly string[], { from }: CourseShape) {
  const until = takenAt[from] ?? "";
  const after = from > 0 ? (takenAt[from - 1] ?? "") : daysBefore(until, BEFORE_DAYS);
  return { after, until };
}

/** The mean change since a course began, with its variance; `undefined` without a reading. */
export function changeSince(
  log: LogOfReadings,
  takenAt: readonly string[],
  course: CourseShape,
): { readonly mean: number; readonly variance: number; readonly readings: number } | undefined {
  const { after, until } = beginning(takenAt, course);
  const day = until.slice(0, 10);
  const since = log.readings.filter(
    ({ at }) => at > after && (course.kind !== "singleStrip" || at.slice(0, 10) <= day),
  );
  const weight = since.reduce((sum, each) => sum + each.weight, 0);
  if (!(weight > 0)) return undefined;
  const mean = since.reduce((sum, each) => sum + each.weight * each.change, 0) / weight;
  const variance = log.sd ** 2 * (1 / weight + 1 / log.baseWeight) + log.wander ** 2;
  return { mean, variance, readings: since.length };
}

/**
 * A log of readings is a check already made, whose outcome is only as sure as its noise allows:
 * `ln Σ_o p(o | hypothesis) · p(mean change | o) / p(mean change | no shift)`.
 */
export function readingsTerm(
  log: LogOfReadings,
  check: FaultCheck,
  takenAt: readonly string[],
): LogTerm {
  const known = new Map<string, readonly number[] | undefined>();
  const ratios = (course: CourseShape) => {
    const key = `${course.kind === "singleStrip"} ${course.from}`;
    if (!known.has(key))
      known.set(key, outcomeRatios(log, check, changeSince(log, takenAt, course)));
    return known.get(key);
  };
  return (hypothesis, course) => {
    const likely = ratios(course);
    if (likely === undefined) return 0;
    const p = saidBy(log, check, hypothesis);
    const top = Math.max(...likely);
    return top + Math.log(likely.reduce((sum, r, o) => sum + (p[o] ?? 0) * Math.exp(r - top), 0));
  };
}

/** How likely the log tells each outcome: as the check's table says, but for the logs' own errors. */
function saidBy({ logError }: LogOfReadings, check: FaultCheck, hypothesis: string) {
  // A fault that nobody listed is not expected to show in a log more than any other does.
  const p =
    hypothesis === "none-of-these" ? check.otherwise : outcomeProbabilities(check, hypothesis);
  return p.map((each) => (1 - logError) * each + logError / check.outcomes.length);
}

function outcomeRatios(
  log: LogOfReadings,
  check: FaultCheck,
  change: ReturnType<typeof changeSince>,
): readonly number[] | undefined {
  if (change === undefined) return undefined;
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
