import { InputError, requireObject } from "../../input/index.ts";
import { type AreaReading, type FormatCount, productionAreaM2 } from "../../units/index.ts";
import { dateOf, dayOf, weekdayOf } from "./stock-calendar.ts";

/** A week's work by weekday and by format. */
export interface WeekLoad {
  /** First of the seven days. */
  readonly from: string;
  /** Last of them. */
  readonly to: string;
  readonly areaM2: number;
  /** m² of each weekday, Monday first, wherever the week starts. */
  readonly areaM2ByWeekday: readonly number[];
  readonly byFormat: readonly (FormatCount & { readonly areaM2: number })[];
  /** Days of the seven with no row at all; they count as no work. */
  readonly daysWithout: readonly string[];
}

/**
 * The area of the seven days up to a date, by weekday and by format: this week's load.
 *
 * @param rows dates `YYYY-MM-DD`, formats and counts; days outside the week are left aside
 * @param options.to last day of the week
 * @param options.reading `"dimensions"` (default) or `"trade"`
 * @returns area in all, by weekday (Monday first) and by format, and the days without rows
 * @throws InputError for a date that does not exist, an unknown format or a negative count
 *
 * @example
 * weekLoad([{ date: "2026-03-02", format: "120", count: 4 }], { to: "2026-03-08" }).areaM2ByWeekday[0] // => 0.20295
 *
 * Source: arithmetic.
 */
export function weekLoad(
  rows: readonly { readonly date: string; readonly format: string; readonly count: number }[],
  options: { readonly to: string; readonly reading?: AreaReading },
): WeekLoad {
  const where = "weekLoad";
  requireObject(where, "options", options, "an object with to");
  if (!Array.isArray(rows)) {
    const advice = 'write a list like [{ date: "2026-03-02", format: "120", count: 4 }]';
    throw new InputError(where, "rows", rows, advice);
  }
  const last = dayOf(where, "to", options.to);
  const reading = options.reading === undefined ? {} : { reading: options.reading };
  const inWeek = rows
    .map((row, i) => ({ ...row, day: dayOf(where, `rows[${i}].date`, row.date) }))
    .filter(({ day }) => day <= last && day > last - 7);
  const areas = inWeek.map((row) => productionAreaM2([row], reading).areaM2);
  const areaM2ByWeekday = Array.from({ length: 7 }, (_, weekday) =>
    inWeek.reduce((sum, row, i) => sum + (weekdayOf(row.day) === weekday ? (areas[i] ?? 0) : 0), 0),
  );
  const counts = [...new Set(inWeek.map(({ format }) => format))].map((format) => ({
    format,
    count: inWeek.reduce((sum, row) => sum + (row.format === format ? row.count : 0), 0),
  }));
  const { areaM2, lines } = productionAreaM2(counts, reading);
  const days = Array.from({ length: 7 }, (_, i) => last - 6 + i);
  return {
    from: dateOf(last - 6),
    to: options.to,
    areaM2,
    areaM2ByWeekday,
    byFormat: lines,
    daysWithout: days.filter((day) => !inWeek.some((row) => row.day === day)).map(dateOf),
  };
}
