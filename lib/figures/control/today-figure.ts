import type { ParameterSeries } from "../../control/index.ts";
import { InputError, requireObject } from "../../input/index.ts";
import { keyView } from "../parts/chart-key.ts";
import { chartTime, densityDigits, minuteText, signed } from "../parts/chart-time.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth } from "../parts/theme.ts";
import { beyondProcess } from "./control-chart-panel.ts";
import { todayKey } from "./today-key.ts";
import { todayView } from "./today-view.ts";

/** One row: a parameter in one colour, then and now. */
export interface TodayRow {
  readonly series: ParameterSeries;
  readonly now: number | undefined;
  readonly before: number | undefined;
}

/**
 * Today's strip and an earlier one against the process's limits: each parameter and colour on one
 * common scale, the deviation as a share of the action limit (of the control limit where a
 * parameter has no action limit), with the densities printed beside it.
 *
 * @param options.series deviations of one process in density
 * @param options.now local time of the strip to judge, one of the series' `takenAt`; the latest if
 *   left out
 * @param options.before local time of the strip to compare with; none if left out
 * @returns Vega-Lite figure; its text alternative says every deviation and what is beyond a limit
 * @throws InputError if no series has a strip at `now`
 *
 * @example
 * const limits = { kind: "process limits", action: null, adjustment: null, control: { lower: -0.08, upper: 0.08, source: "own", howObtained: "the lab's own" } } as const;
 * const series = { process: "film", parameter: "ld", name: "LD", colour: "red", limits, rows: [0, 1, 2], takenAt: ["2026-03-02T08:05", "2026-03-03T08:05", "2026-03-04T08:05"], deviations: [0.02, -0.01, 0.09], batchChanges: [], gaps: [] } as const;
 * todayFigure({ title: "Today", series: [series] }).description // => "Deviations from aim in density of the strip of 4 Mar 08:05, against the process's limits: LD red +0.09 (beyond the control limit)."
 *
 * Source: common practice, no source.
 */
export function todayFigure(options: {
  readonly title: string;
  readonly series: readonly ParameterSeries[];
  readonly now?: string;
  readonly before?: string;
}): VegaLiteFigure {
  const where = "todayFigure";
  requireObject(where, "options", options, "an object with title and series");
  const { series, before } = options;
  const latest = series
    .flatMap(({ takenAt }) => takenAt.slice(-1))
    .sort()
    .at(-1);
  const now = options.now ?? latest;
  if (now === undefined || !series.some(({ takenAt }) => takenAt.includes(now))) {
    throw new InputError(
      where,
      "now",
      now,
      "write the time of a strip of the series, as in takenAt",
    );
  }
  const compared = before === undefined ? [now] : [now, before];
  const shown = series.flatMap((one) => compared.flatMap((time) => deviationAt(one, time) ?? []));
  const digits = densityDigits(shown);
  const rows = series.map((one): TodayRow => {
    return { series: one, now: deviationAt(one, now), before: deviationAt(one, before) };
  });
  const nowText = minuteText(chartTime(where, "now", now));
  const beforeText =
    before === undefined ? undefined : minuteText(chartTime(where, "before", before));
  return vegaLiteFigure({
    title: options.title,
    description: todayText(rows, digits, nowText, beforeText),
    specification: {
      vconcat: [
        keyView(todayKey(rows, nowText, beforeText), figureWidth.plot + 130),
        todayView(rows, digits, beforeText !== undefined),
      ],
      spacing: 10,
    },
  });
}

function deviationAt({ takenAt, deviations }: ParameterSeries, time?: string): number | undefined {
  const at = time === undefined ? -1 : takenAt.lastIndexOf(time);
  return at < 0 ? undefined : deviations[at];
}

function todayText(
  rows: readonly TodayRow[],
  digits: number,
  now: string,
  before: string | undefined,
): string {
  const groups = [...new Set(rows.map(({ series }) => series.parameter))];
  const words = groups.map((group) => {
    const own = rows.filter(({ series }) => series.parameter === group);
    const said = own.map(({ series, now: v }) => {
      const colour = series.colour === null ? "" : `${series.colour} `;
      if (v === undefined) return `${colour}not read`;
      const limit = beyondProcess(series, v);
      return `${colour}${signed(v, digits)}${limit === undefined ? "" : ` (beyond the ${limit} limit)`}`;
    });
    const was = own.map((row) => (row.before === undefined ? "–" : signed(row.before, digits)));
    const beforeWords = before === undefined ? "" : `, before ${was.join(", ")}`;
    return `${own[0]?.series.name} ${said.join(", ")}${beforeWords}`;
  });
  const compared = before === undefined ? "" : ` and, before it, the strip of ${before}`;
  return `Deviations from aim in density of the strip of ${now}${compared}, against the process's limits: ${words.join("; ")}.`;
}
