import { requireNumber, requireObject } from "../../input/index.ts";
import { requireVolumeMl } from "../dilution/require-volume.ts";

/**
 * A weaker solution from a stronger one and water.
 *
 * C1·V1 = C2·V2
 *
 * @param wanted.strength strength of the stock, above 0, any unit per volume
 * @param wanted.target strength wanted in the same unit, from 0 to the stock's
 * @param wanted.totalMl volume wanted, mL, above 0
 * @returns the stock and the water in mL, which sum to the total
 * @throws InputError for a target above the stock's strength
 *
 * @example
 * diluteToStrength({ strength: 250, target: 100, totalMl: 1000 }).stockMl // => 400
 *
 * Source: mass balance with additive volumes.
 */
export function diluteToStrength(wanted: {
  readonly strength: number;
  readonly target: number;
  readonly totalMl: number;
}): { readonly stockMl: number; readonly waterMl: number; readonly totalMl: number } {
  const where = "diluteToStrength";
  requireObject(where, "wanted", wanted, "an object with strength, target and totalMl");
  const bounds = { above: 0, max: 1e12 };
  const strength = requireNumber(where, "strength", wanted.strength, bounds);
  const target = requireNumber(where, "target", wanted.target, {
    min: 0,
    max: strength,
    hint: "water cannot make it stronger",
  });
  const total = requireVolumeMl(where, "totalMl", wanted.totalMl);
  const stockMl = total * (target / strength);
  return { stockMl, waterMl: total - stockMl, totalMl: total };
}
