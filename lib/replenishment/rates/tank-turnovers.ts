import {
  InputError,
  requireEntries,
  requireNumber,
  requireObject,
  requireOneOf,
} from "../../input/index.ts";
import { requireLitres } from "../require-litres.ts";
import type { DeliveredInterval } from "./delivered-rates.ts";
import { momentOf } from "./pump-days.ts";

/** Tank turnovers at moments. */
export interface TankTurnovers {
  /** Turnovers since the first reading of the pump, one for each moment. */
  readonly turnovers: readonly number[];
  /** At the last reading. */
  readonly total: number;
  readonly turnoversPerDay: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * Tank turnovers since the first pump reading, at the moments when strips were run.
 *
 * n(t) = ∫ replenisher dt / V, the volume of each interval spread evenly from reading to reading
 *
 * @param log.intervals from `deliveredRates`, in order of time
 * @param log.volumeL tank volume, L, above 0
 * @param log.at moments, `2026-08-14T08:05`, within the first and last reading
 * @param log.holdDays so many days before the first and after the last reading the turnovers are held at
 *   the nearest reading's, days, at least 0; default 0. Write 1 for the strip of the morning after
 * @param log.by count the volume `"set"` (strokes × setting, default) or `"delivered"` (measured); where
 *   it is not known the other is taken, then the log's mean rate times the area, with a warning
 * @returns turnovers at each moment, and a day on average
 * @throws InputError for moments outside the readings, no interval, or a volume that is not in litres
 *
 * @example
 * const readings = [{ readAt: "2026-03-01T18:00", counterStrokes: 0, settingMlPerStroke: 5 }, { readAt: "2026-03-02T18:00", counterStrokes: 400, settingMlPerStroke: 5 }];
 * const { intervals } = deliveredRates({ readings, days: [{ date: "2026-03-02", areaM2: 3 }] });
 * tankTurnoversAt({ intervals, volumeL: 20, at: ["2026-03-02T06:00"] }).turnovers // => [0.05]
 *
 * Source: definition.
 */
export function tankTurnoversAt(log: {
  readonly intervals: readonly DeliveredInterval[];
  readonly volumeL: number;
  readonly at: readonly string[];
  readonly by?: "set" | "delivered";
  readonly holdDays?: number;
}): TankTurnovers {
  const where = "tankTurnoversAt";
  requireObject(where, "log", log, "an object with intervals, volumeL and at");
  requireEntries(where, "at", log.at, "a list of texts");
  requireEntries(where, "intervals", log.intervals);
  const volumeL = requireLitres(where, "volumeL", log.volumeL, log);
  const by = requireOneOf(where, "by", log.by ?? "set", ["set", "delivered"]);
  const hold = requireNumber(where, "holdDays", log.holdDays ?? 0, {
    min: 0,
    max: 31,
    unit: "days",
  });
  if (log.intervals.length === 0) {
    const advice = "write the intervals of deliveredRates, at least one";
    throw new InputError(where, "intervals", log.intervals, advice);
  }
  const { litres, warnings } = volumesOf(log.intervals, by);
  const ends: { readonly moment: number; readonly turnovers: number }[] = [];
  let turnovers = 0;
  log.intervals.forEach((interval, i) => {
    const from = momentOf(where, `intervals[${i}].fromReading`, interval.fromReading);
    const before = ends.at(-1);
    if (before !== undefined && from < before.moment) {
      const advice = "the intervals overlap; write them in order of time, those of one pump";
      throw new InputError(where, `intervals[${i}].fromReading`, interval.fromReading, advice);
    }
    if (before === undefined || from > before.moment) ends.push({ moment: from, turnovers });
    turnovers += (litres[i] ?? 0) / volumeL;
    const moment = momentOf(where, `intervals[${i}].toReading`, interval.toReading);
    ends.push({ moment, turnovers });
  });
  const held: string[] = [];
  const [first, last] = [ends[0]?.moment ?? 0, ends.at(-1)?.moment ?? 0];
  const atMoments = log.at.map((time, i) => {
    const moment = momentOf(where, `at[${i}]`, time);
    if (moment >= first && moment <= last) return between(ends, moment);
    if (moment >= first - hold && moment <= last + hold) {
      held.push(time);
      return moment < first ? 0 : turnovers;
    }
    const advice = `write moments from ${log.intervals[0]?.fromReading} to ${log.intervals.at(-1)?.toReading}, where the pump was read (holdDays: 1 for the morning after)`;
    throw new InputError(where, `at[${i}]`, time, advice);
  });
  return {
    turnovers: atMoments,
    total: turnovers,
    turnoversPerDay: turnovers / (last - first),
    assumptions: ["Replenisher flows evenly from one reading to the next."],
    warnings:
      held.length === 0
        ? warnings
        : [
            ...warnings,
            `${held.length === 1 ? "1 moment lies" : `${held.length} moments lie`} outside the readings; there the turnovers of the nearest reading were taken (${held.join(", ")}).`,
          ],
  };
}

/** Litres of each interval by the wished measure, or the next best. */
function volumesOf(intervals: readonly DeliveredInterval[], by: "set" | "delivered") {
  const pick = (each: DeliveredInterval) =>
    by === "set" ? (each.setMl ?? each.deliveredMl) : (each.deliveredMl ?? each.setMl);
  const known = intervals.filter((each) => pick(each) !== null);
  const area = known.reduce((sum, each) => sum + each.areaM2, 0);
  const rate = known.reduce((sum, each) => sum + (pick(each) ?? 0), 0) / (area || 1);
  const guessed = intervals.filter((each) => pick(each) === null);
  const replaced = intervals.filter(
    (each) => (by === "set" ? each.setMl : each.deliveredMl) === null,
  );
  const count = (n: number) => (n === 1 ? "1 interval has" : `${n} intervals have`);
  const days = (list: readonly DeliveredInterval[]) => list.map((each) => each.to).join(", ");
  return {
    litres: intervals.map((each) => (pick(each) ?? rate * each.areaM2) / 1000),
    warnings: [
      ...(replaced.length > guessed.length
        ? [
            `${count(replaced.length - guessed.length)} no ${by} volume; the other one was taken (${days(replaced)}).`,
          ]
        : []),
      ...(guessed.length > 0
        ? [
            `${count(guessed.length)} no volume at all; the mean rate times the area was taken (${days(guessed)}).`,
          ]
        : []),
    ],
  };
}

function between(
  ends: readonly { readonly moment: number; readonly turnovers: number }[],
  moment: number,
): number {
  let low = 0;
  let high = ends.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((ends[middle]?.moment ?? 0) <= moment) low = middle;
    else high = middle;
  }
  const [a, b] = [ends[low], ends[high]];
  if (a === undefined || b === undefined || b.moment === a.moment) return a?.turnovers ?? 0;
  return a.turnovers + ((moment - a.moment) / (b.moment - a.moment)) * (b.turnovers - a.turnovers);
}
