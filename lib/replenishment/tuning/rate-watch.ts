import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { deliveredRates } from "../rates/delivered-rates.ts";
import { setRateChanges } from "../rates/set-rate-changes.ts";
import { tankTurnoversAt } from "../rates/tank-turnovers.ts";
import { asBeforeChanges } from "./as-before-changes.ts";
import { basePeriod } from "./base-period.ts";
import { changesInTurnovers } from "./changes-in-turnovers.ts";
import { knownAnswers } from "./known-rate-answer.ts";
import { noiseCovariance } from "./noise-covariance.ts";
import type { RateLogs, RateWatch, RateWatchOptions } from "./rate-logs.ts";
import { rateSensitivity } from "./rate-sensitivity.ts";
import { requireSteadyRate } from "./require-steady-rate.ts";
import { sensitivityError } from "./sensitivity-error.ts";
import { stepTestInLog } from "./step-test-in-log.ts";
import { usableStrips } from "./usable-strips.ts";

const LOAD_DAYS = 28;
const NO_ANSWER = { answer: 0, carried: 0 };
/** Priming and cylinder checks that nobody wrote down. */
const FEW_STROKES = 40;

/**
 * From a pump's log, the area by day and the strips to what `rateChange` takes: turnovers at every
 * strip, odd strips left out, noise from an unchanged period, the sensitivity from a step test that the
 * log holds, and the answer to changes that the lab made itself taken off.
 *
 * @param logs readings of one pump, area by day, tank volume in L, strips
 * @param options sensitivity to use without a step test, length of the unchanged period, first day
 * @returns the series with its moments, and what was found in the logs
 * @throws InputError if too few strips are left, if the log has no step test and no sensitivity is
 *   given, or a part of the logs cannot be used at all
 *
 * @example
 * const date = (i: number) => new Date(Date.UTC(2026, 2, 1 + i)).toISOString().slice(0, 10);
 * const readings = Array.from({ length: 40 }, (_, i) => ({ readAt: `${date(i)}T18:00`, counterStrokes: 360 * i, settingMlPerStroke: 5 }));
 * const days = readings.slice(1).map(({ readAt }) => ({ date: readAt.slice(0, 10), areaM2: 3 }));
 * const strips = { at: readings.map(({ readAt }) => readAt), deviations: readings.map((_, i) => [0.01 * Math.sin(i)]) };
 * rateWatch({ readings, days, volumeL: 20, strips }, { sensitivity: [0.4] }).turnoversPerDay // => 0.09
 *
 * Source: as the functions it calls.
 */
export function rateWatch(logs: RateLogs, options: RateWatchOptions = {}): RateWatch {
  const where = "rateWatch";
  requireObject(where, "logs", logs, "an object with readings, days, volumeL, …");
  requireObject(where, "strips", logs.strips, "an object with at and deviations");
  requireEntries(where, "days", logs.days);
  requireObject(where, "options", options, "an object of options, or leave it out");
  if (options.sensitivity !== undefined)
    requireEntries(where, "sensitivity", options.sensitivity, "a list of numbers");
  const baseDays = requireNumber(where, "baseDays", options.baseDays ?? 21, { min: 3, max: 365 });
  const given = requireNumber(where, "sensitivityError", options.sensitivityError ?? 0, {
    min: 0,
    max: 0.5,
  });
  const rates = deliveredRates({ readings: logs.readings, days: logs.days });
  const { intervals } = rates;
  const first = intervals[0];
  const last = intervals.at(-1);
  if (first === undefined || last === undefined) {
    const advice = `no interval of the pump log can be used; ${rates.problems[0]?.advice ?? "read the counter each evening"}`;
    throw new InputError(where, "readings", `${logs.readings.length} readings`, advice);
  }
  requireSteadyRate(where, intervals);
  const kept = usableStrips(logs.strips, first, last, options.leaveOut ?? []);
  const tank = { intervals, volumeL: logs.volumeL, holdDays: 1 };
  const reached = tankTurnoversAt({ ...tank, at: kept.at });
  const changes = setRateChanges(intervals);
  const known = changesInTurnovers(changes, tank);
  const test = stepTestInLog(changes, known, kept.at, reached.turnovers);
  const channels =
    test === null
      ? null
      : rateSensitivity({
          turnovers: reached.turnovers.slice(0, test.strips),
          deviations: kept.deviations.slice(0, test.strips),
          changes: test.changes,
        });
  const sensitivity = channels?.map((each) => each.sensitivity) ?? options.sensitivity;
  if (sensitivity === undefined) {
    const advice =
      "the log holds no step test; write one density per 100 % of rate a channel, or plan one with planStepTest";
    throw new InputError(where, "sensitivity", undefined, advice);
  }
  const watchFrom = options.watchFrom ?? (test === null ? "" : test.watchFrom);
  const answers = knownAnswers(where, known, reached.turnovers);
  const watched = kept.at.flatMap((at, i) => (at >= watchFrom ? [i] : []));
  const deviations = watched.map((i) =>
    asBeforeChanges(kept.deviations[i] ?? [], sensitivity, answers[i] ?? NO_ANSWER),
  );
  const at = watched.map((i) => kept.at[i] ?? "");
  const { baseTo, base } = basePeriod(where, { at, deviations, baseDays, watchFrom, sensitivity });
  const load = lastLoad(logs.days, last.to);
  const lastAnswer = answers.at(-1) ?? NO_ANSWER;
  const now = known.reduce((sum, { fraction }) => sum + fraction, 0);
  const firstRate = changes[0]?.mlPerM2Before ?? rates.setMlPerM2 ?? 0;
  return {
    series: {
      turnovers: watched.map((i) => reached.turnovers[i] ?? 0),
      deviations,
      sensitivity,
      noise: noiseCovariance(base),
    },
    at,
    sensitivityError:
      test === null || channels === null
        ? given
        : sensitivityError({
            turnovers: reached.turnovers.slice(0, test.strips),
            deviations: kept.deviations.slice(0, test.strips),
            sensitivity,
            answer: answers.slice(0, test.strips).map((each) => each.answer),
          }),
    sensitivityFrom: channels === null ? "given" : "step test",
    stepTest:
      test === null || channels === null
        ? null
        : { from: test.from, to: test.to, strips: test.strips, channels },
    basePeriod: { from: at[0]?.slice(0, 10) ?? "", to: baseTo, strips: base.length },
    oddStrips: kept.odd,
    setRateChanges: changes,
    knownAnswerNow: lastAnswer.answer,
    knownCarriedNow: lastAnswer.carried,
    setFractionNow: Math.abs(now) < 0.01 ? 0 : now,
    firstRateMlPerM2: firstRate,
    rateMlPerM2: firstRate * (1 + (Math.abs(now) < 0.01 ? 0 : now)),
    settingMlPerStroke: logs.readings.at(-1)?.settingMlPerStroke ?? 0,
    turnoversPerDay: (load * (rates.setMlPerM2 ?? 0)) / 1000 / logs.volumeL,
    areaM2PerDay: load,
    intervals,
    problems: rates.problems,
    warnings: [...reached.warnings, ...kept.warnings, ...strokesWithoutArea(intervals)],
  };
}

/** Days on which the pump ran and nothing went through: production that was not written down. */
function strokesWithoutArea(intervals: RateWatch["intervals"]): string[] {
  const ran = intervals.filter(
    ({ areaM2, strokes }) => areaM2 === 0 && (strokes ?? 0) > FEW_STROKES,
  );
  if (ran.length === 0) return [];
  const days = ran.map(({ to }) => to).join(", ");
  return [
    `The pump ran on ${ran.length} days without production (${days}); write the production of those days, or those strokes as a cylinder check.`,
  ];
}

/** Area a day over the last four weeks up to a day. */
function lastLoad(days: RateLogs["days"], to: string): number {
  const recent = days.filter(({ date }) => date <= to).slice(-LOAD_DAYS);
  return recent.reduce((sum, { areaM2 }) => sum + areaM2, 0) / Math.max(1, recent.length);
}
