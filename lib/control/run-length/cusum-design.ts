import { requireNumber } from "../../input/index.ts";
import { findRoot, minimizeScalar } from "../../numerics/index.ts";
import { cusumRunLength } from "./cusum-run-length.ts";
import {
  type DesignGoal,
  type DesignPromise,
  delayFor,
  promise,
  requireRunLength,
} from "./design-goal.ts";

/** A CUSUM design with what it promises. */
export interface DesignedCusum extends DesignPromise {
  readonly referenceValue: number;
  readonly decisionInterval: number;
}

/**
 * Decision interval h of a two-sided CUSUM for a wanted in-control run length.
 *
 * @param referenceValue k in standard deviations, 0.05 to 2.5
 * @param inControlRunLength readings between false alarms, 20 to 100,000
 * @returns h, in standard deviations of a reading
 * @throws InputError if a number is out of range
 *
 * @example
 * cusumDecisionIntervalFor(0.5, 500) // => 5.0707039
 */
export function cusumDecisionIntervalFor(
  referenceValue: number,
  inControlRunLength: number,
): number {
  const target = requireRunLength("cusumDecisionIntervalFor", inControlRunLength);
  requireNumber("cusumDecisionIntervalFor", "referenceValue", referenceValue, {
    min: 0.05,
    max: 2.5,
  });
  const excess = (decisionInterval: number) =>
    Math.log(cusumRunLength({ referenceValue, decisionInterval }).zeroState / target);
  // Wider than the widest interval that double precision still tells apart is never needed.
  let upper = 1;
  while (excess(upper) < 0) upper *= 1.5;
  return findRoot(excess, { lower: 0.1, upper, tolerance: 1e-11 });
}

/**
 * The CUSUM that catches a change soonest among those with the wanted in-control run length.
 *
 * @param goal in-control run length and the shift or drift worth catching
 * @returns k (half the shift; for a drift found between 0.05 and 2) and h with what they promise
 * @throws InputError if a number is out of range, or both or neither of shift and drift are given
 *
 * @example
 * designCusum({ inControlRunLength: 500, shift: 1 }).referenceValue // => 0.5
 */
export function designCusum(goal: DesignGoal): DesignedCusum {
  const delay = delayFor("designCusum", goal);
  const h = (k: number) => cusumDecisionIntervalFor(k, goal.inControlRunLength);
  const readings = (k: number) =>
    delay({ chart: "cusum", referenceValue: k, decisionInterval: h(k) });
  const k =
    goal.shift === undefined
      ? Math.round(minimizeScalar(readings, { lower: 0.05, upper: 2, tolerance: 1e-4 }).x * 1000) /
        1000
      : goal.shift / 2;
  return { referenceValue: k, decisionInterval: h(k), ...promise(goal, readings(k)) };
}
