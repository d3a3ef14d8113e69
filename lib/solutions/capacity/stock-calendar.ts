import { InputError, requireNumber } from "../../input/index.ts";
import { requireVolumeOrNoneMl } from "../dilution/require-volume.ts";

const DAY_MS = 86_400_000;

/** The use of seven weekdays, Monday first, checked. */
export function requireWeekUseMl(where: string, weekUseMl: unknown): readonly number[] {
  if (!Array.isArray(weekUseMl) || weekUseMl.length !== 7) {
    const advice = "write seven volumes in mL, Monday first, 0 for a day of rest";
    throw new InputError(where, "weekUseMl", weekUseMl, advice);
  }
  return weekUseMl.map((use, i) => requireVolumeOrNoneMl(where, `weekUseMl[${i}]`, use));
}

/** A whole number of calendar days, checked. */
export function requireDays(where: string, argument: string, days: unknown): number {
  return requireNumber(where, argument, days, { min: 0, max: 3650, whole: true });
}

/** Weekday of a day counted from 1970-01-01: Monday is 0. */
export function weekdayOf(day: number): number {
  // Day 0, 1970-01-01, was a Thursday; Monday is 0.
  return (((day + 3) % 7) + 7) % 7;
}

/** Days from 1970-01-01 to a date written `YYYY-MM-DD`. */
export function dayOf(where: string, argument: string, text: string): number {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(typeof text === "string" ? text : "");
  const day = found ? Date.parse(`${text}T00:00:00Z`) / DAY_MS : Number.NaN;
  if (Number.isInteger(day) && dateOf(day) === text) return day;
  throw new InputError(where, argument, text, 'write a day like "2026-03-02"');
}

/** The date of a day counted from 1970-01-01. */
export function dateOf(day: number): string {
  return new Date(day * DAY_MS).toISOString().slice(0, 10);
}
