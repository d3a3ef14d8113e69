import { normalQuantile } from "../../numerics/index.ts";
import type { RateChange } from "./rate-change-result.ts";
import type { StepEstimate } from "./rate-intervals.ts";
import { LOWEST_ERROR } from "./rate-surface.ts";
import { ruledOutWithSensitivityError, withSensitivityError } from "./sensitivity-error.ts";
import type { WeightedSeries } from "./strip-series.ts";
import { rateAnswer } from "./tank-answer.ts";

/** What `rateFinding` puts into words. */
export interface FindingInputs {
  readonly estimate: StepEstimate;
  readonly pValue: number;
  readonly falseAlarms: number;
  readonly widestInterval: number;
  readonly confidence: number;
  readonly weighted: WeightedSeries;
  /** Interval of the error of a change that is at least a turnover old; null on fewer turnovers. */
  readonly oldErrorInterval: readonly [number, number] | null;
  /** Relative standard error of the sensitivity. */
  readonly sensitivityError: number;
}

/** Decides between the three findings and says why. */
export function rateFinding(inputs: FindingInputs): RateChange {
  const { estimate, pValue, weighted, confidence, sensitivityError } = inputs;
  const first = weighted.turnovers[0] ?? 0;
  const last = weighted.turnovers.at(-1) ?? 0;
  // The end of what was tried stands for a pump that delivers nothing.
  const [low, high] = estimate.errorInterval;
  const k = normalQuantile((1 + confidence) / 2) * sensitivityError;
  const found = [low <= LOWEST_ERROR ? -1 : low, high] as const;
  const errorInterval = withSensitivityError(estimate.error, found, k);
  const old = inputs.oldErrorInterval;
  const oldErrorInterval = old === null ? null : ruledOutWithSensitivityError(old, k);
  const since = last - estimate.changeAt;
  const { finding, reason } = decide({ ...inputs, oldErrorInterval }, errorInterval, since);
  return {
    finding,
    reason,
    error: estimate.error,
    errorInterval,
    oldErrorInterval,
    changeAtTurnovers: estimate.changeAt,
    changeAtInterval: estimate.changeAtInterval,
    pValue,
    reachedError: rateAnswer(estimate.error, since),
    baseline: baselineOf(weighted, estimate),
    residualSd: estimate.residualSd,
    statedSd: weighted.noiseSd,
    strips: weighted.z.length,
    turnovers: last - first,
    confidence,
    assumptions: [
      "One step in delivered rate; the bath follows it as a well-stirred tank that loses nothing by itself.",
      "Turnovers are counted as the pump is set; errors are sought between nothing delivered and double.",
      sensitivityError === 0
        ? "The sensitivity of the densities to the rate is known; its own error is not in the interval."
        : `The sensitivity is known to ${(100 * sensitivityError).toFixed(1)} % (standard error); that is in the interval.`,
      "Strips differ by independent noise; nothing else (temperature, time, mix) changed meanwhile.",
    ],
    warnings: warnings(estimate.residualSd, weighted.noiseSd),
  };
}

/** The level before the change that goes with the estimate. */
function baselineOf({ turnovers, z }: WeightedSeries, { error, changeAt }: StepEstimate): number {
  const left = z.map((each, i) => each - rateAnswer(error, (turnovers[i] ?? 0) - changeAt));
  return left.reduce((sum, each) => sum + each, 0) / left.length;
}

function decide(
  { estimate, pValue, falseAlarms, widestInterval, oldErrorInterval }: FindingInputs,
  [low, high]: readonly [number, number],
  since: number,
): Pick<RateChange, "finding" | "reason"> {
  const range = rangeOf([low, high]);
  const narrow = high - low <= widestInterval;
  if (pValue > falseAlarms) {
    const chance = `a pattern like this comes by chance in ${percent(pValue).replace("+", "")} of unchanged lines`;
    // Of a change made this morning nobody can know; of one made a turnover ago the strips do.
    if (oldErrorInterval === null || oldErrorInterval[1] - oldErrorInterval[0] > widestInterval) {
      const old = oldErrorInterval === null ? range : rangeOf(oldErrorInterval);
      return {
        finding: "cannot tell yet",
        reason: `Cannot tell yet: ${chance}, but an error of ${old} is not ruled out; read more strips.`,
      };
    }
    return {
      finding: "no change to speak of",
      reason: `No change to speak of: ${chance}; a change more than a turnover old is one of ${rangeOf(oldErrorInterval)} at most.`,
    };
  }
  if (!narrow) {
    return {
      finding: "cannot tell yet",
      reason: `Something changed some ${since.toFixed(1)} turnovers ago, but its size is only known as ${range}; wait for more turnovers before the rate is set.`,
    };
  }
  if (low <= 0 && high >= 0) {
    return {
      finding: "cannot tell yet",
      reason: `Something moved the strips, but not as a wrong rate would: an error of ${range} fits them about equally well. Look for another cause (temperature, time, mix) before the rate is touched.`,
    };
  }
  const direction = estimate.error < 0 ? "less" : "more";
  const size = percent(Math.abs(estimate.error)).replace("+", "");
  return {
    finding: "rate changed",
    reason: `Since ${since.toFixed(1)} turnovers ago the bath gets ${size} ${direction} replenisher than before (${range}).`,
  };
}

function warnings(residualSd: number, statedSd: number): string[] {
  const ratio = residualSd / statedSd;
  if (ratio > 1.5) {
    const times = ratio.toFixed(1);
    return [
      `The strips scatter ${times} times as much about the fit as the stated noise: something else moves, too.`,
    ];
  }
  if (ratio < 0.5)
    return ["The strips scatter less than half as much as the stated noise; check the noise."];
  return [];
}

function rangeOf([low, high]: readonly [number, number]): string {
  return `${percent(low)} to ${percent(high)}`;
}

function percent(fraction: number): string {
  const value = 100 * fraction;
  const digits = Math.abs(value) < 10 ? 1 : 0;
  return `${value > 0 ? "+" : ""}${value.toFixed(digits).replace(/^-/, "−")} %`;
}
