import type { LoggedPump } from "./log-input.ts";
import type { LogReading } from "./log-series.ts";

/**
 * What a pump delivered over what its strokes should have, from one reading to the next, and what
 * went into measuring cylinders.
 *
 * A level is read as well on a day with little work as on one with much, so a ratio counts by the
 * square of its volume, 1 on average.
 */
export function pumpSeries(readings: readonly LoggedPump[]): readonly LogReading[] {
  const ordered = [...readings].sort((a, b) => (a.readAt < b.readAt ? -1 : 1));
  const found: { at: string; until: string; value: number; setMl: number }[] = [];
  ordered.forEach((reading, i) => {
    const before = ordered[i - 1];
    if (before === undefined || reading.counterReset || reading.deliveredMl === undefined) return;
    // Strokes into a cylinder are counted after the reading that tells of them, and reach no bath.
    const into = before.cylinder?.strokes ?? 0;
    const strokes = reading.counterStrokes - before.counterStrokes - into;
    const setMl = strokes * reading.settingMlPerStroke;
    if (!(setMl > 0)) return;
    const value = reading.deliveredMl / setMl;
    found.push({ at: before.readAt, until: reading.readAt, value, setMl });
  });
  const square = found.reduce((sum, { setMl }) => sum + setMl * setMl, 0) / (found.length || 1);
  return found.map(({ at, until, value, setMl }) => ({
    at,
    until,
    value,
    weight: (setMl * setMl) / square,
  }));
}
