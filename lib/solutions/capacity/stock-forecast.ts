import { requireObject } from "../../input/index.ts";
import { requireVolumeOrNoneMl } from "../dilution/require-volume.ts";
import { dateOf, dayOf, requireDays, requireWeekUseMl, weekdayOf } from "./stock-calendar.ts";

/** How long a shelf lasts and when to order. */
export interface StockForecast {
  /** Whole days that are fully served; null when nothing is used. */
  readonly daysLeft: number | null;
  /** The first day whose use the shelf cannot serve, `YYYY-MM-DD`; null when nothing is used. */
  readonly emptyOn: string | null;
  /** The last day to order so that the delivery is there in time; null when nothing is used. */
  readonly orderBy: string | null;
  readonly orderNow: boolean;
  readonly usePerWeekMl: number;
  readonly warnings: readonly string[];
}

const LONGEST_DAYS = 36_525;

/**
 * Days until the shelf is empty at this week's load, and the last day to order.
 *
 * The week's use repeats; the shelf is short on the first day when Σ use > stock − reserve, and the
 * order goes out `leadDays` before it.
 *
 * @param given.onShelfMl on the shelf on the morning of `from`, mL, at least 0
 * @param given.weekUseMl use of each weekday, Monday first, seven volumes in mL, each at least 0
 * @param given.from date `YYYY-MM-DD`
 * @param given.leadDays calendar days from order to delivery, a whole number, at least 0
 * @param given.reserveMl kept untouched, mL; default 0
 * @returns days, dates, and whether the order is due
 * @throws InputError for a date that does not exist, fewer or more than seven days, or a number out of
 *   range
 *
 * @example
 * stockForecast({ onShelfMl: 12000, weekUseMl: [900, 900, 900, 900, 1400, 0, 0], from: "2026-03-02", leadDays: 5 }).emptyOn // => "2026-03-18"
 *
 * Source: arithmetic.
 */
export function stockForecast(given: {
  readonly onShelfMl: number;
  readonly weekUseMl: readonly number[];
  readonly from: string;
  readonly leadDays: number;
  readonly reserveMl?: number;
}): StockForecast {
  const where = "stockForecast";
  requireObject(where, "given", given, "an object with onShelfMl, weekUseMl, from, …");
  const onShelf = requireVolumeOrNoneMl(where, "onShelfMl", given.onShelfMl);
  const reserve = requireVolumeOrNoneMl(where, "reserveMl", given.reserveMl ?? 0);
  const lead = requireDays(where, "leadDays", given.leadDays);
  const week = requireWeekUseMl(where, given.weekUseMl);
  const start = dayOf(where, "from", given.from);
  const usePerWeekMl = week.reduce((sum, use) => sum + use, 0);
  const usable = Math.max(0, onShelf - reserve);
  const daysLeft = servedDays(usable, week, usePerWeekMl, start);
  if (daysLeft === null) {
    const warnings = usePerWeekMl > 0 ? ["lasts longer than a hundred years at this load"] : [];
    return { daysLeft, emptyOn: null, orderBy: null, orderNow: false, usePerWeekMl, warnings };
  }
  const late = lead - daysLeft;
  return {
    daysLeft,
    emptyOn: dateOf(start + daysLeft),
    orderBy: dateOf(start + daysLeft - lead),
    orderNow: late >= 0,
    usePerWeekMl,
    warnings: late > 0 ? [`the delivery comes ${late} day${late === 1 ? "" : "s"} late`] : [],
  };
}

/** Whole weeks at once, then day by day; null if it lasts beyond a century or for ever. */
function servedDays(
  usable: number,
  week: readonly number[],
  weekUse: number,
  start: number,
): number | null {
  if (weekUse === 0 || usable / weekUse > LONGEST_DAYS / 7) return null;
  const wholeWeeks = Math.max(0, Math.floor(usable / weekUse) - 1);
  let left = usable - wholeWeeks * weekUse;
  let days = wholeWeeks * 7;
  for (;;) {
    const use = week[weekdayOf(start + days)] ?? 0;
    // A hair of slack: a stock that is exactly the use serves the day.
    if (use > left * (1 + 1e-12)) return days;
    left -= use;
    days += 1;
  }
}
