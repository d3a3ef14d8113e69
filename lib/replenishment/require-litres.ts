import { InputError } from "../input/index.ts";
import { typedVolumeAdvice } from "../units/index.ts";
import { requireVolume } from "./require-volume.ts";

/**
 * Lets a tank volume in litres in; what was typed in gallons is answered with the litres to write.
 * With the object it belongs to, a volume under a name like `volumeGal` is found and answered, too.
 */
export function requireLitres(
  where: string,
  argument: string,
  value: unknown,
  owner: object = {},
): number {
  if (value === undefined) {
    const typed = Object.entries(owner).find(([key]) => /^volume/i.test(key) && key !== "volumeL");
    if (typed !== undefined) {
      const [key, amount] = typed;
      const unit = key.slice("volume".length);
      const advice = typedVolumeAdvice(`${amount} ${unit}`, "L");
      const instead = `in place of ${key} write volumeL in litres`;
      throw new InputError(where, argument, value, advice ? `${instead}; ${advice}` : instead);
    }
  }
  // From a drop to a swimming pool.
  return requireVolume(where, argument, value, { min: 1e-6, max: 1e9, unit: "L" });
}
