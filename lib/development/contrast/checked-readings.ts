import { InputError, requireNumber } from "../../input/index.ts";
import { shown } from "../rate/shown.ts";
import type { ContrastReading } from "./contrast-from-two-times.ts";

/** Rise of contrast times minutes that rounding alone can make. */
const NO_RISE = 1e-9;

/** Lets readings of contrast in, sorted by time. */
export function checkedReadings(
  where: string,
  given: readonly ContrastReading[],
  least: number,
): readonly ContrastReading[] {
  if (!Array.isArray(given) || given.length < least) {
    const count = Array.isArray(given) ? `${given.length} readings` : given;
    const advice = `write at least ${least} readings { timeMin, contrastIndex } (two make a curve without error: contrastFromTwoTimes)`;
    throw new InputError(where, "rows", count, advice);
  }
  const rows = given.map((row: ContrastReading | null, i) => ({
    timeMin: requireNumber(where, `rows[${i}].timeMin`, row?.timeMin, { above: 0, unit: "min" }),
    contrastIndex: requireNumber(where, `rows[${i}].contrastIndex`, row?.contrastIndex, {
      above: 0,
      max: 10,
    }),
  }));
  rows.sort((a, b) => a.timeMin - b.timeMin);
  const times = new Set(rows.map((each) => each.timeMin));
  if (times.size < least - 1) {
    const advice = `write at least ${least - 1} different times`;
    throw new InputError(where, "rows", `times ${[...times].map(shown).join(", ")}`, advice);
  }
  const mean = rows.reduce((sum, each) => sum + each.timeMin, 0) / rows.length;
  const rise = rows.reduce((sum, each) => sum + (each.timeMin - mean) * each.contrastIndex, 0);
  if (!(rise > NO_RISE)) {
    const advice =
      "write readings whose contrast grows with time: timeMin and contrastIndex may belong to other rows";
    throw new InputError(where, "rows", "contrast that does not grow", advice);
  }
  return rows;
}
