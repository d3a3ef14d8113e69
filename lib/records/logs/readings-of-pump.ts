import { closestWord, InputError, requireEntries } from "../../input/index.ts";
import type { PumpReading } from "./log-rows.ts";

/**
 * The readings of one pump out of a log that holds several.
 *
 * @param readings rows of `parsePumpLog`
 * @param pump its name in the log
 * @returns its rows in order of the log
 * @throws InputError for a pump that is not in the log, with the names that are
 *
 * @example
 * const reading = { readAt: "2026-08-14T18:05", pump: "film-developer", counterStrokes: 48120, settingMlPerStroke: 5, counterReset: false };
 * readingsOfPump([reading], "film-developer").length // => 1
 */
export function readingsOfPump(
  readings: readonly PumpReading[],
  pump: string,
): readonly PumpReading[] {
  requireEntries("readingsOfPump", "readings", readings);
  const own = readings.filter((reading) => reading.pump === pump);
  if (own.length > 0) return own;
  const names = [...new Set(readings.map((reading) => reading.pump))];
  const near = closestWord(pump, names);
  const known = names.length === 0 ? "the log has no readings" : `write one of ${names.join(", ")}`;
  const advice = near === undefined ? known : `${known} (did you mean "${near}"?)`;
  throw new InputError("readingsOfPump", "pump", pump, advice);
}
