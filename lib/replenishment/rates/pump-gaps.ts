import { dateOfDay } from "../calendar.ts";
import type { PumpLogProblem, TimedReading } from "./pump-days.ts";

/** Strokes from one reading to the next into the tank, or what is wrong. */
export function strokesBetween(
  before: TimedReading,
  reading: TimedReading,
): { readonly strokes: number | null; readonly problem?: PumpLogProblem } {
  if (reading.counterReset === true) return { strokes: null };
  const strokes = reading.counterStrokes - before.counterStrokes - (before.cylinder?.strokes ?? 0);
  if (strokes >= 0) return { strokes };
  const problem = `the counter runs backwards, ${before.counterStrokes} to ${reading.counterStrokes}`;
  const advice = "correct the counter, or mark it as set back (counterReset: true)";
  return { strokes: null, problem: { at: reading.readAt, problem, advice } };
}

/** The days of an interval that the production log does not have, in words. */
export function missingDays(from: number, to: number, first: number, count: number): string {
  const start = from < first ? from : Math.max(from, first + count);
  const end = from < first ? Math.min(to, first - 1) : to;
  return start === end ? dateOfDay(start) : `${dateOfDay(start)} to ${dateOfDay(end)}`;
}

/** Days with work that no pair of readings encloses. */
export function daysWithoutReading(
  days: readonly { readonly date: string; readonly areaM2: number }[],
  timed: readonly TimedReading[],
): PumpLogProblem | undefined {
  // The first reading is the beginning: its own day is not answered for, and not missed.
  const first = dateOfDay(timed[0]?.day ?? 0);
  const last = dateOfDay(timed.at(-1)?.day ?? 0);
  const outside = days.filter(({ date, areaM2 }) => areaM2 > 0 && (date < first || date > last));
  const [one] = outside;
  if (one === undefined) return undefined;
  const more = outside.length > 1 ? ` and ${outside.length - 1} more days` : "";
  return {
    at: one.date,
    problem: `production without pump readings on ${one.date}${more}`,
    advice: `read the counter each evening; the readings answer for ${first} to ${last}`,
  };
}
