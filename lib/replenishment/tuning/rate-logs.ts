import type { DeliveredInterval } from "../rates/delivered-rates.ts";
import type { PumpCounterReading, PumpLogProblem } from "../rates/pump-days.ts";
import type { SetRateChange } from "../rates/set-rate-changes.ts";
import type { ChannelSensitivity } from "./rate-sensitivity.ts";
import type { TuningSeries } from "./strip-series.ts";

/** One pump's log, the area by day, the tank, and the strips as `stripRows` gives them. */
export interface RateLogs {
  readonly readings: readonly PumpCounterReading[];
  readonly days: readonly { readonly date: string; readonly areaM2: number }[];
  /** L */
  readonly volumeL: number;
  readonly strips: {
    readonly at: readonly string[];
    readonly deviations: readonly (readonly number[])[];
  };
}

/** Choices of `rateWatch`. */
export interface RateWatchOptions {
  /** Used where the log has no step test; density per 100 % of rate, one a channel. */
  readonly sensitivity?: readonly number[];
  /** Relative standard error of that sensitivity, 0 to 0.5; default 0. */
  readonly sensitivityError?: number;
  /** Days at the beginning of the watch that count as unchanged, for the noise; default 21. */
  readonly baseDays?: number;
  /** First day of the watch; default: the day after the step test's strips, or the first strip's. */
  readonly watchFrom?: string;
  /** Days whose strips do not count. */
  readonly leaveOut?: readonly string[];
}

/** Strips ready for `rateChange`, and everything that was done to them on the way. */
export interface RateWatch {
  /** Deviations as they would be had the lab not changed the set rate. */
  readonly series: TuningSeries;
  /** Moments of the strips in the series. */
  readonly at: readonly string[];
  readonly sensitivityFrom: "step test" | "given";
  /** Relative standard error of the sensitivity. */
  readonly sensitivityError: number;
  /** null without one. */
  readonly stepTest: {
    readonly from: string;
    readonly to: string;
    readonly strips: number;
    readonly channels: readonly ChannelSensitivity[];
  } | null;
  readonly basePeriod: { readonly from: string; readonly to: string; readonly strips: number };
  /** Strips left out because they stand apart from their neighbours, by their moments. */
  readonly oddStrips: readonly string[];
  readonly setRateChanges: readonly SetRateChange[];
  /** What is left of the answer to changes of the set rate at the last strip, and the rate now. */
  readonly knownAnswerNow: number;
  /** The same answer as the tank carries it on: an error of the rate moves the bath by 1 less that. */
  readonly knownCarriedNow: number;
  readonly setFractionNow: number;
  /** Set rate at the beginning of the log and now, mL/m². */
  readonly firstRateMlPerM2: number;
  readonly rateMlPerM2: number;
  readonly settingMlPerStroke: number;
  /** Over the last 28 days of the log. */
  readonly turnoversPerDay: number;
  readonly areaM2PerDay: number;
  readonly intervals: readonly DeliveredInterval[];
  readonly problems: readonly PumpLogProblem[];
  readonly warnings: readonly string[];
}
