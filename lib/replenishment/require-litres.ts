import { InputError, requireNumber } from "../input/index.ts";
import { convertVolume } from "../units/index.ts";

/** Lets a tank volume in litres in; what was typed in gallons is answered with the litres to write. */
export function requireLitres(where: string, argument: string, value: unknown): number {
  const gallons =
    typeof value === "string" ? /^\s*([\d.]+)\s*(us|imp\w*)?\s*gal/i.exec(value) : null;
  const amount = Number(gallons?.[1]);
  if (gallons && Number.isFinite(amount)) {
    const us = Number(convertVolume(amount, "usGallon", "L").toPrecision(5));
    const imperial = Number(convertVolume(amount, "imperialGallon", "L").toPrecision(5));
    const advice = `write litres: ${us} for US gallons, ${imperial} for imperial gallons`;
    throw new InputError(where, argument, value, advice);
  }
  // From a drop to a swimming pool.
  return requireNumber(where, argument, value, { min: 1e-6, max: 1e9, unit: "L" });
}
