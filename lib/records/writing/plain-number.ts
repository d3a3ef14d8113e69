import { requireNumber } from "../../input/index.ts";

const MOST_DECIMALS = 6;

/**
 * A number as the logs write it: a point for the decimals and no powers of ten (1e-7 becomes
 * 0.0000001), every digit, or a fixed number of decimals.
 */
export function plainNumber(value: number, decimals?: number): string {
  requireNumber("a log that is written", "number", value);
  if (decimals !== undefined) {
    const bounds = { min: 0, max: MOST_DECIMALS, whole: true };
    return value.toFixed(requireNumber("a log that is written", "decimals", decimals, bounds));
  }
  const text = String(value);
  return text.includes("e") ? inFull(text) : text;
}

/** Moves the point of a number in powers of ten: `1.5e-7` becomes `0.00000015`. */
function inFull(text: string): string {
  const [mantissa = "", power = ""] = text.split("e");
  const sign = mantissa.startsWith("-") ? "-" : "";
  const digits = mantissa.replace(/[-.]/g, "");
  const point = 1 + Number(power);
  if (point <= 0) return `${sign}0.${"0".repeat(-point)}${digits}`;
  return `${sign}${digits.padEnd(point, "0")}`;
}
