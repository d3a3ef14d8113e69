import { celsiusFromFahrenheit } from "../../units/index.ts";

/** "98 °F would be 36.7 °C", if that lies between the limits; else nothing. */
export function fahrenheitHint(value: number, minC: number, maxC: number): string | undefined {
  if (!Number.isFinite(value) || value < -400) return undefined;
  const meant = celsiusFromFahrenheit(value);
  if (meant < minC || meant > maxC) return undefined;
  return `${value} °F would be ${meant.toFixed(1)} °C`;
}
