import { InputError } from "../../input/index.ts";

const localTime =
  /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d(:[0-5]\d)?$/;

/** Lets a local time in: `"2026-08-14T07:10"`, seconds optional, no zone. */
export function requireLocalTime(where: string, argument: string, value: unknown): string {
  if (typeof value === "string" && localTime.test(value)) return value;
  const advice = 'write a local time without zone, such as "2026-08-14T07:10"';
  throw new InputError(where, argument, value, advice);
}

/** Hours from one local time to a later one. A change of the clocks between them is not seen. */
export function hoursBetween(earlier: string, later: string): number {
  return (minutes(later) - minutes(earlier)) / 60;
}

function minutes(time: string): number {
  const part = (from: number, to: number) => Number(time.slice(from, to));
  const seconds = time.length > 16 ? part(17, 19) : 0;
  const days = Date.UTC(part(0, 4), part(5, 7) - 1, part(8, 10)) / 86_400_000;
  return days * 1440 + part(11, 13) * 60 + part(14, 16) + seconds / 60;
}

/** The local date of a local time: `"2026-08-14"`. */
export function dateOf(time: string): string {
  return time.slice(0, 10);
}
