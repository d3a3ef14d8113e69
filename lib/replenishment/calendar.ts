import { InputError } from "../input/index.ts";

const DAY_MS = 86_400_000;

/** Days since 1970-01-01 of a date `YYYY-MM-DD` that exists. */
export function dayNumber(where: string, argument: string, date: unknown): number {
  const advice = "write a date that exists, as YYYY-MM-DD";
  if (typeof date !== "string" || !/^\d{4}-\d\d-\d\d$/.test(date)) {
    throw new InputError(where, argument, date, advice);
  }
  const ms = Date.parse(`${date}T00:00:00Z`);
  if (Number.isNaN(ms) || new Date(ms).toISOString().slice(0, 10) !== date) {
    throw new InputError(where, argument, date, advice);
  }
  return ms / DAY_MS;
}

/** The date of a day counted from 1970-01-01. */
export function dateOfDay(day: number): string {
  return new Date(day * DAY_MS).toISOString().slice(0, 10);
}

/** Refuses days that are missing, come twice or out of order; returns the first day's number. */
export function requireConsecutiveDays(
  where: string,
  rows: readonly { readonly date: string }[],
): number {
  let before: number | undefined;
  let first = 0;
  rows.forEach(({ date }, i) => {
    const day = dayNumber(where, `days[${i}].date`, date);
    if (before === undefined) first = day;
    else if (day === before) {
      const advice = "the day stands there already; add the two rows and write one";
      throw new InputError(where, `days[${i}].date`, date, advice);
    } else if (day < before) {
      const advice = `it lies before ${dateOfDay(before)}; write the days in order`;
      throw new InputError(where, `days[${i}].date`, date, advice);
    } else if (day > before + 1) {
      const last = dateOfDay(day - 1);
      const gap = dateOfDay(before + 1);
      const span = gap === last ? `${gap} is missing` : `${gap} to ${last} are missing`;
      const advice = `${span}; write a row for every day, areaM2 0 where the line stood still`;
      throw new InputError(where, `days[${i}].date`, date, advice);
    }
    before = day;
  });
  return first;
}
