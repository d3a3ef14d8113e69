import { InputError, type NumberBounds, requireNumber } from "../input/index.ts";
import { typedVolumeAdvice } from "../units/index.ts";

/**
 * Lets a volume, or a flow, in millilitres or litres in. One that was typed with a unit of its own
 * ("5 gal", "500 ml") is answered with the number to write.
 */
export function requireVolume(
  where: string,
  argument: string,
  value: unknown,
  bounds: NumberBounds & { readonly unit: string },
): number {
  const advice = typedVolumeAdvice(value, bounds.unit.startsWith("mL") ? "mL" : "L");
  if (advice !== undefined) throw new InputError(where, argument, value, advice);
  return requireNumber(where, argument, value, bounds);
}
