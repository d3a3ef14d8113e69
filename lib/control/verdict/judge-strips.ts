import { seriesOfTable } from "../strips/series-of-table.ts";
import type { StripTable } from "../strips/strip-table.ts";
import { level, limitLevels } from "./limit-level.ts";
import { type StatisticalMarks, statisticalMarks } from "./statistical-marks.ts";
import type { VerdictSettings } from "./verdict-options.ts";

/** What was found of one series. */
export interface JudgedSeries {
  /** Level after each strip from the process's limits alone. */
  readonly byLimits: Uint8Array;
  readonly marks: StatisticalMarks | null;
}

/** What was found of all strips of a process. */
export interface JudgedStrips {
  readonly series: readonly JudgedSeries[];
  /** Worst level over all series after each strip, statistical signals included. */
  readonly worst: Uint8Array;
}

/** Judges every strip of a process, one pass for each series. */
export function judgeStrips(
  where: string,
  table: StripTable,
  process: string,
  settings: VerdictSettings,
): JudgedStrips {
  const worst = new Uint8Array(table.rows.length);
  const series = table.keys.map((key, k): JudgedSeries => {
    const column = table.columns[k] ?? new Float64Array(0);
    const { limits } = key.parameter;
    const byLimits = limitLevels(column, table.takenAt, limits, settings.repeatWindowHours);
    const marks =
      settings.charts === undefined
        ? null
        : statisticalMarks(
            where,
            seriesOfTable(table, k, process),
            settings.charts,
            settings.actOn,
          );
    let position = 0;
    for (let i = 0; i < column.length; i++) {
      let here = byLimits[i] ?? 0;
      if (!Number.isNaN(column[i] ?? Number.NaN)) {
        if (marks !== null && marks.acting[position] === 1 && here < level.act) here = level.act;
        position++;
      }
      if (here > (worst[i] ?? 0)) worst[i] = here;
    }
    return { byLimits, marks };
  });
  return { series, worst };
}
