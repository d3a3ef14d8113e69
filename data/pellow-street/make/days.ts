const DAY_MS = 86_400_000;

/** The day so many days after another, both written `2026-08-14`. */
export function dayAfter(day: string, days: number): string {
  return new Date(Date.parse(`${day}T00:00Z`) + days * DAY_MS).toISOString().slice(0, 10);
}

/** All days from the first to the last, both included. */
export function daysFrom(first: string, last: string): readonly string[] {
  const days: string[] = [];
  for (let day = first; day <= last; day = dayAfter(day, 1)) days.push(day);
  return days;
}

/** Sunday is 0. */
export function weekday(day: string): number {
  return new Date(`${day}T00:00Z`).getUTCDay();
}

/** A clock time, `07:10`, moved by some minutes. */
export function clock(time: string, minutes: number): string {
  const [hour = 0, minute = 0] = time.split(":").map(Number);
  const total = hour * 60 + minute + minutes;
  const two = (value: number) => String(value).padStart(2, "0");
  return `${two(Math.floor(total / 60))}:${two(total % 60)}`;
}
