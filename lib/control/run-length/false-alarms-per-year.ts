import { requireNumber, requireObject } from "../../input/index.ts";

/**
 * False alarms a year of a set of charts, from their average run length in control.
 *
 * series·stripsPerDay·daysPerYear/run length. Series that move together (the three colours) signal
 * together, so that the number of occasions is smaller.
 *
 * @param inControlRunLength readings between false alarms of one series, at least 1
 * @param options `stripsPerDay`, greater than 0; `daysPerYear` worked, above 0 to 366 (default 365);
 *   `series` watched, at least 1 (default 1)
 * @returns false alarms a year
 * @throws InputError if a number is out of range
 *
 * @example
 * falseAlarmsPerYear(370.4, { stripsPerDay: 2 }) // => 1.97
 *
 * Source: the definition of the average run length.
 */
export function falseAlarmsPerYear(
  inControlRunLength: number,
  options: {
    readonly stripsPerDay: number;
    readonly daysPerYear?: number;
    readonly series?: number;
  },
): number {
  const where = "falseAlarmsPerYear";
  requireObject(where, "options", options, "an object with stripsPerDay");
  const runLength = requireNumber(where, "inControlRunLength", inControlRunLength, { min: 1 });
  const perDay = requireNumber(where, "stripsPerDay", options.stripsPerDay, {
    above: 0,
    max: 1000,
  });
  const days = requireNumber(where, "daysPerYear", options.daysPerYear ?? 365, {
    above: 0,
    max: 366,
  });
  const series = requireNumber(where, "series", options.series ?? 1, { min: 1, whole: true });
  return (series * perDay * days) / runLength;
}
