import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { findRoot, minimizeScalar } from "../../numerics/index.ts";
import { cusumRunLength } from "./cusum-run-length.ts";
import {
  type DesignGoal,
  type DesignPromise,
  delayFor,
  promise,
  requireRunLength,
} from "./design-goal.ts";

/** Decision intervals that are looked at, in standard deviations. */
const [NARROWEST, WIDEST] = [0.1, 40];

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
 * @throws InputError if a number is out of range, or no h from 0.1 to 40 gives that run length
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
  if (excess(NARROWEST) > 0) {
    const least = Math.ceil(target * Math.exp(excess(NARROWEST)));
    const advice = `with k = ${referenceValue} write at least ${least}, or take a smaller k (half the shift worth catching)`;
    throw new InputError("cusumDecisionIntervalFor", "inControlRunLength", target, advice);
  }
  let upper = 1;
  while (excess(upper) < 0) {
    if (upper === WIDEST) {
      const most = Math.floor(target * Math.exp(excess(WIDEST)));
      const advice = `with k = ${referenceValue} write at most ${most}, or take a larger k (half the shift worth catching)`;
      throw new InputError("cusumDecisionIntervalFor", "inControlRunLength", target, advice);
    }
    upper = Math.min(WIDEST, 1.5 * upper);
  }
  return findRoot(excess, { lower: NARROWEST, upper, tolerance: 1e-11 });
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
  requireObject("designCusum", "goal", goal, "an object with inControlRunLength");
  const delay = delayFor("designCusum", goal);
  const h = (k: number) => cusumDecisionIntervalFor(k, goal.inControlRunLength);
  const readings = (k: number) =>
    delay({ chart: "cusum", referenceValue: k, decisionInterval: h(k) });
  const k =
    goal.shift === undefined
      ? Math.round(minimizeScalar(readings, { lower: 0.05, upper: 2, tolerance: 1e-4 }).x * 1000) /
        1000
      : goal.shift / 2;
  const atEnd = goal.shift === undefined && (k < 0.0505 || k > 1.995);
  const warnings = atEnd ? ["The soonest k may be outside 0.05 to 2, the values tried."] : [];
  return { referenceValue: k, decisionInterval: h(k), ...promise(goal, readings(k), warnings) };
}
