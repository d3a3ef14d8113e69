import { requireEntries, requireObject } from "../../input/index.ts";
import type { ParsedLog } from "../reading/log-problem.ts";
import type { PumpReading } from "./log-rows.ts";

/** What one pump did between two readings. */
export interface PumpInterval {
  readonly pump: string;
  readonly from: string;
  readonly to: string;
  readonly strokes: number;
  /** What the strokes should have delivered: strokes × setting. */
  readonly setMl: number;
  /** What was measured, if it was. */
  readonly deliveredMl?: number;
}

/**
 * What each pump was set to deliver, and what it did, between one reading and the next.
 *
 * strokes = counter − counter before; set volume = strokes × setting (the setting read at the end).
 *
 * @param log a pump log as `parsePumpLog` returned it
 * @returns the intervals by pump and time, and a warning for each that could not be formed: over a
 *   counter reset, over a counter that runs backwards, or over a line that was left out
 *
 * @example
 * pumpIntervals(parsePumpLog("read_at,pump,counter_strokes,setting_ml_per_stroke\n2026-08-13T18:00,film-developer,100,2.5\n2026-08-14T18:00,film-developer,180,2.5", { file: "pumps.csv" })).intervals[0].setMl // => 200
 */
export function pumpIntervals(log: ParsedLog<PumpReading>): {
  readonly intervals: readonly PumpInterval[];
  readonly warnings: readonly string[];
} {
  requireObject("pumpIntervals", "log", log, "an object with file, rows, problems, …");
  requireEntries("pumpIntervals", "problems", log.problems);
  requireEntries("pumpIntervals", "rows", log.rows);
  const refused = log.problems.filter((problem) => !problem.rowUsed).map(({ line }) => line);
  const intervals: PumpInterval[] = [];
  const warnings: string[] = [];
  const last = new Map<string, PumpReading>();
  for (const reading of log.rows) {
    const before = last.get(reading.pump);
    last.set(reading.pump, reading);
    if (before === undefined) continue;
    const strokes = reading.counterStrokes - before.counterStrokes;
    const broken = reasonNotToJoin(before, reading, strokes, refused);
    if (broken === undefined) intervals.push(interval(before, reading, strokes));
    else warnings.push(`${reading.pump}, ${before.readAt} to ${reading.readAt}: ${broken}`);
  }
  return { intervals, warnings };
}

function interval(before: PumpReading, reading: PumpReading, strokes: number): PumpInterval {
  const { pump, settingMlPerStroke, deliveredMl } = reading;
  const setMl = strokes * settingMlPerStroke;
  const span = { pump, from: before.readAt, to: reading.readAt, strokes, setMl };
  return deliveredMl === undefined ? span : { ...span, deliveredMl };
}

function reasonNotToJoin(
  before: PumpReading,
  reading: PumpReading,
  strokes: number,
  refused: readonly number[],
): string | undefined {
  if (reading.counterReset) return "the counter was set back";
  if (strokes < 0) return "the counter runs backwards";
  const from = before.source?.line ?? 0;
  const to = reading.source?.line ?? 0;
  const gap = refused[firstAfter(refused, Math.min(from, to))];
  if (gap === undefined || gap >= Math.max(from, to)) return undefined;
  return `line ${gap} between them was left out`;
}

/** Index of the first of some rising numbers that is greater than `than`. */
function firstAfter(rising: readonly number[], than: number): number {
  let low = 0;
  let high = rising.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rising[middle] ?? 0) > than) high = middle;
    else low = middle + 1;
  }
  return low;
}
