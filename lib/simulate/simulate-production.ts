import type { RandomStream } from "../numerics/index.ts";
import type { ProductionRow } from "../records/index.ts";
import { formatAreaM2 } from "../units/index.ts";
import { weekdayOf } from "./days.ts";
import type { SimulatedLine } from "./simulated-line.ts";

/** Sunday first: a short Sunday, a Monday of weekend films, a full Saturday. */
const WEEK = [0.35, 1.35, 1, 0.95, 0.95, 1.15, 1.25];
const DAY_SD = 0.1;

/** The pieces of a line by day and format, and the area they make. */
export interface SimulatedProduction {
  readonly rows: readonly ProductionRow[];
  /** m² by day, in order. */
  readonly areaM2: readonly number[];
}

/**
 * A line's work day by day: the week's pattern, days that differ, whole pieces.
 *
 * @param shareOfDay share of a day, by index, on which the line runs; default all of it
 */
export function simulateProduction(
  line: SimulatedLine,
  days: readonly string[],
  { normal }: RandomStream,
  shareOfDay: (day: number) => number = () => 1,
): SimulatedProduction {
  const pieces = line.formats.map(({ format, share }) => ({
    format,
    share,
    each: formatAreaM2(format),
  }));
  const areaOfOne = pieces.reduce((sum, { share, each }) => sum + share * each, 0);
  const rows: ProductionRow[] = [];
  const areaM2 = days.map((date, at) => {
    const load = (WEEK[weekdayOf(date)] ?? 1) * Math.max(0, 1 + DAY_SD * normal()) * shareOfDay(at);
    const total = (line.areaM2PerDay * load) / areaOfOne;
    return pieces.reduce((area, { format, share, each }) => {
      const expected = total * share;
      const count = Math.max(0, Math.round(expected + 0.8 * Math.sqrt(expected) * normal()));
      rows.push({ date, process: line.process, format, count });
      return area + count * each;
    }, 0);
  });
  return { rows, areaM2 };
}
