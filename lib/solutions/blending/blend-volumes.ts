import { InputError, requireNumber } from "../../input/index.ts";
import { requireVolumeOrNoneMl } from "../dilution/require-volume.ts";

/**
 * Strength and volume of what results when solutions are poured together.
 *
 * s = Σ V_i·s_i / Σ V_i
 *
 * @param portions volumes in mL, at least 0, and strengths, at least 0, all in the same unit
 * @returns volume in mL and strength in that unit
 * @throws InputError for an empty list, a negative number, or no volume at all
 *
 * @example
 * blendVolumes([{ volumeMl: 900, strength: 10 }, { volumeMl: 100, strength: 60 }]).strength // => 15
 *
 * Source: mass balance with additive volumes.
 */
export function blendVolumes(
  portions: readonly { readonly volumeMl: number; readonly strength: number }[],
): { readonly volumeMl: number; readonly strength: number } {
  const where = "blendVolumes";
  if (!Array.isArray(portions) || portions.length === 0) {
    const advice = "write at least one { volumeMl, strength }";
    throw new InputError(where, "portions", portions, advice);
  }
  let [volumeMl, amount] = [0, 0];
  portions.forEach((portion, i) => {
    const bounds = { min: 0, max: 1e12 };
    const volume = requireVolumeOrNoneMl(where, `portions[${i}].volumeMl`, portion.volumeMl);
    volumeMl += volume;
    amount += volume * requireNumber(where, `portions[${i}].strength`, portion.strength, bounds);
  });
  requireNumber(where, "total volume", volumeMl, { above: 0, unit: "mL" });
  return { volumeMl, strength: amount / volumeMl };
}
