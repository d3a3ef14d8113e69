import type { RateSurface } from "./rate-surface.ts";

/** How much worse than the best a fit may be, in residual variances, to lie within an interval. */
export interface LikelihoodCuts {
  readonly size: number;
  readonly moment: number;
}

/** Estimates and profile-likelihood intervals of a step in delivered rate. */
export interface StepEstimate {
  readonly error: number;
  readonly errorInterval: readonly [number, number];
  readonly changeAt: number;
  readonly changeAtInterval: readonly [number, number];
  /** Standard deviation of z about the fit. */
  readonly residualSd: number;
  /** How much better the best pair fits than no change, in residual variances. */
  readonly ratio: number;
}

/** Parameters that the fit spends: baseline, size, moment. */
export const STEP_PARAMETERS = 3;

/**
 * Best fit over all errors and moments, with likelihood-ratio intervals: the error's is where the best
 * of its moments lies below the cut, the moment's where the best of its errors does.
 */
export function stepEstimate(surface: RateSurface, cuts: LikelihoodCuts): StepEstimate {
  const { errors, moments } = surface.grid;
  const byError = new Float64Array(errors.length).fill(Number.POSITIVE_INFINITY);
  const byMoment = new Float64Array(moments.length).fill(Number.POSITIVE_INFINITY);
  surface.rest.forEach((rest, i) => {
    const e = Math.floor(i / moments.length);
    const m = i % moments.length;
    if (rest < (byError[e] ?? 0)) byError[e] = rest;
    if (rest < (byMoment[m] ?? 0)) byMoment[m] = rest;
  });
  const size = lowest(errors, byError);
  const moment = lowest(moments, byMoment);
  const least = Math.min(size.value, moment.value);
  const variance = least / Math.max(1, surface.strips - STEP_PARAMETERS);
  return {
    error: size.x,
    errorInterval: below(errors, byError, least, variance * cuts.size, size.x),
    changeAt: moments[moment.at] ?? 0,
    changeAtInterval: below(
      moments,
      byMoment,
      least,
      variance * cuts.moment,
      moments[moment.at] ?? 0,
    ),
    residualSd: Math.sqrt(variance),
    ratio: variance > 0 ? Math.max(0, surface.restWithoutChange - least) / variance : 0,
  };
}

/** The lowest point of a curve given on a grid, through a parabola where it lies inside. */
function lowest(xs: readonly number[], values: Float64Array) {
  let at = 0;
  values.forEach((value, i) => {
    if (value < (values[at] ?? 0)) at = i;
  });
  const x = xs[at] ?? 0;
  const value = values[at] ?? 0;
  if (at === 0 || at === values.length - 1) return { at, x, value };
  const [before, after] = [values[at - 1] ?? 0, values[at + 1] ?? 0];
  const bend = before - 2 * value + after;
  if (!(bend > 0)) return { at, x, value };
  const shift = (0.5 * (before - after)) / bend;
  const step = (xs[at + 1] ?? x) - x;
  return { at, x: x + shift * step, value: Math.max(0, value - 0.25 * (before - after) * shift) };
}

/**
 * The outermost points at which a curve lies within `reach` of its least; between the points of the
 * grid √(curve − least) is close to a line.
 */
function below(
  xs: readonly number[],
  values: Float64Array,
  least: number,
  reach: number,
  best: number,
): readonly [number, number] {
  const within = (i: number) => (values[i] ?? Number.POSITIVE_INFINITY) - least <= reach;
  let [first, last] = [0, xs.length - 1];
  while (first < xs.length && !within(first)) first += 1;
  while (last >= 0 && !within(last)) last -= 1;
  if (first > last) return [best, best];
  const root = (i: number) => Math.sqrt(Math.max(0, (values[i] ?? 0) - least));
  const crossing = (inside: number, outside: number) => {
    const [from, to] = [xs[inside], xs[outside]];
    if (from === undefined) return best;
    if (to === undefined) return from;
    const [near, far] = [root(inside), root(outside)];
    return far > near ? from + ((Math.sqrt(reach) - near) / (far - near)) * (to - from) : from;
  };
  return [Math.min(best, crossing(first, first - 1)), Math.max(best, crossing(last, last + 1))];
}
