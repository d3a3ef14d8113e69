import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { dateOfDay, requireConsecutiveDays } from "../calendar.ts";
import { type PumpCounterReading, type PumpLogProblem, timedReadings } from "./pump-days.ts";
import { daysWithoutReading, missingDays, strokesBetween } from "./pump-gaps.ts";

/** What a pump gave between two readings, against the area that went through. */
export interface DeliveredInterval {
  /** First and last day that the interval answers for. */
  readonly from: string;
  readonly to: string;
  readonly fromReading: string;
  readonly toReading: string;
  readonly areaM2: number;
  /** Strokes into the tank; null over a counter that was set back or runs backwards. */
  readonly strokes: number | null;
  /** Strokes times setting, mL; null as the strokes. */
  readonly setMl: number | null;
  /** Measured, mL; null if it was not. */
  readonly deliveredMl: number | null;
  readonly setMlPerM2: number | null;
  readonly deliveredMlPerM2: number | null;
}

/** A pump log and a production log reduced to rates. */
export interface DeliveredRates {
  readonly intervals: readonly DeliveredInterval[];
  /** Rate over all intervals that have strokes and area, mL/m². */
  readonly setMlPerM2: number | null;
  /** Rate over all intervals that have a measured volume and area, mL/m². */
  readonly deliveredMlPerM2: number | null;
  /** Measured over set, minus 1, where both are known. */
  readonly error: number | null;
  readonly problems: readonly PumpLogProblem[];
}

/**
 * The replenishment rate that was really delivered, from a pump's counter, what left its tank, and
 * the area by day.
 *
 * rate = volume / area over the days from one reading to the next. A reading on the evening of a day
 * answers for the days since the reading before. Strokes run into a cylinder are taken out. A bad
 * reading costs its interval and is reported; the rest stays.
 *
 * @param log.readings of one pump; time `2026-08-14T18:05`, counter, setting in mL
 * @param log.days area by day, m², every day once and in order (see `areaByDay`)
 * @returns intervals with mL/m² set and delivered, and what is wrong in the logs, with what to write
 * @throws InputError for fewer than two readings, a gap or overlap in the days, a number out of range
 *
 * @example
 * const readings = [{ readAt: "2026-03-01T18:00", counterStrokes: 100, settingMlPerStroke: 5 }, { readAt: "2026-03-02T18:00", counterStrokes: 460, settingMlPerStroke: 5, deliveredMl: 1500 }];
 * deliveredRates({ readings, days: [{ date: "2026-03-02", areaM2: 3 }] }).intervals[0].deliveredMlPerM2 // => 500
 *
 * Source: arithmetic.
 */
export function deliveredRates(log: {
  readonly readings: readonly PumpCounterReading[];
  readonly days: readonly { readonly date: string; readonly areaM2: number }[];
}): DeliveredRates {
  const where = "deliveredRates";
  requireObject(where, "log", log, "an object with readings and days");
  requireEntries(where, "days", log.days);
  if (!Array.isArray(log.readings) || log.readings.length < 2) {
    const advice = "write at least two readings of one pump; without them production tells no rate";
    throw new InputError(where, "readings", log.readings, advice);
  }
  const { timed, problems } = timedReadings(where, log.readings);
  const firstDay = requireConsecutiveDays(where, log.days);
  const areas = log.days.map(({ areaM2 }, i) =>
    requireNumber(where, `days[${i}].areaM2`, areaM2, { min: 0, max: 1e9, unit: "m²" }),
  );
  const found = [...problems];
  const intervals = timed.slice(1).flatMap((reading, i): DeliveredInterval[] => {
    const before = timed[i];
    if (before === undefined) return [];
    const from = before.day + 1;
    if (reading.day < from) {
      found.push({
        at: reading.readAt,
        problem: "a second reading on the same day; the day's area cannot be split",
        advice: "keep the evening's reading of each day",
      });
      return [];
    }
    const span = areas.slice(Math.max(0, from - firstDay), Math.max(0, reading.day - firstDay + 1));
    if (from < firstDay || reading.day >= firstDay + areas.length) {
      found.push({
        at: reading.readAt,
        problem: `no production for ${missingDays(from, reading.day, firstDay, areas.length)}`,
        advice: "write the area of those days, 0 where the line stood still",
      });
      return [];
    }
    const { strokes, problem } = strokesBetween(before, reading);
    if (problem !== undefined) found.push(problem);
    const areaM2 = span.reduce((sum, area) => sum + area, 0);
    const setMl = strokes === null ? null : strokes * reading.settingMlPerStroke;
    const deliveredMl = reading.deliveredMl ?? null;
    const per = (volume: number | null) =>
      volume === null || areaM2 === 0 ? null : volume / areaM2;
    return [
      {
        from: dateOfDay(from),
        to: dateOfDay(reading.day),
        fromReading: before.readAt,
        toReading: reading.readAt,
        areaM2,
        strokes,
        setMl,
        deliveredMl,
        setMlPerM2: per(setMl),
        deliveredMlPerM2: per(deliveredMl),
      },
    ];
  });
  const unread = daysWithoutReading(log.days, timed);
  if (unread !== undefined) found.push(unread);
  return { intervals, ...overall(intervals), problems: found };
}

function overall(intervals: readonly DeliveredInterval[]) {
  const rate = (volume: (each: DeliveredInterval) => number | null) => {
    const known = intervals.filter((each) => volume(each) !== null);
    const area = known.reduce((sum, each) => sum + each.areaM2, 0);
    return area > 0 ? known.reduce((sum, each) => sum + (volume(each) ?? 0), 0) / area : null;
  };
  const both = intervals.filter((each) => each.setMl !== null && each.deliveredMl !== null);
  const set = both.reduce((sum, each) => sum + (each.setMl ?? 0), 0);
  const delivered = both.reduce((sum, each) => sum + (each.deliveredMl ?? 0), 0);
  return {
    setMlPerM2: rate((each) => each.setMl),
    deliveredMlPerM2: rate((each) => each.deliveredMl),
    error: set > 0 ? delivered / set - 1 : null,
  };
}
