import type { RateChange } from "./rate-change-result.ts";
import { type TuningSeries, weightedSeries } from "./strip-series.ts";
import { rateAnswer } from "./tank-answer.ts";

/** What counts as last: half a turnover, in which a new change shows by 40 % of its answer. */
const LAST_TURNOVERS = 0.5;
const FEWEST = 4;
/** In standard errors of their mean, by the stated noise. */
const PLAIN = 4;
/**
 * As a share of the answer to the change that was found. Simulated lines with one fault stay within 4 %,
 * eight days after a pump was mended (0.7 turnovers) they are 14 to 31 % off.
 */
const MUCH = 0.1;

/**
 * Takes a finding back where the last strips no longer follow the one step that was fitted: a pump that
 * was mended since, or that failed again, wants another setting than the step does.
 */
export function withLastStrips(change: RateChange, series: TuningSeries): RateChange {
  if (change.finding !== "rate changed") return change;
  const { turnovers, z } = weightedSeries("tuneRate", series);
  const now = turnovers.at(-1) ?? 0;
  const rests = z.flatMap((each, i) => {
    const n = turnovers[i] ?? 0;
    const fitted = change.baseline + rateAnswer(change.error, n - change.changeAtTurnovers);
    return n > now - LAST_TURNOVERS ? [each - fitted] : [];
  });
  if (rests.length < FEWEST) return change;
  const off = rests.reduce((sum, rest) => sum + rest, 0) / rests.length;
  const plain = Math.abs(off) > (PLAIN * change.statedSd) / Math.sqrt(rests.length);
  const share = off / change.reachedError;
  if (!plain || Math.abs(share) < MUCH) return change;
  const where = share < 0 ? "on the way back from it" : "beyond it";
  const percent = `${Math.abs(100 * share).toFixed(0)} %`;
  return {
    ...change,
    finding: "cannot tell yet",
    reason: `Cannot tell yet: one step does not describe these strips. The last ${rests.length} lie ${percent} of the answer ${where}: was the pump mended or set since, or did it fail again? Read strips for another turnover, or begin the watch (watchFrom) two turnovers after the last known change, when the bath has followed it.`,
  };
}
