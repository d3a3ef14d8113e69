import { type LikelihoodCuts, type StepEstimate, stepEstimate } from "./rate-intervals.ts";
import {
  evenlySpaced,
  HIGHEST_ERROR,
  LOWEST_ERROR,
  momentGrid,
  type RateGrid,
  type RateSurface,
  rateSurface,
} from "./rate-surface.ts";

/** Errors that are tried: from next to nothing to double, two per cent apart. */
export const COARSE_ERRORS = evenlySpaced(LOWEST_ERROR, HIGHEST_ERROR, 100);
/** Points of the second, closer look at what the first left possible. */
const FINE_ERRORS = 61;
const FINE_MOMENTS = 121;

/** The series that a step is fitted to. */
export interface StripReadings {
  readonly turnovers: readonly number[];
  readonly z: readonly number[];
}

/** Fits a step on a closer grid over what a coarse fit leaves possible. */
export function closerFit(
  { turnovers, z }: StripReadings,
  coarse: RateSurface,
  cuts: LikelihoodCuts,
): StepEstimate {
  // Errors first, over all moments: on the coarse grid a narrow ridge falls between two errors.
  const { errors } = closerGrid(coarse, cuts);
  const between = rateSurface({ errors, moments: coarse.grid.moments }, turnovers, z);
  return stepEstimate(rateSurface(closerGrid(between, cuts), turnovers, z), cuts);
}

/** The smallest box that holds every pair below the larger cut, one step of the grid added. */
function closerGrid(surface: RateSurface, cuts: LikelihoodCuts): RateGrid {
  const { errors, moments } = surface.grid;
  const { residualSd } = stepEstimate(surface, cuts);
  let least = Number.POSITIVE_INFINITY;
  for (const rest of surface.rest) if (rest < least) least = rest;
  const limit = least + residualSd ** 2 * Math.max(cuts.size, cuts.moment);
  let [e0, e1, m0, m1] = [errors.length, -1, moments.length, -1];
  surface.rest.forEach((rest, i) => {
    if (rest > limit) return;
    const e = Math.floor(i / moments.length);
    const m = i % moments.length;
    [e0, e1, m0, m1] = [Math.min(e0, e), Math.max(e1, e), Math.min(m0, m), Math.max(m1, m)];
  });
  const at = (list: readonly number[], i: number) =>
    list[Math.min(list.length - 1, Math.max(0, i))] ?? 0;
  const box = (list: readonly number[], from: number, to: number, count: number) => {
    const [low, high] = [at(list, from - 1), at(list, to + 1)];
    return high > low ? evenlySpaced(low, high, count) : [low];
  };
  return {
    errors: box(errors, e0, e1, FINE_ERRORS),
    moments: box(moments, m0, m1, FINE_MOMENTS),
  };
}

/** Turnovers after which a change shows plainly: 63 % of its answer. */
const OLD_TURNOVERS = 1;
const OLD_ERRORS = 397;

/** Interval of the error of a change that is at least a turnover old; null on fewer turnovers. */
export function oldErrorInterval(
  { turnovers, z }: StripReadings,
  cuts: LikelihoodCuts,
): readonly [number, number] | null {
  const first = turnovers[0] ?? 0;
  const last = (turnovers.at(-1) ?? 0) - OLD_TURNOVERS;
  if (last - first < OLD_TURNOVERS) return null;
  const errors = evenlySpaced(LOWEST_ERROR, HIGHEST_ERROR, OLD_ERRORS);
  const moments = momentGrid(first, last, OLD_TURNOVERS / 24);
  return stepEstimate(rateSurface({ errors, moments }, turnovers, z), cuts).errorInterval;
}
