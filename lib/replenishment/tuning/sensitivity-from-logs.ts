import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import { deliveredRates } from "../rates/delivered-rates.ts";
import { type SetRateChange, setRateChanges } from "../rates/set-rate-changes.ts";
import { tankTurnoversAt } from "../rates/tank-turnovers.ts";
import { changesInTurnovers } from "./changes-in-turnovers.ts";
import { knownRateAnswer } from "./known-rate-answer.ts";
import type { RateLogs } from "./rate-logs.ts";
import { type ChannelSensitivity, rateSensitivity } from "./rate-sensitivity.ts";
import { requireSteadyRate } from "./require-steady-rate.ts";
import { sensitivityError } from "./sensitivity-error.ts";
import { usableStrips } from "./usable-strips.ts";

/** What a lab's own changes of rate teach about its strips. */
export interface LoggedSensitivity {
  /** Density per 100 % of rate, one a channel, as `tuneRate` takes it. */
  readonly sensitivity: readonly number[];
  /** Relative standard error of all channels together. */
  readonly sensitivityError: number;
  readonly channels: readonly ChannelSensitivity[];
  readonly setRateChanges: readonly SetRateChange[];
  readonly at: readonly string[];
  readonly turnovers: readonly number[];
  /** Answer of the tank at each strip, in units of the sensitivity. */
  readonly answer: readonly number[];
  readonly deviations: readonly (readonly number[])[];
  readonly oddStrips: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * The sensitivity from the logs of a step test: the changes of the set rate are found in the pump's own
 * counter, turnovers counted at each strip, odd strips left out, and every channel fitted by
 * `rateSensitivity`.
 *
 * @param logs readings of the pump, area by day, tank volume in L, strips, all of the test's weeks
 * @returns one sensitivity a channel, their common relative error, and the series to draw
 * @throws InputError if the set rate was never changed, or too few strips lie within the pump's log
 *
 * @example
 * const date = (i: number) => new Date(Date.UTC(2026, 2, 1 + i)).toISOString().slice(0, 10);
 * const readings = Array.from({ length: 40 }, (_, i) => ({ readAt: `${date(i)}T18:00`, counterStrokes: 360 * i + (i > 9 ? 36 * (i - 9) : 0), settingMlPerStroke: 5 }));
 * const days = readings.slice(1).map(({ readAt }) => ({ date: readAt.slice(0, 10), areaM2: 3 }));
 * const answer = (i: number) => (i > 9 ? (0.1 / 1.1) * (1 - Math.exp(-0.099 * (i - 9))) : 0);
 * const strips = { at: readings.map(({ readAt }) => readAt), deviations: readings.map((_, i) => [0.4 * answer(i) + 0.001 * (i % 2)]) };
 * sensitivityFromLogs({ readings, days, volumeL: 20, strips }).sensitivity // => [0.4005]
 *
 * Source: as `rateSensitivity`.
 */
export function sensitivityFromLogs(logs: RateLogs): LoggedSensitivity {
  const where = "sensitivityFromLogs";
  requireObject(where, "logs", logs, "an object with readings, days, volumeL, …");
  requireObject(where, "strips", logs.strips, "an object with at and deviations");
  requireEntries(where, "days", logs.days);
  const { intervals, problems } = deliveredRates({ readings: logs.readings, days: logs.days });
  const [first, last] = [intervals[0], intervals.at(-1)];
  if (first === undefined || last === undefined) {
    const advice = problems[0]?.advice ?? "read the counter each evening";
    throw new InputError(where, "readings", `${logs.readings.length} readings`, advice);
  }
  requireSteadyRate(where, intervals);
  const changes = setRateChanges(intervals);
  if (changes.length === 0) {
    const advice =
      "it never changed by 4 % or more; bring the logs of a step test (planStepTest says how long)";
    throw new InputError(where, "set rate in these logs", "unchanged", advice);
  }
  const kept = usableStrips(logs.strips, first, last, []);
  const tank = { intervals, volumeL: logs.volumeL, holdDays: 1 };
  const { turnovers, warnings } = tankTurnoversAt({ ...tank, at: kept.at });
  const known = changesInTurnovers(changes, tank);
  const { deviations } = kept;
  const channels = rateSensitivity({ turnovers, deviations, changes: known });
  const sensitivity = channels.map((each) => each.sensitivity);
  const answer = knownRateAnswer(known, turnovers);
  return {
    sensitivity,
    sensitivityError: sensitivityError({ turnovers, deviations, sensitivity, answer }),
    channels,
    setRateChanges: changes,
    at: kept.at,
    turnovers,
    answer,
    deviations,
    oddStrips: kept.odd,
    warnings: [...warnings, ...kept.warnings],
  };
}
