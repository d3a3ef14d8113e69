import type { RateChange } from "./rate-change-result.ts";

/** Less than pumps can be set to; common practice, no source. */
const SLIGHT = 0.02;

/**
 * A finding seen from the rate that is set now: with the setting changed by the fraction f since, what
 * is delivered is off from what was wanted by (1 + f)(1 + ε) − 1. A setting that already makes up for
 * the pump turns the finding into "no change to speak of".
 */
export function rateAsSetNow(
  change: RateChange,
  now: {
    readonly setFractionNow: number;
    readonly knownAnswerNow: number;
    readonly knownCarriedNow: number;
  },
): RateChange {
  const f = now.setFractionNow;
  if (f === 0) return change;
  const seen = (error: number) => (1 + f) * (1 + error) - 1;
  const error = seen(change.error);
  const errorInterval = [seen(change.errorInterval[0]), seen(change.errorInterval[1])] as const;
  const old = change.oldErrorInterval;
  const oldErrorInterval = old === null ? null : ([seen(old[0]), seen(old[1])] as const);
  const made = { ...change, error, errorInterval, oldErrorInterval };
  // Seen from the rate of before, an error moves a bath that already answers to f by as much less.
  const answeredNow = now.knownAnswerNow + (1 - now.knownCarriedNow) * change.reachedError;
  const reached = { ...made, reachedError: answeredNow };
  if (change.finding !== "rate changed") return reached;
  const percent = (value: number) =>
    `${value < 0 ? "−" : "+"}${Math.abs(100 * value).toFixed(1)} %`;
  const range = `${percent(errorInterval[0])} to ${percent(errorInterval[1])}`;
  if (Math.abs(error) < SLIGHT || (errorInterval[0] <= 0 && errorInterval[1] >= 0)) {
    return {
      ...reached,
      finding: "no change to speak of",
      reason: `The pump is off by ${percent(change.error)}, and the setting is ${percent(f)} on what it was: with it the rate is as it was (${range}).`,
    };
  }
  return {
    ...reached,
    reason: `${change.reason} The setting is ${percent(f)} on what it was; with it the rate is off by ${percent(error)} (${range}).`,
  };
}
