/** Steps to which times are printed, minutes, from coarse to fine. */
const STEPS_MIN = [1, 0.5, 0.25, 0.1, 1 / 12, 1 / 60];

/** The coarsest usual step of which all times are multiples, minutes; 0 if there is none. */
export function printedStepMin(timesMin: readonly number[]): number {
  const fits = (step: number) =>
    timesMin.every((time) => Math.abs(time / step - Math.round(time / step)) < 1e-6);
  return STEPS_MIN.find(fits) ?? 0;
}

/** Slopes of all straight lines that pass through every interval, or none. */
export interface FeasibleSlopes {
  readonly lowest: number;
  readonly highest: number;
}

/**
 * Lowest and highest slope of a line that passes through all intervals [low, high] at x. When the
 * lowest comes out above the highest, no line does.
 *
 * A slope b is possible when low_i − b·x_i ≤ high_j − b·x_j for every pair.
 */
export function feasibleSlopes(
  points: readonly { readonly x: number; readonly low: number; readonly high: number }[],
): FeasibleSlopes {
  let lowest = Number.NEGATIVE_INFINITY;
  let highest = Number.POSITIVE_INFINITY;
  for (const left of points) {
    for (const right of points) {
      const run = right.x - left.x;
      if (run <= 0) continue;
      highest = Math.min(highest, (right.high - left.low) / run);
      lowest = Math.max(lowest, (right.low - left.high) / run);
    }
  }
  return { lowest, highest };
}
