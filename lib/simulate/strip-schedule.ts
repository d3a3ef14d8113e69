import type { RandomStream } from "../numerics/index.ts";
import { clockTime, weekdayOf } from "./days.ts";

/** A strip to be run. */
export interface ScheduledStrip {
  /** Index of the day. */
  readonly day: number;
  readonly takenAt: string;
  /** Share of the day's work done when it runs, 0 to 1. */
  readonly share: number;
}

/** The start-up strip comes before the one at midday. */
export const LAST_START_UP = "12:30";
const MIDDAY = "12:50";
const EVENING = "17:25";
const WORK = { from: 8, to: 18 } as const;

/** Strips a day: at start-up, at midday but on Sundays, in the evening on Mondays and Thursdays. */
export function stripSchedule(
  startUp: string,
  days: readonly string[],
  { integer }: RandomStream,
): readonly ScheduledStrip[] {
  return days.flatMap((date, day) => {
    const times = [clockTime(startUp, integer(0, 7))];
    const [midday, evening] = [
      clockTime(MIDDAY, integer(0, 20)),
      clockTime(EVENING, integer(0, 12)),
    ];
    const weekday = weekdayOf(date);
    if (weekday !== 0) times.push(midday);
    if (weekday === 1 || weekday === 4) times.push(evening);
    return times.map((time) => ({ day, takenAt: `${date}T${time}`, share: shareOfDay(time) }));
  });
}

/** Share of a day's work done at a clock time, work going evenly from eight to six. */
export function shareOfDay(time: string): number {
  const [hour = 0, minute = 0] = time.split(":").map(Number);
  const done = (hour + minute / 60 - WORK.from) / (WORK.to - WORK.from);
  return Math.min(1, Math.max(0, done));
}
