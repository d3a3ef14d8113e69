import { requireNumber } from "../../input/index.ts";
import { dateOfDay, dayNumber } from "../calendar.ts";
import type { DeliveredInterval } from "../rates/delivered-rates.ts";
import { oddStrips } from "./odd-strips.ts";
import type { RateLogs } from "./rate-logs.ts";

/** Strips within the pump log, without odd ones and days left out. */
export function usableStrips(
  { at, deviations }: RateLogs["strips"],
  first: DeliveredInterval,
  last: DeliveredInterval,
  leaveOut: readonly string[],
) {
  const where = "rateWatch";
  const dayBefore = dateOfDay(
    dayNumber(where, "first reading", first.fromReading.slice(0, 10)) - 1,
  );
  const dayAfter = dateOfDay(dayNumber(where, "last reading", last.toReading.slice(0, 10)) + 1);
  const from = `${dayBefore}${first.fromReading.slice(10)}`;
  const to = `${dayAfter}${last.toReading.slice(10)}`;
  const within = at.map((time) => time >= from && time <= to);
  const outside = at.filter((_, i) => !within[i]);
  const counted = at
    .flatMap((time, i) => (within[i] && !leaveOut.includes(time.slice(0, 10)) ? [i] : []))
    .toSorted((i, j) => ((at[i] ?? "") < (at[j] ?? "") ? -1 : at[i] === at[j] ? i - j : 1));
  const rows = counted.map((i) => deviations[i] ?? []);
  const odd = new Set(oddStrips(rows));
  const good = counted.filter((_, i) => !odd.has(i));
  requireNumber(where, "number of strips within the pump log", good.length, {
    min: 10,
    hint: `the readings answer for ${first.from} to ${last.to}`,
  });
  return {
    at: good.map((i) => at[i] ?? ""),
    deviations: good.map((i) => deviations[i] ?? []),
    odd: counted.flatMap((i, k) => (odd.has(k) ? [at[i] ?? ""] : [])),
    warnings:
      outside.length === 0
        ? []
        : [
            `${outside.length === 1 ? "1 strip lies" : `${outside.length} strips lie`} outside the pump's readings and ${outside.length === 1 ? "does" : "do"} not count (${outside.length === 1 ? outside[0] : `${outside[0]} to ${outside.at(-1)}`}).`,
          ],
  };
}
