import { InputError, requireNumber, requireObject } from "../../input/index.ts";

/** A solution of known strength and its gravity on the hydrometer in use. */
export interface GravityPoint {
  readonly specificGravity: number;
  /** Strength in any unit per volume: 1 for the mix as it should be, 0 for water; or g/L. */
  readonly strength: number;
}

/** A strength read from known points. */
export interface StrengthFromGravity {
  readonly strength: number;
  /** How much one thousandth of gravity changes the strength. */
  readonly perThousandth: number;
  readonly warnings: readonly string[];
}

/**
 * Strength of a mix from its specific gravity and two or more mixes of known strength.
 *
 * Straight line between neighbouring points: s = s1 + (S − S1)·(s2 − s1)/(S2 − S1)
 *
 * @param given.specificGravity gravity at the scale's own temperature (see `gravityAtReference`)
 * @param given.points at least two, with different gravities; water is `{ specificGravity: 1, strength: 0 }`
 * @param given.extrapolate answer outside the points with a warning; default false
 * @returns strength in the points' unit, and how much a thousandth of gravity is worth
 * @throws InputError for fewer than two points, equal gravities, or a gravity outside them
 *
 * @example
 * strengthFromGravity({ specificGravity: 1.038, points: [{ specificGravity: 1, strength: 0 }, { specificGravity: 1.04, strength: 1 }] }).strength // => 0.95
 *
 * Source: linear interpolation; two known points are common practice at the mixing bench, no source.
 */
export function strengthFromGravity(given: {
  readonly specificGravity: number;
  readonly points: readonly GravityPoint[];
  readonly extrapolate?: boolean;
}): StrengthFromGravity {
  const where = "strengthFromGravity";
  requireObject(where, "given", given, "an object with specificGravity and points");
  const gravity = requireNumber(where, "specificGravity", given.specificGravity, {
    min: 0.6,
    max: 2,
  });
  const points = sortedPoints(given.points);
  const first = points[0] as GravityPoint;
  const last = points[points.length - 1] as GravityPoint;
  const outside = gravity < first.specificGravity || gravity > last.specificGravity;
  if (outside && given.extrapolate !== true) {
    const advice = `write a gravity from ${first.specificGravity} to ${last.specificGravity}, a further known point, or extrapolate: true`;
    throw new InputError(where, "specificGravity", gravity, advice);
  }
  const found = points.findIndex((point) => gravity <= point.specificGravity);
  const upper = Math.max(1, found < 0 ? points.length - 1 : found);
  const [a, b] = [points[upper - 1] as GravityPoint, points[upper] as GravityPoint];
  const slope = (b.strength - a.strength) / (b.specificGravity - a.specificGravity);
  const strength = a.strength + slope * (gravity - a.specificGravity);
  return {
    strength: Math.max(0, strength),
    perThousandth: slope / 1000,
    warnings: outside
      ? [`${gravity} lies outside the known points; the line is drawn on beyond them`]
      : [],
  };
}

function sortedPoints(given: readonly GravityPoint[]): readonly GravityPoint[] {
  const where = "strengthFromGravity";
  if (!Array.isArray(given) || given.length < 2) {
    const advice = "write at least two known points, { specificGravity, strength }";
    throw new InputError(where, "points", given, advice);
  }
  given.forEach((point, i) => {
    const gravity = { min: 0.6, max: 2 };
    requireNumber(where, `points[${i}].specificGravity`, point.specificGravity, gravity);
    requireNumber(where, `points[${i}].strength`, point.strength, { min: 0, max: 1e12 });
  });
  const sorted = [...given].sort((a, b) => a.specificGravity - b.specificGravity);
  const twice = sorted.find((point, i) => point.specificGravity === sorted[i - 1]?.specificGravity);
  if (twice === undefined) return sorted;
  const advice = "write points of different gravity; a line needs two";
  throw new InputError(where, "points", twice.specificGravity, advice);
}
