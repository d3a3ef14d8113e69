import { formatAreaM2 } from "../../units/index.ts";
import type { LoggedProduction, LoggedPump } from "./log-input.ts";
import type { LogReading } from "./log-series.ts";

/**
 * What a pump delivered from one reading to the next, over what its strokes should have; or, where
 * the production is known, over the area that went through, which shows strokes that are missing too.
 *
 * A level is read as well on a day with little work as on one with much, so a ratio counts by the
 * square of what it is over, 1 on average.
 */
export function pumpSeries(
  readings: readonly LoggedPump[],
  production?: readonly LoggedProduction[],
): readonly LogReading[] {
  const ordered = [...readings].sort((a, b) => (a.readAt < b.readAt ? -1 : 1));
  const areas = production === undefined ? undefined : areaByDay(production);
  const found: { at: string; until: string; value: number; over: number }[] = [];
  ordered.forEach((reading, i) => {
    const before = ordered[i - 1];
    if (before === undefined || reading.deliveredMl === undefined) return;
    if (areas === undefined && reading.counterReset) return;
    const over =
      areas === undefined ? strokesMl(before, reading) : areaBetween(areas, before, reading);
    if (!(over > 0)) return;
    const value = reading.deliveredMl / over;
    found.push({ at: before.readAt, until: reading.readAt, value, over });
  });
  const square = found.reduce((sum, { over }) => sum + over * over, 0) / (found.length || 1);
  return found.map(({ at, until, value, over }) => ({
    at,
    until,
    value,
    weight: (over * over) / square,
  }));
}

/** Strokes into a cylinder are counted after the reading that tells of them, and reach no bath. */
function strokesMl(before: LoggedPump, { counterStrokes, settingMlPerStroke }: LoggedPump): number {
  const into = before.cylinder?.strokes ?? 0;
  return (counterStrokes - before.counterStrokes - into) * settingMlPerStroke;
}

function areaByDay(production: readonly LoggedProduction[]): ReadonlyMap<string, number> {
  const areas = new Map<string, number>();
  for (const { date, format, count } of production) {
    areas.set(date, (areas.get(date) ?? 0) + count * formatAreaM2(format));
  }
  return areas;
}

/** A reading after noon comes after its day's work, one before noon ahead of it. */
function areaBetween(
  areas: ReadonlyMap<string, number>,
  before: LoggedPump,
  reading: LoggedPump,
): number {
  const isDone = (date: string, at: string) =>
    date < at.slice(0, 10) || (date === at.slice(0, 10) && at.slice(11) >= "12:00");
  const days = [...areas].filter(
    ([date]) => isDone(date, reading.readAt) && !isDone(date, before.readAt),
  );
  return days.reduce((sum, [, area]) => sum + area, 0);
}
