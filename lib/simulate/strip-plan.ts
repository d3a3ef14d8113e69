import { clockTime } from "./days.ts";
import type { BatchesOfDay, SimulatedBatch } from "./simulated-batch.ts";
import { type ScheduledStrip, shareOfDay } from "./strip-schedule.ts";

/** Minutes from a start-up strip to the one of the new batch beside it. */
const PAIR_MIN = 4;
/** Minutes from a fresh bath to the strips that clear the line. */
const CLEARING_MIN = [12, 25] as const;

/** A strip to be run, and the batch it comes from. */
export interface PlannedStrip extends ScheduledStrip {
  readonly batch: SimulatedBatch;
}

/** What changes the usual schedule of a line's strips. */
export interface StripPlanChanges {
  readonly days: readonly string[];
  readonly batches: readonly BatchesOfDay[];
  /** Clock time by which the line's bath is mixed afresh, by the day's index. */
  readonly freshAt: ReadonlyMap<number, string>;
  /** The last day has only its start-up strips. */
  readonly endsInTheMorning: boolean;
}

/**
 * The strips that are run: those of the schedule, pairs where a new batch comes into use, and two after
 * a fresh bath; while the line stands for it, none but the start-up strip.
 */
export function stripPlan(
  schedule: readonly ScheduledStrip[],
  { days, batches, freshAt, endsInTheMorning }: StripPlanChanges,
): readonly PlannedStrip[] {
  const perDay = days.map((date, day): readonly PlannedStrip[] => {
    const ofDay = batches[day];
    const [first, ...others] = schedule.filter((strip) => strip.day === day);
    if (ofDay === undefined || first === undefined) return [];
    const startUp: PlannedStrip[] = [{ ...first, batch: ofDay.used }];
    if (ofDay.paired !== undefined) {
      startUp.push({ ...at(date, day, later(first, PAIR_MIN)), batch: ofDay.paired });
    }
    if (endsInTheMorning && day === days.length - 1) return startUp;
    const fresh = freshAt.get(day);
    const clearing = fresh === undefined ? [] : CLEARING_MIN.map((m) => clockTime(fresh, m));
    const used = [
      ...clearing.map((time) => at(date, day, time)),
      ...others.filter(({ takenAt }) => fresh === undefined || takenAt.slice(11) > fresh),
    ];
    return [...startUp, ...used.map((strip) => ({ ...strip, batch: ofDay.used }))];
  });
  const minutes = new Set<string>();
  // No two strips run at one minute.
  return perDay.flat().filter(({ takenAt }) => {
    const free = !minutes.has(takenAt);
    minutes.add(takenAt);
    return free;
  });
}

/** Clock time some minutes after a strip. */
export function later({ takenAt }: { readonly takenAt: string }, minutes: number): string {
  return clockTime(takenAt.slice(11), minutes);
}

function at(date: string, day: number, time: string): ScheduledStrip {
  return { day, takenAt: `${date}T${time}`, share: shareOfDay(time) };
}
