import { requireNumber, requireObject } from "../../input/index.ts";
import { findRoot, minimizeScalar } from "../../numerics/index.ts";
import {
  type DesignGoal,
  type DesignPromise,
  delayFor,
  promise,
  requireRunLength,
} from "./design-goal.ts";
import { ewmaRunLength } from "./ewma-run-length.ts";

/** An EWMA design with what it promises. */
export interface DesignedEwma extends DesignPromise {
  readonly lambda: number;
  readonly limitWidth: number;
}

/**
 * Limit width L of a two-sided EWMA for a wanted in-control run length.
 *
 * @param lambda weight of the newest reading, 0.005 to 1
 * @param inControlRunLength readings between false alarms, 20 to 100,000
 * @returns L, in standard deviations of the average
 * @throws InputError if a number is out of range
 *
 * @example
 * ewmaLimitWidthFor(0.1, 500) // => 2.8143100
 */
export function ewmaLimitWidthFor(lambda: number, inControlRunLength: number): number {
  const target = requireRunLength("ewmaLimitWidthFor", inControlRunLength);
  requireNumber("ewmaLimitWidthFor", "lambda", lambda, { min: 0.005, max: 1 });
  const excess = (limitWidth: number) =>
    Math.log(ewmaRunLength({ lambda, limitWidth }).zeroState / target);
  return findRoot(excess, { lower: 0.1, upper: 5, tolerance: 1e-11 });
}

/**
 * The EWMA that catches a change soonest among those with the wanted in-control run length.
 *
 * @param goal in-control run length and the shift or drift worth catching
 * @returns λ (found between 0.01 and 1) and L with what they promise
 * @throws InputError if a number is out of range, or both or neither of shift and drift are given
 *
 * @example
 * designEwma({ inControlRunLength: 500, shift: 1 }).readingsToSignal // => 10.20
 */
export function designEwma(goal: DesignGoal): DesignedEwma {
  requireObject("designEwma", "goal", goal, "an object with inControlRunLength");
  const delay = delayFor("designEwma", goal);
  const readings = (lambda: number) =>
    delay({
      chart: "ewma",
      lambda,
      limitWidth: ewmaLimitWidthFor(lambda, goal.inControlRunLength),
    });
  const best = minimizeScalar((logLambda) => readings(Math.exp(logLambda)), {
    lower: Math.log(0.01),
    upper: 0,
    tolerance: 1e-4,
  });
  const lambda = Math.round(Math.exp(best.x) * 1000) / 1000;
  const limitWidth = ewmaLimitWidthFor(lambda, goal.inControlRunLength);
  const warnings = lambda > 0.0105 ? [] : ["The soonest λ may be below 0.01, the smallest tried."];
  return { lambda, limitWidth, ...promise(goal, readings(lambda), warnings) };
}
