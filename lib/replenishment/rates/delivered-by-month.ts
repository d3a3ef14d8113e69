import { requireEntries, requireNumber } from "../../input/index.ts";
import type { DeliveredInterval } from "./delivered-rates.ts";

/** A month of a pump. */
export interface DeliveredMonth {
  /** `YYYY-MM` */
  readonly month: string;
  readonly areaM2: number;
  readonly setMlPerM2: number | null;
  readonly deliveredMlPerM2: number | null;
  /** Delivered over set, minus 1, where both are known. */
  readonly error: number | null;
  readonly readings: number;
}

/**
 * What a pump was set to and what it delivered per square metre, month by month; an interval counts to
 * the month of its last day.
 *
 * @param intervals from `deliveredRates`
 * @returns one entry a month in order; null where nothing was measured
 * @throws InputError for an area or a volume that is no number
 *
 * @example
 * const readings = [{ readAt: "2026-03-01T18:00", counterStrokes: 0, settingMlPerStroke: 5 }, { readAt: "2026-03-02T18:00", counterStrokes: 360, settingMlPerStroke: 5, deliveredMl: 1500 }];
 * deliveredByMonth(deliveredRates({ readings, days: [{ date: "2026-03-02", areaM2: 3 }] }).intervals)[0].deliveredMlPerM2 // => 500
 *
 * Source: arithmetic.
 */
export function deliveredByMonth(
  intervals: readonly DeliveredInterval[],
): readonly DeliveredMonth[] {
  requireEntries("deliveredByMonth", "intervals", intervals);
  intervals.forEach(({ areaM2, setMl, deliveredMl }, i) => {
    const at = `intervals[${i}]`;
    requireNumber("deliveredByMonth", `${at}.areaM2`, areaM2, { min: 0, unit: "m²" });
    if (setMl !== null) requireNumber("deliveredByMonth", `${at}.setMl`, setMl);
    if (deliveredMl !== null) requireNumber("deliveredByMonth", `${at}.deliveredMl`, deliveredMl);
  });
  const months = [...new Set(intervals.map(({ to }) => to.slice(0, 7)))].toSorted();
  return months.map((month) => {
    const own = intervals.filter(({ to }) => to.slice(0, 7) === month);
    const sum = (
      list: readonly DeliveredInterval[],
      of: (each: DeliveredInterval) => number | null,
    ) => list.reduce((total, each) => total + (of(each) ?? 0), 0);
    const rate = (of: (each: DeliveredInterval) => number | null) => {
      const known = own.filter((each) => of(each) !== null);
      const area = sum(known, ({ areaM2 }) => areaM2);
      return area > 0 ? sum(known, of) / area : null;
    };
    const both = own.filter(({ setMl, deliveredMl }) => setMl !== null && deliveredMl !== null);
    const set = sum(both, ({ setMl }) => setMl);
    return {
      month,
      areaM2: sum(own, ({ areaM2 }) => areaM2),
      setMlPerM2: rate(({ setMl }) => setMl),
      deliveredMlPerM2: rate(({ deliveredMl }) => deliveredMl),
      error: set > 0 ? sum(both, ({ deliveredMl }) => deliveredMl) / set - 1 : null,
      readings: own.length,
    };
  });
}
