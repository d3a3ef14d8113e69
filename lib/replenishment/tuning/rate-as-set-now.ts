import type { RateChange } from "./rate-change-result.ts";

/**
 * A finding seen from the rate that is set now: with the setting changed by the fraction f since, what
 * is delivered is off from what was wanted by (1 + f)(1 + ε) − 1. A setting that already makes up for
 * the pump turns the finding into "no change to speak of".
 */
export function rateAsSetNow(
  change: RateChange,
  now: { readonly setFractionNow: number; readonly knownAnswerNow: number },
): RateChange {
  const f = now.setFractionNow;
  if (f === 0) return change;
  const seen = (error: number) => (1 + f) * (1 + error) - 1;
  const error = seen(change.error);
  const errorInterval = [seen(change.errorInterval[0]), seen(change.errorInterval[1])] as const;
  const old = change.oldErrorInterval;
  const oldErrorInterval = old === null ? null : ([seen(old[0]), seen(old[1])] as const);
  const made = { ...change, error, errorInterval, oldErrorInterval };
  const reached = { ...made, reachedError: change.reachedError + now.knownAnswerNow };
  if (change.finding !== "rate changed") return reached;
  const percent = (value: number) =>
    `${value < 0 ? "−" : "+"}${Math.abs(100 * value).toFixed(1)} %`;
  const range = `${percent(errorInterval[0])} to ${percent(errorInterval[1])}`;
  if (errorInterval[0] <= 0 && errorInterval[1] >= 0) {
    return {
      ...reached,
      finding: "no change to speak of",
      reason: `The pump is off by ${percent(change.error)}, and the setting has been changed by ${percent(f)} since: with it the rate is as it was (${range}).`,
    };
  }
  return {
    ...reached,
    reason: `${change.reason} The setting has been changed by ${percent(f)} since; the rate is still off by ${percent(error)} (${range}).`,
  };
}
