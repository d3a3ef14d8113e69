import { InputError, requireNumber } from "../../input/index.ts";
import { dayNumber } from "../calendar.ts";
import { requireVolume } from "../require-volume.ts";
import type { CylinderReading } from "./pump-calibration.ts";

/** A reading of one pump, as a log holds it. */
export interface PumpCounterReading {
  /** Local time, `"2026-08-14T18:05"`. */
  readonly readAt: string;
  readonly counterStrokes: number;
  /** mL */
  readonly settingMlPerStroke: number;
  /** mL that left the replenisher tank since the reading before, if measured. */
  readonly deliveredMl?: number;
  /** The counter was set back since the reading before. */
  readonly counterReset?: boolean;
  /** Strokes run into a measuring cylinder right after the reading. */
  readonly cylinder?: CylinderReading;
}

/** What is wrong with a log, where, and what to write instead. */
export interface PumpLogProblem {
  readonly at: string;
  readonly problem: string;
  readonly advice: string;
}

/** A checked reading with its moment in days since 1970. */
export interface TimedReading extends PumpCounterReading {
  readonly day: number;
  readonly moment: number;
}

/** Moment of a log time in days since 1970-01-01, local. */
export function momentOf(where: string, argument: string, time: unknown): number {
  const match = typeof time === "string" ? /^(\d{4}-\d\d-\d\d)T(\d\d):(\d\d)$/.exec(time) : null;
  const [, date, hours, minutes] = match ?? [];
  if (date === undefined || Number(hours) > 23 || Number(minutes) > 59) {
    throw new InputError(where, argument, time, "write date and time as 2026-08-14T18:05");
  }
  return dayNumber(where, argument, date) + (Number(hours) + Number(minutes) / 60) / 24;
}

/** The readings in order of time; one that repeats a moment is taken out and reported. */
export function timedReadings(
  where: string,
  readings: readonly PumpCounterReading[],
): { readonly timed: readonly TimedReading[]; readonly problems: readonly PumpLogProblem[] } {
  const problems: PumpLogProblem[] = [];
  const all = readings.map((reading, i): TimedReading => {
    const at = `readings[${i}]`;
    const count = { min: 0, max: Number.MAX_SAFE_INTEGER };
    requireNumber(where, `${at}.counterStrokes`, reading.counterStrokes, { ...count, whole: true });
    requireVolume(where, `${at}.settingMlPerStroke`, reading.settingMlPerStroke, {
      min: 0,
      max: 1e6,
      unit: "mL",
    });
    if (reading.deliveredMl !== undefined) {
      requireVolume(where, `${at}.deliveredMl`, reading.deliveredMl, {
        min: 0,
        max: 1e9,
        unit: "mL",
      });
    }
    const moment = momentOf(where, `${at}.readAt`, reading.readAt);
    return { ...reading, moment, day: Math.floor(moment) };
  });
  const sorted = all.toSorted((a, b) => a.moment - b.moment);
  const timed = sorted.filter((reading, i) => {
    if (i === 0 || reading.moment > (sorted[i - 1]?.moment ?? Number.NaN)) return true;
    problems.push({
      at: reading.readAt,
      problem: "two readings of one pump at the same minute",
      advice: "write the minute of each, or delete the one that is wrong",
    });
    return false;
  });
  return { timed, problems };
}
