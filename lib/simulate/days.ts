import { InputError } from "../input/index.ts";

const DAY_MS = 86_400_000;
const LAST_DAY = Date.parse("9999-12-31T00:00Z");

/** Consecutive local days, `YYYY-MM-DD`, from the first on. */
export function consecutiveDays(where: string, from: unknown, count: number): readonly string[] {
  const first =
    typeof from === "string" && /^\d{4}-\d\d-\d\d$/.test(from)
      ? Date.parse(`${from}T00:00Z`)
      : Number.NaN;
  if (Number.isNaN(first) || new Date(first).toISOString().slice(0, 10) !== from) {
    throw new InputError(where, "from", from, "write a date that exists, as YYYY-MM-DD");
  }
  if (first + (count - 1) * DAY_MS > LAST_DAY) {
    throw new InputError(where, "from", from, `${count} days from there go beyond the year 9999`);
  }
  return Array.from({ length: count }, (_, i) =>
    new Date(first + i * DAY_MS).toISOString().slice(0, 10),
  );
}

/** Sunday is 0. */
export function weekdayOf(day: string): number {
  return new Date(`${day}T00:00Z`).getUTCDay();
}

/** A clock time, `07:10`, moved by some minutes. */
export function clockTime(time: string, minutes: number): string {
  const [hour = 0, minute = 0] = time.split(":").map(Number);
  const total = hour * 60 + minute + minutes;
  const two = (value: number) => String(value).padStart(2, "0");
  return `${two(Math.floor(total / 60))}:${two(total % 60)}`;
}
