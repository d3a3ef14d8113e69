import { InputError, requireNumber, requireObject } from "../../input/index.ts";

/** A local time of day, with the date if one was given. */
export interface ClockTime {
  /** `"2025-03-14"`, or null when only a time of day was given. */
  readonly date: string | null;
  /** Seconds since local midnight, 0 to 86399. */
  readonly secondsOfDay: number;
}

/** A moment of a session as a clock on the wall shows it. */
export interface ClockMoment {
  /** `"00:12:30"`. */
  readonly clock: string;
  /** Midnights passed since the session began. */
  readonly dayOffset: number;
  /** `"2025-03-15T00:12:30"`, or null when the start carried no date. */
  readonly dateTime: string | null;
}

const DAY_S = 86_400;
const FORM = /^(?:(\d{4})-(\d{2})-(\d{2})[T ])?(\d{1,2}):(\d{2})(?::(\d{2}))?$/;
const ADVICE = 'write a local time such as "19:30", "19:30:00" or "2025-03-14T19:30"';

/**
 * Reads a local clock time, with or without a date.
 *
 * @param text `"19:30"`, `"19:30:15"` or an ISO local time `"2025-03-14T19:30"`; no time zone
 * @returns the date (or null) and the seconds since local midnight
 * @throws InputError for anything else: a time zone, am or pm, an hour above 23, a day that is not
 *   in the calendar
 *
 * @example
 * parseClockTime("19:30") // => { date: null, secondsOfDay: 70200 }
 *
 * Source: ISO 8601-1:2019, 5.3.1 and 5.4 (local time of day, date and time of day).
 */
export function parseClockTime(text: string): ClockTime {
  const where = "parseClockTime";
  if (typeof text !== "string") throw new InputError(where, "text", text, ADVICE);
  const match = FORM.exec(text.trim());
  if (!match) throw new InputError(where, "text", text, `${ADVICE}${meant(text.trim())}`);
  const [, year, month, day, hours, minutes, seconds = "0"] = match;
  const h = Number(hours);
  const m = Number(minutes);
  const s = Number(seconds);
  if (h > 23 || m > 59 || s > 59) {
    const advice = `${ADVICE}; hours run from 0 to 23, minutes and seconds from 0 to 59`;
    throw new InputError(where, "text", text, advice);
  }
  const secondsOfDay = h * 3600 + m * 60 + s;
  if (year === undefined) return { date: null, secondsOfDay };
  const date = `${year}-${month}-${day}`;
  const time = Date.parse(`${date}T00:00:00Z`);
  if (Number.isNaN(time) || new Date(time).toISOString().slice(0, 10) !== date) {
    throw new InputError(where, "text", text, `${ADVICE}; ${date} is not in the calendar`);
  }
  return { date, secondsOfDay };
}

/**
 * The clock a number of seconds after a start, across midnight.
 *
 * @param start from `parseClockTime`
 * @param elapsedS seconds since the start, whole and not negative
 * @returns the clock time, how many midnights have passed, and the full date if there is one
 * @throws InputError if `elapsedS` is negative or not whole
 *
 * @example
 * clockAfter({ date: "2025-12-31", secondsOfDay: 86390 }, 20).dateTime // => "2026-01-01T00:00:10"
 */
export function clockAfter(start: ClockTime, elapsedS: number): ClockMoment {
  requireObject("clockAfter", "start", start, "an object with date and secondsOfDay");
  requireNumber("clockAfter", "elapsedS", elapsedS, { min: 0, whole: true, unit: "s" });
  const total = start.secondsOfDay + elapsedS;
  const dayOffset = Math.floor(total / DAY_S);
  const rest = total - dayOffset * DAY_S;
  const clock = `${two(Math.floor(rest / 3600))}:${two(Math.floor(rest / 60) % 60)}:${two(rest % 60)}`;
  if (start.date === null) return { clock, dayOffset, dateTime: null };
  const midnight = Date.parse(`${start.date}T00:00:00Z`) + dayOffset * DAY_S * 1000;
  return {
    clock,
    dayOffset,
    dateTime: `${new Date(midnight).toISOString().slice(0, 10)}T${clock}`,
  };
}

/** `"8:05"`, or `"1:02:05"` from an hour on. */
export function shownLength(seconds: number): string {
  const whole = Math.round(seconds);
  const h = Math.floor(whole / 3600);
  const m = Math.floor(whole / 60) % 60;
  return h > 0 ? `${h}:${two(m)}:${two(whole % 60)}` : `${m}:${two(whole % 60)}`;
}

/** `"0:08:05"`: time since the session began. */
export function shownElapsed(seconds: number): string {
  return `${Math.floor(seconds / 3600)}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;
}

function two(value: number): string {
  return String(value).padStart(2, "0");
}

function meant(text: string): string {
  const half = /^(\d{1,2})(?:[:.](\d{2}))?\s*([ap])\.?m\.?$/i.exec(text);
  if (half) {
    const hour = (Number(half[1]) % 12) + (half[3]?.toLowerCase() === "p" ? 12 : 0);
    return ` (did you mean "${two(hour)}:${half[2] ?? "00"}"?)`;
  }
  const plain = /^(\d{1,2})[.h,]?(\d{2})\s*h?$/i.exec(text);
  if (plain) return ` (did you mean "${plain[1]}:${plain[2]}"?)`;
  if (/(?:Z|[+-]\d{2}:?\d{2})$/.test(text)) return "; leave the time zone out";
  return "";
}
