import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { ADDITIVE_VOLUMES } from "../dilution/dilute.ts";
import { requireVolumeMl } from "../dilution/require-volume.ts";

/** Volumes of two solutions that blend to a wanted strength. */
export interface Blend {
  readonly firstMl: number;
  readonly secondMl: number;
  readonly totalMl: number;
  /** Parts by the mixing cross: |target − second| and |first − target|. */
  readonly parts: readonly [first: number, second: number];
  readonly strength: number;
  readonly assumptions: readonly string[];
}

/**
 * Two strengths to a third, by the mixing cross.
 *
 * V1 / V2 = |t − s2| / |s1 − t|, so that (V1·s1 + V2·s2) / (V1 + V2) = t
 *
 * @param wanted.first strength of one solution, at least 0, any unit per volume (g/L, %, fraction)
 * @param wanted.second strength of the other in the same unit; 0 for water
 * @param wanted.target strength wanted, between the two (either end allowed)
 * @param wanted.totalMl volume wanted, mL, above 0
 * @returns volumes in mL that sum to the total, and the parts of the cross
 * @throws InputError for a target outside the two strengths, or two equal strengths that miss it
 *
 * @example
 * blendToStrength({ first: 80, second: 20, target: 50, totalMl: 1000 }).firstMl // => 500
 * blendToStrength({ first: 28, second: 0, target: 2, totalMl: 700 }).firstMl // => 50
 *
 * Source: mass balance with additive volumes (alligation).
 */
export function blendToStrength(wanted: {
  readonly first: number;
  readonly second: number;
  readonly target: number;
  readonly totalMl: number;
}): Blend {
  const where = "blendToStrength";
  requireObject(where, "wanted", wanted, "an object with first, second, target, …");
  const first = requireNumber(where, "first", wanted.first, { min: 0, max: 1e12 });
  const second = requireNumber(where, "second", wanted.second, { min: 0, max: 1e12 });
  const target = requireNumber(where, "target", wanted.target, { min: 0, max: 1e12 });
  const total = requireVolumeMl(where, "totalMl", wanted.totalMl);
  const [low, high] = [Math.min(first, second), Math.max(first, second)];
  if (target < low || target > high) {
    const advice = `write a strength from ${low} to ${high}; two solutions cannot give one outside their own`;
    throw new InputError(where, "target", target, advice);
  }
  const parts = [Math.abs(target - second), Math.abs(first - target)] as const;
  const share = first === second ? 1 : parts[0] / (high - low);
  const firstMl = total * share;
  return {
    firstMl,
    secondMl: total - firstMl,
    totalMl: total,
    parts,
    strength: target,
    assumptions: [ADDITIVE_VOLUMES],
  };
}
