import { requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import type { RateChange } from "./rate-change-result.ts";
import { rateAnswer } from "./tank-answer.ts";

/** What `rateAdvice` needs besides the finding. */
export interface RateAdviceOptions {
  /** Rate the pump is set to now, mL of replenisher per m². */
  readonly rateMlPerM2: number;
  /** Largest change of the setting in one step, as a fraction, 0.01 to 0.5; default 0.15. */
  readonly largestStep?: number;
  /** Tank turnovers a day at this week's load, to put turnovers into days. */
  readonly turnoversPerDay?: number;
}

/** A point on the expected way back: the answer of the bath in units of the sensitivity. */
export interface PathPoint {
  /** Turnovers from the new setting on, counted at the rate as it is set now. */
  readonly turnovers: number;
  readonly days?: number;
  readonly expected: number;
  /** With the error at either end of its interval. */
  readonly low: number;
  readonly high: number;
}

/** What to set, and what to expect. */
export interface RateAdvice {
  readonly advise: boolean;
  readonly reason: string;
  readonly rateMlPerM2: number;
  readonly newRateMlPerM2: number;
  /** Rates that the ends of the interval call for (not capped); the present one if none is advised. */
  readonly newRateInterval: readonly [number, number];
  readonly stepFraction: number;
  /** Whether the step is smaller than the finding calls for, because of the stated cap. */
  readonly capped: boolean;
  readonly path: readonly PathPoint[];
  readonly lookAgainTurnovers: number;
  readonly lookAgainDays?: number;
  readonly ifNothingIsDone: string;
  readonly assumptions: readonly string[];
}

/** Below this error a setting is no answer any more; common practice, no source. */
const BROKEN = -0.5;

/**
 * The rate to set after a change was found: setting ÷ (1 + ε) brings back the rate that was delivered
 * before, the bath follows with 1 − e^−n. No step is larger than the stated cap; then the advice is to
 * look again and take the rest. Nothing is advised unless the finding is "rate changed".
 *
 * A pump that under-delivers wants repair first: the setting only makes up for it. For one that gives less
 * than half no setting is advised.
 *
 * @param change what `rateChange` found
 * @param options the present setting, the cap and the week's turnovers
 * @returns the new setting with its interval, the expected way back, when to look again
 * @throws InputError if a number is out of range, or the error is −1
 *
 * @example
 * const turnovers = Array.from({ length: 40 }, (_, i) => i * 0.1);
 * const deviations = turnovers.map((n, i) => [(n > 2 ? -0.04 * (1 - Math.exp(2 - n)) : 0) + 0.001 * Math.sin(7 * i)]);
 * const change = rateChange({ turnovers, deviations, sensitivity: [0.4], noise: [[0.0001]] });
 * rateAdvice(change, { rateMlPerM2: 40 }).newRateMlPerM2 // => 44.168
 *
 * Source: derived from the balance of a well-stirred tank.
 */
export function rateAdvice(change: RateChange, options: RateAdviceOptions): RateAdvice {
  const where = "rateAdvice";
  requireObject(where, "change", change, "an object with finding, reason, error, …");
  requireEntries(where, "errorInterval", change.errorInterval, "a list of numbers");
  requireObject(where, "options", options, "an object with rateMlPerM2");
  const rate = requireNumber(where, "rateMlPerM2", options.rateMlPerM2, {
    above: 0,
    unit: "mL/m²",
  });
  const cap = requireNumber(where, "largestStep", options.largestStep ?? 0.15, {
    min: 0.01,
    max: 0.5,
  });
  const perDay = options.turnoversPerDay;
  if (perDay !== undefined) requireNumber(where, "turnoversPerDay", perDay, { above: 0 });
  requireNumber(where, "change.error", change.error, { above: -1, hint: "nothing is delivered" });
  const broken = change.finding === "rate changed" && change.error < BROKEN;
  const advise = change.finding === "rate changed" && !broken;
  const wanted = advise ? 1 / (1 + change.error) - 1 : 0;
  const step = Math.max(-cap, Math.min(cap, wanted));
  const inDays = (turnovers: number) => (perDay === undefined ? {} : { days: turnovers / perDay });
  const [low, high] = change.errorInterval;
  const lookAgain = 1;
  return {
    advise,
    reason: broken
      ? `Mend the pump before anything else, or feed the bath by hand: no setting makes up for a pump that gives less than half. ${change.reason}`
      : advise
        ? adviceInWords(change, step, wanted)
        : `Leave the rate as it is. ${change.reason}`,
    rateMlPerM2: rate,
    newRateMlPerM2: rate * (1 + step),
    newRateInterval: advise
      ? [rate / (1 + high), rate / Math.max(0.01, 1 + low)]
      : ([rate, rate] as const),
    stepFraction: step,
    capped: step !== wanted,
    path: [0, 0.25, 0.5, 1, 1.5, 2, 3, 4].map((turnovers) => {
      const ends = [low, high].map((error) => onTheWay(change, error, step, turnovers));
      return {
        turnovers,
        ...inDays(turnovers),
        expected: onTheWay(change, change.error, step, turnovers),
        low: Math.min(...ends),
        high: Math.max(...ends),
      };
    }),
    lookAgainTurnovers: lookAgain,
    ...(perDay === undefined ? {} : { lookAgainDays: lookAgain / perDay }),
    ifNothingIsDone:
      advise || broken
        ? `The bath settles where a rate that is ${percent(change.error)} off leads it (${percent(low)} to ${percent(high)}); it has gone ${(100 * shareReached(change)).toFixed(0)} % of the way.`
        : change.finding === "cannot tell yet"
          ? "Whether anything is amiss with the rate is not known yet; keep reading strips."
          : "Nothing is known to be amiss; keep reading strips.",
    assumptions: [
      "The setting changes the delivered rate in proportion.",
      "The bath follows as a well-stirred tank that loses nothing by itself.",
    ],
  };
}

/** How much of the answer to the error has come. */
function shareReached({ error, reachedError }: RateChange): number {
  return error === 0 ? 0 : (reachedError * (1 + error)) / error;
}

/** The answer reached now decays, that to the remaining error builds up. */
function onTheWay(change: RateChange, error: number, step: number, turnovers: number): number {
  const reached = error > -1 ? (shareReached(change) * error) / (1 + error) : change.reachedError;
  const remaining = (1 + error) * (1 + step) - 1;
  return reached * Math.exp(-(1 + remaining) * turnovers) + rateAnswer(remaining, turnovers);
}

function adviceInWords(change: RateChange, step: number, wanted: number): string {
  const whole = `${change.reason} Set the rate ${percent(step)}`;
  return step === wanted
    ? `${whole}, and find out why the pump delivers otherwise than before.`
    : `${whole} now, the largest step allowed, of ${percent(wanted)} wanted; look again after one turnover.`;
}

function percent(fraction: number): string {
  const sign = fraction > 0 ? "+" : fraction < 0 ? "−" : "";
  return `${sign}${Math.abs(100 * fraction).toFixed(1)} %`;
}
