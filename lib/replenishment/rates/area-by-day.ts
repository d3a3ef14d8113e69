import { InputError, requireNumber } from "../../input/index.ts";
import type { AreaReading, FormatCount } from "../../units/index.ts";
import { dateOfDay, dayNumber } from "../calendar.ts";
import { type OwnFormat, ownFormatAreas } from "./own-formats.ts";

/** A row of a production log. */
export interface ProducedFormat extends FormatCount {
  /** `YYYY-MM-DD` */
  readonly date: string;
  readonly process?: string;
}

/** What went through in a day. */
export interface DayArea {
  readonly date: string;
  /** Film or paper, m². */
  readonly areaM2: number;
  /** Leaders and trailers of spliced lengths, m². */
  readonly leaderM2: number;
  /** Whether the log has any row for the day. */
  readonly logged: boolean;
}

/** Area of each day from the first to the last. */
export interface AreaByDay {
  readonly days: readonly DayArea[];
  readonly areaM2: number;
  /** Days without a row; they count as days of rest. */
  readonly daysWithout: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * Area by day from a production log: every day from the first to the last, days of rest with 0.
 *
 * @param rows dates, formats and counts, perhaps of several processes
 * @param options.process only rows of this process
 * @param options.from first day; default the first in the log
 * @param options.to last day; default the last in the log
 * @param options.reading `"dimensions"` (default) or `"trade"`
 * @param options.splice rolls are spliced, `filmsPerLength` to a length with so much leader and trailer
 *   together; without it no leaders are counted
 * @param options.ownFormats sizes that are not in `photoFormats`, with a name of your own, width and
 *   length in mm, and `form: "roll"` for film that is spliced
 * @returns areas in m² by day, ready for `tankOverDays`; a day without any row is named
 * @throws InputError for a date that does not exist, an unknown format or process, a negative count
 *
 * @example
 * areaByDay([{ date: "2026-03-02", format: "120", count: 4 }, { date: "2026-03-04", format: "120", count: 8 }]).days.map((day) => day.areaM2) // => [0.20295, 0, 0.4059]
 *
 * Source: arithmetic.
 */
export function areaByDay(
  rows: readonly ProducedFormat[],
  options: {
    readonly process?: string;
    readonly from?: string;
    readonly to?: string;
    readonly reading?: AreaReading;
    readonly splice?: { readonly filmsPerLength: number; readonly leaderMm: number };
    readonly ownFormats?: readonly OwnFormat[];
  } = {},
): AreaByDay {
  const where = "areaByDay";
  if (!Array.isArray(rows)) {
    const advice = 'write a list like [{ date: "2026-03-02", format: "120", count: 4 }]';
    throw new InputError(where, "rows", rows, advice);
  }
  const { process } = options;
  const wanted = rows.filter((row) => process === undefined || row.process === process);
  if (wanted.length === 0) {
    const names = [...new Set(rows.map((row) => row.process ?? "no process"))].join(", ");
    const advice = rows.length === 0 ? "write at least one row" : `write one of ${names}`;
    throw new InputError(where, "process", process, advice);
  }
  const byDay = new Map<number, ProducedFormat[]>();
  wanted.forEach((row, i) => {
    const day = dayNumber(where, `rows[${i}].date`, row.date);
    byDay.set(day, [...(byDay.get(day) ?? []), row]);
  });
  const logged = [...byDay.keys()];
  const end = (
    date: string | undefined,
    argument: string,
    best: (a: number, b: number) => number,
  ) =>
    date === undefined ? logged.reduce((a, b) => best(a, b)) : dayNumber(where, argument, date);
  const first = end(options.from, "from", Math.min);
  const last = end(options.to, "to", Math.max);
  requireNumber(where, "days from first to last", last - first + 1, { min: 1, max: 100_000 });
  const { areaM2, leaderM2 } = ownFormatAreas(where, options);
  const days = Array.from({ length: last - first + 1 }, (_, i): DayArea => {
    const ofDay = byDay.get(first + i);
    return {
      date: dateOfDay(first + i),
      areaM2: areaM2(ofDay ?? []),
      leaderM2: leaderM2(ofDay ?? []),
      logged: ofDay !== undefined,
    };
  });
  const daysWithout = days.filter((day) => !day.logged).map(({ date }) => date);
  return {
    days,
    areaM2: days.reduce((sum, day) => sum + day.areaM2, 0),
    daysWithout,
    warnings:
      daysWithout.length === 0
        ? []
        : [
            `${daysWithout.length} days have no row and count as days of rest: ${listed(daysWithout)}`,
          ],
  };
}

function listed(dates: readonly string[]): string {
  return dates.length > 6 ? `${dates.slice(0, 5).join(", ")} …` : dates.join(", ");
}
