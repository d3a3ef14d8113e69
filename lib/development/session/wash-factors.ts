import { requireNumber } from "../../input/index.ts";
import { washRules } from "./wash-rules.ts";

/**
 * How much longer a wash takes in cold water than at 20 °C.
 *
 * ln(factor) is a straight line in temperature between the published points (68, 50 and 35 °F) and
 * goes on along the colder pair below them; warmer water than 20 °C gets no credit.
 *
 * @param temperatureC wash water, 0 to 45 °C
 * @returns factor, 1 or more
 * @throws InputError for a temperature outside 0 to 45 °C
 *
 * @example
 * coldWashFactor(10) // => 2
 *
 * Source: US Army, TM 11-2323, para. 33c (×2 at 50 °F, ×4 at 35 °F); the interpolation is ours.
 */
export function coldWashFactor(temperatureC: number): number {
  const bounds = { min: 0, max: 45, unit: "°C" };
  const fahrenheit =
    requireNumber("coldWashFactor", "temperatureC", temperatureC, bounds) * 1.8 + 32;
  const points = washRules.coldWater.points;
  for (let i = 1; i < points.length; i++) {
    const warm = points[i - 1];
    const cold = points[i];
    if (warm === undefined || cold === undefined) break;
    if (fahrenheit >= warm.temperatureF) return 1;
    if (fahrenheit < cold.temperatureF && i < points.length - 1) continue;
    const share = (warm.temperatureF - fahrenheit) / (warm.temperatureF - cold.temperatureF);
    return warm.factor * (cold.factor / warm.factor) ** share;
  }
  return 1;
}

/**
 * How much longer fixing takes in a cold bath than at 20 °C: twice for every 10 °C.
 *
 * factor = 2^((20 − T)/10) below 20 °C, 1 above
 *
 * @param temperatureC fixer, 0 to 45 °C
 * @returns factor, 1 or more
 * @throws InputError for a temperature outside 0 to 45 °C
 *
 * @example
 * coldFixerFactor(10) // => 2
 *
 * Source: US Army, TM 11-2323, para. 33c: fixing time doubles for every 18 °F below 68 °F.
 */
export function coldFixerFactor(temperatureC: number): number {
  const bounds = { min: 0, max: 45, unit: "°C" };
  const { doublesPerC, belowC } = washRules.coldFixer;
  const cold = belowC - requireNumber("coldFixerFactor", "temperatureC", temperatureC, bounds);
  return cold > 0 ? 2 ** (cold / doublesPerC) : 1;
}

/**
 * What is left in a negative after a time in running water, as a fraction: it halves every minute
 * at 20 °C, more slowly in cold water.
 *
 * fraction = 2^(−t / (t½ · factor of cold))
 *
 * @param minutes time in running water, 0 or more
 * @param temperatureC wash water, 0 to 45 °C, default 20
 * @returns fraction left, from 1 down to 0
 * @throws InputError for a negative time or a temperature out of range
 *
 * @example
 * runningWashFraction(5) // => 0.03125
 *
 * Source: US Navy, Photography (Basic), NAVEDTRA 14209, ch. 10.
 */
export function runningWashFraction(minutes: number, temperatureC = 20): number {
  requireNumber("runningWashFraction", "minutes", minutes, { min: 0, unit: "min" });
  return 2 ** (-minutes / (washRules.halving.halfTimeMin * coldWashFactor(temperatureC)));
}

/**
 * What is left after filling and emptying a tank several times, if each fill comes to balance.
 *
 * fraction = (c/(c + V))^n
 *
 * @param keptMl c: what the wet film and the emptied tank keep, mL, greater than 0
 * @param waterMl V: water of one fill, mL, greater than 0
 * @param changes n: number of fills, whole, 0 or more
 * @returns fraction left
 * @throws InputError for a volume or number out of range
 *
 * @example
 * fillAndDumpFraction(10, 500, 2) // => 0.000384
 *
 * Source: M. Torzynski 2004, worked dilution example (4 mL in the film, 6 mL in the tank, 500 mL).
 */
export function fillAndDumpFraction(keptMl: number, waterMl: number, changes: number): number {
  const where = "fillAndDumpFraction";
  requireNumber(where, "keptMl", keptMl, { above: 0, unit: "mL" });
  requireNumber(where, "waterMl", waterMl, { above: 0, unit: "mL" });
  requireNumber(where, "changes", changes, { min: 0, whole: true });
  return (keptMl / (keptMl + waterMl)) ** changes;
}
