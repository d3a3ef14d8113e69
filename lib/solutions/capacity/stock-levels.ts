import { requireObject } from "../../input/index.ts";
import { requireVolumeOrNoneMl } from "../dilution/require-volume.ts";
import { dateOf, dayOf, requireDays, requireWeekUseMl, weekdayOf } from "./stock-calendar.ts";

/** What stands on the shelf on a morning. */
export interface StockLevel {
  readonly date: string;
  readonly onShelfMl: number;
}

/**
 * What stands on the shelf each morning at this week's load, without a delivery.
 *
 * level(d + 1) = max(0, level(d) − use of that weekday)
 *
 * @param given.onShelfMl on the shelf on the morning of `from`, mL, at least 0
 * @param given.weekUseMl use of each weekday, Monday first, seven volumes in mL
 * @param given.from date `YYYY-MM-DD`
 * @param given.days how many days ahead, a whole number, at most 3650
 * @returns `days` + 1 mornings
 * @throws InputError as `stockForecast`
 *
 * @example
 * stockLevels({ onShelfMl: 2500, weekUseMl: [900, 900, 900, 900, 1400, 0, 0], from: "2026-03-02", days: 3 }).map((level) => level.onShelfMl) // => [2500, 1600, 700, 0]
 *
 * Source: arithmetic.
 */
export function stockLevels(given: {
  readonly onShelfMl: number;
  readonly weekUseMl: readonly number[];
  readonly from: string;
  readonly days: number;
}): readonly StockLevel[] {
  const where = "stockLevels";
  requireObject(where, "given", given, "an object with onShelfMl, weekUseMl, from, …");
  let level = requireVolumeOrNoneMl(where, "onShelfMl", given.onShelfMl);
  const week = requireWeekUseMl(where, given.weekUseMl);
  const days = requireDays(where, "days", given.days);
  const start = dayOf(where, "from", given.from);
  return Array.from({ length: days + 1 }, (_, i) => {
    const morning = { date: dateOf(start + i), onShelfMl: level };
    level = Math.max(0, level - (week[weekdayOf(start + i)] ?? 0));
    return morning;
  });
}
