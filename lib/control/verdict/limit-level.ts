import type { ProcessLimit, ProcessLimits } from "../process/process-limits.ts";
import { hoursBetween } from "../strips/local-time.ts";

/** How bad a reading leaves a parameter, so that the worst is the largest. */
export const level = {
  run: 0,
  /** Look for the cause; customer work may run. */
  act: 1,
  /** Repeat or read again before customer work. */
  wait: 2,
  hold: 3,
} as const;

export type Level = (typeof level)[keyof typeof level];

/** Whether a deviation lies strictly beyond a limit. Deviations are rounded to 10⁻⁹, so == is safe. */
export function isBeyondLimit(deviation: number, limit: ProcessLimit | null): boolean {
  if (limit === null) return false;
  return (
    (limit.upper !== null && deviation > limit.upper) ||
    (limit.lower !== null && deviation < limit.lower)
  );
}

/**
 * The level after each strip, from the process's limits alone, in one pass. Beyond a control limit:
 * wait for a repeat, and hold if the reading before, within the repeat window, was beyond too (on
 * either side: two strips that disagree so far clear nothing). A hold stands until a reading is
 * within the control limit. Beyond an action limit: act. No reading: wait, or keep a hold.
 */
export function limitLevels(
  deviations: Float64Array,
  takenAt: readonly string[],
  limits: ProcessLimits,
  repeatWindowHours: number,
): Uint8Array {
  const levels = new Uint8Array(deviations.length);
  let last = -1;
  for (let i = 0; i < deviations.length; i++) {
    const deviation = deviations[i] ?? Number.NaN;
    const lastLevel = last < 0 ? level.run : (levels[last] ?? 0);
    if (Number.isNaN(deviation)) {
      levels[i] = lastLevel === level.hold ? level.hold : level.wait;
      continue;
    }
    if (isBeyondLimit(deviation, limits.control)) {
      const confirmed =
        lastLevel === level.hold ||
        (lastLevel === level.wait &&
          hoursBetween(takenAt[last] ?? "", takenAt[i] ?? "") <= repeatWindowHours);
      levels[i] = confirmed ? level.hold : level.wait;
    } else {
      levels[i] = isBeyondLimit(deviation, limits.action) ? level.act : level.run;
    }
    last = i;
  }
  return levels;
}
