import { median } from "simple-statistics";
import { requireEntries, requireNumber } from "../../input/index.ts";
import type { DeliveredInterval } from "./delivered-rates.ts";

/** A change of the rate that a pump is set to, as its counter shows it. */
export interface SetRateChange {
  /** First day on which the new rate held. */
  readonly date: string;
  /** The reading from which on it held. */
  readonly fromReading: string;
  readonly mlPerM2Before: number;
  readonly mlPerM2: number;
  /** Against the rate at the beginning of the log: 0.1 is 10 % more. */
  readonly fraction: number;
}

const DAYS_TO_BELIEVE = 3;

/**
 * Changes of the set rate (strokes × setting ÷ area) in a pump's log: a step test, or a setting made to
 * follow an advice. A day on which production was logged late is no change: three readings in a row
 * must agree.
 *
 * @param intervals from `deliveredRates`, in order of time
 * @param options.smallest the smallest change that counts, as a fraction, 0.01 to 0.5; default 0.04
 * @returns the changes in order; none for a rate that was left alone
 * @throws InputError if `smallest` is out of range
 *
 * @example
 * const readings = Array.from({ length: 9 }, (_, i) => ({ readAt: `2026-03-0${i + 1}T18:00`, counterStrokes: 360 * i + (i > 4 ? 36 * (i - 4) : 0), settingMlPerStroke: 5 }));
 * const days = readings.slice(1).map(({ readAt }) => ({ date: readAt.slice(0, 10), areaM2: 3 }));
 * setRateChanges(deliveredRates({ readings, days }).intervals).map(({ date, fraction }) => [date, fraction]) // => [["2026-03-06", 0.1]]
 *
 * Source: arithmetic; median of three against stray days is common practice, no source.
 */
export function setRateChanges(
  intervals: readonly DeliveredInterval[],
  options: { readonly smallest?: number } = {},
): readonly SetRateChange[] {
  requireEntries("setRateChanges", "intervals", intervals);
  const smallest = requireNumber("setRateChanges", "smallest", options.smallest ?? 0.04, {
    min: 0.01,
    max: 0.5,
  });
  const known = intervals.flatMap((each) =>
    each.setMlPerM2 === null || each.setMlPerM2 <= 0 ? [] : [{ ...each, rate: each.setMlPerM2 }],
  );
  const changes: SetRateChange[] = [];
  let segment: number[] = [];
  let first = 0;
  known.forEach(({ rate, from, fromReading }, i) => {
    const level = segment.length === 0 ? rate : median(segment);
    const ahead = known.slice(i, i + DAYS_TO_BELIEVE).map((each) => each.rate);
    const off = ahead.map((each) => each / level - 1);
    const sign = Math.sign(off[0] ?? 0);
    const believed =
      segment.length >= DAYS_TO_BELIEVE &&
      ahead.length === DAYS_TO_BELIEVE &&
      off.every((each) => Math.sign(each) === sign && Math.abs(each) >= smallest);
    if (!believed) {
      segment.push(rate);
      return;
    }
    if (changes.length === 0) first = level;
    segment = [rate];
    changes.push({ date: from, fromReading, mlPerM2Before: level, mlPerM2: rate, fraction: 0 });
  });
  return changes.map((change, c) => {
    const end = changes[c + 1]?.fromReading;
    const held = known.filter(
      (each) =>
        each.fromReading >= change.fromReading && (end === undefined || each.fromReading < end),
    );
    const mlPerM2 = median(held.map((each) => each.rate));
    return { ...change, mlPerM2, fraction: mlPerM2 / first - 1 };
  });
}
