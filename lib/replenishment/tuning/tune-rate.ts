import { requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { withLastStrips } from "./last-strips.ts";
import { momentAtTurnovers } from "./moment-at-turnovers.ts";
import { type RateAdvice, rateAdvice } from "./rate-advice.ts";
import { type RateAlarm, rateAlarm } from "./rate-alarm.ts";
import { rateAsSetNow } from "./rate-as-set-now.ts";
import { type RateChangeOptions, rateChange } from "./rate-change.ts";
import type { RateChange } from "./rate-change-result.ts";
import type { RateLogs, RateWatch, RateWatchOptions } from "./rate-logs.ts";
import { rateWatch } from "./rate-watch.ts";
import { slowShareOfNoise } from "./slow-noise.ts";

/** Share of slow noise from which on something other than the pump moves the bath. */
const MUCH_WANDER = 0.6;

/** From the logs to the advice, with every step on the way. */
export interface RateTuning {
  readonly watch: RateWatch;
  readonly change: RateChange;
  /** Date and time of the change, and the ends of its interval; they mean little without a change. */
  readonly changeAt: string;
  readonly changeAtInterval: readonly [string, string];
  /** Share of the strips' noise that wanders slowly; test, intervals and alarm allow for it. */
  readonly slowShare: number;
  readonly alarm: RateAlarm;
  /** Moment of the strip that first told; null if none did. */
  readonly toldAt: string | null;
  readonly advice: RateAdvice;
  /** The setting that goes with the advised rate, mL a stroke. */
  readonly newSettingMlPerStroke: number;
  /** What the finding rests on and what to doubt, of all steps. */
  readonly warnings: readonly string[];
}

/**
 * From strips, pump log and production to the setting of the pump, in one call: `rateWatch`,
 * `rateChange`, `rateAlarm` and `rateAdvice` one after the other, with the sensitivity's own error in the
 * interval. A setting that the lab has changed
 * since is taken into account: what is advised is what is still missing.
 *
 * @param logs readings of one pump, area by day, tank volume in L, strips (see `stripRows`)
 * @param options those of `rateWatch` and `rateChange`, and `largestStep`, 0.01 to 0.5, default 0.15
 * @returns finding, dates, alarm and advice
 * @throws InputError if the logs cannot carry it at all; see `rateWatch`
 *
 * @example
 * const date = (i: number) => new Date(Date.UTC(2026, 2, 1 + i)).toISOString().slice(0, 10);
 * const readings = Array.from({ length: 60 }, (_, i) => ({ readAt: `${date(i)}T18:00`, counterStrokes: 360 * i, settingMlPerStroke: 5 }));
 * const days = readings.slice(1).map(({ readAt }) => ({ date: readAt.slice(0, 10), areaM2: 3 }));
 * const strips = { at: readings.map(({ readAt }) => readAt), deviations: readings.map((_, i) => [0.004 * Math.sin(5 * i)]) };
 * tuneRate({ readings, days, volumeL: 20, strips }, { sensitivity: [0.4] }).change.finding // => "no change to speak of"
 *
 * Source: as the functions it calls.
 */
export function tuneRate(
  logs: RateLogs,
  options: RateWatchOptions & RateChangeOptions & { readonly largestStep?: number } = {},
): RateTuning {
  requireObject("tuneRate", "logs", logs, "an object with readings, days, volumeL, …");
  requireObject("tuneRate", "strips", logs.strips, "an object with at and deviations");
  requireEntries("tuneRate", "days", logs.days);
  const watch = rateWatch(logs, options);
  const { series } = watch;
  const { sensitivityError, turnoversPerDay } = watch;
  const slowShare = options.slowShare ?? slowShareOfNoise(series, rateChange(series, options));
  const found = rateChange(series, { ...options, slowShare, sensitivityError });
  const change = withLastStrips(withWander(found, slowShare), series);
  const strips = series.turnovers.length;
  requireNumber("tuneRate", "strips after the unchanged period", strips - watch.basePeriod.strips, {
    min: 1,
    hint: "write fewer baseDays, or bring more strips",
  });
  const { falseAlarms, draws, seed } = options;
  const alarm = rateAlarm(series, {
    slowShare,
    firstLook: Math.max(9, watch.basePeriod.strips),
    ...(falseAlarms === undefined ? {} : { falseAlarms }),
    ...(draws === undefined ? {} : { draws }),
    ...(seed === undefined ? {} : { seed }),
  });
  const advice = rateAdvice(rateAsSetNow(change, watch), {
    rateMlPerM2: watch.rateMlPerM2,
    // A line that stood idle for four weeks has no days to count in.
    ...(turnoversPerDay > 0 ? { turnoversPerDay } : {}),
    ...(options.largestStep === undefined ? {} : { largestStep: options.largestStep }),
  });
  const when = (turnovers: number) =>
    momentAtTurnovers({ at: watch.at, turnovers: series.turnovers }, turnovers);
  const [early, late] = change.changeAtInterval;
  return {
    watch,
    change,
    slowShare,
    changeAt: when(change.changeAtTurnovers),
    changeAtInterval: [when(early), when(late)],
    alarm,
    toldAt: alarm.strip === null ? null : (watch.at[alarm.strip] ?? null),
    advice,
    newSettingMlPerStroke: watch.settingMlPerStroke * (1 + advice.stepFraction),
    warnings: [
      ...watch.warnings,
      ...(watch.sensitivityFrom === "given" && watch.sensitivityError === 0
        ? [
            "The sensitivity was given without its error: an error of it is an error of the size found.",
          ]
        : []),
      ...change.warnings,
    ],
  };
}

/** Says what to look for where the strips wander too much to carry a finding. */
function withWander(change: RateChange, slowShare: number): RateChange {
  if (change.finding === "rate changed" || slowShare < MUCH_WANDER) return change;
  const share = `${(100 * slowShare).toFixed(0)} %`;
  return {
    ...change,
    reason: `${change.reason} ${share} of their variance wanders slowly, as no step of the rate does: look for another cause (temperature, time, mix), leave its days out, or begin after them (watchFrom).`,
  };
}
