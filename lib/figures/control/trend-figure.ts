import { predictedAt, type TrendOutlook } from "../../control/index.ts";
import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { keyView } from "../parts/chart-key.ts";
import { chartTime, dayText, signed, timeAxis, timeChannel } from "../parts/chart-time.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";
import { crossingLayers, crossingMarker, limitLayers } from "./trend-crossings.ts";

const DAY_MS = 86_400_000;
const STEPS = 60;
/** A crossing farther off than this many times the span of the readings is named, not drawn. */
const FARTHEST = 2;

/**
 * A series with its trend: the least-squares line, the band in which single new readings will lie,
 * and on each limit ahead the day of crossing with its interval.
 *
 * @param series `times` in days since `from` (a local time), and `values`, deviations in density
 * @param outlook from `trendOutlook` for the same series
 * @param options.title what the figure shows
 * @param options.limits limits to draw, density; those the outlook crosses are always drawn
 * @param options.what what the values are, for the axis; default "Deviation from aim"
 * @returns Vega-Lite figure; its text alternative gives finding and days of crossing
 * @throws InputError if times and values differ in length
 *
 * @example
 * const series = { from: "2026-03-01", times: [0, 1, 2, 3, 4, 5, 6, 7], values: [0, 2, 1, 3, 4, 4, 6, 7].map((v) => v / 100) };
 * trendFigure(series, trendOutlook(series.times, series.values, { limits: [0.08] }), { title: "LD" }).description.includes("+0.080 on 9 Mar 2026") // => true
 *
 * Source: N. R. Draper and H. Smith, Applied Regression Analysis, 3rd ed. 1998, 3.1 (the band).
 */
export function trendFigure(
  series: {
    readonly from: string;
    readonly times: readonly number[];
    readonly values: readonly number[];
  },
  outlook: TrendOutlook,
  options: {
    readonly title: string;
    readonly limits?: readonly number[];
    readonly what?: string;
  },
): VegaLiteFigure {
  const where = "trendFigure";
  requireObject(where, "series", series, "an object with from, times and values");
  requireObject(where, "outlook", outlook, "an object with finding, reason, mannKendall, …");
  requireObject(where, "options", options, "an object with title");
  const { times, values } = series;
  const [first, last] = [times[0], times.at(-1)];
  if (first === undefined || last === undefined || times.length !== values.length) {
    throw new InputError(where, "times", times.length, `write ${values.length} times, at least 1`);
  }
  times.forEach((time, i) => {
    requireNumber(where, `series.times[${i}]`, time, { min: -40_000, max: 40_000, unit: "days" });
  });
  const origin = chartTime(where, "from", series.from);
  const at = (days: number) => origin + days * DAY_MS;
  const drawn = outlook.crossings.flatMap((each) => {
    const { interval, time, limit } = each;
    if (interval === undefined || time === undefined) return [];
    return time - last > FARTHEST * (last - first) ? [] : [{ limit, time, interval }];
  });
  const ends = drawn.map(({ interval, time }) =>
    Math.min(interval[1], time + FARTHEST * (last - first)),
  );
  const end = Math.max(last + 0.1 * (last - first), ...ends);
  const line = Array.from({ length: STEPS + 1 }, (_, i) => {
    const time = first + ((end - first) * i) / STEPS;
    const { value, interval } = predictedAt(outlook.leastSquares, time);
    return {
      t: at(time),
      value,
      low: interval[0],
      high: interval[1],
      ahead: time >= last,
      past: i === 0 || time - (end - first) / STEPS < last,
    };
  });
  const limits = [...new Set([...(options.limits ?? []), ...drawn.map((each) => each.limit)])];
  const crossings = drawn.map(({ limit, time, interval }) => ({
    v: limit,
    t: at(time),
    from: at(Math.max(first, interval[0])),
    to: at(Math.min(end, interval[1])),
    label: dayText(at(time)),
  }));
  const x = timeChannel(timeAxis([at(first), at(end + 0.12 * (end - first))], "Day"), true);
  const y = {
    type: "quantitative",
    title: `${options.what ?? "Deviation from aim"} (density)`,
    scale: { zero: false },
  };
  const ink = palette.series[1];
  const points = times.map((time, i) => ({ t: at(time), v: values[i] ?? 0 }));
  const lineStyle = { colour: ink, dash: [], width: 2 };
  const confidence = `${Math.round(100 * outlook.leastSquares.confidence)} %`;
  const key = [
    { label: "least-squares line", line: lineStyle },
    { label: `${confidence} of single readings`, band: palette.band },
    ...(limits.length === 0
      ? []
      : [{ label: "limit", line: { colour: palette.control, dash: [6, 3], width: 1.5 } }]),
    ...(crossings.length === 0
      ? []
      : [{ label: "crossing, with its interval", marker: crossingMarker }]),
  ];
  return vegaLiteFigure({
    title: options.title,
    description: textOf(outlook, at),
    specification: {
      vconcat: [
        keyView(key, figureWidth.plot),
        {
          width: figureWidth.plot,
          height: 260,
          encoding: { x },
          layer: [
            {
              data: { values: line },
              mark: { type: "area", color: palette.band },
              encoding: { y: { ...y, field: "low" }, y2: { field: "high" } },
            },
            ...limitLayers(limits, y),
            ...[false, true].map((ahead) => ({
              data: { values: line },
              transform: [{ filter: ahead ? "datum.ahead" : "datum.past" }],
              mark: { type: "line", color: ink, strokeWidth: 2, strokeDash: ahead ? [5, 3] : [] },
              encoding: { y: { ...y, field: "value" } },
            })),
            {
              data: { values: points },
              mark: { type: "point", size: 28, color: palette.series[0] },
              encoding: { y: { ...y, field: "v" } },
            },
            ...crossingLayers(crossings, x, y, outlook.leastSquares.slope < 0),
          ],
        },
      ],
      spacing: 10,
    },
  });
}

function textOf(outlook: TrendOutlook, at: (days: number) => number): string {
  const days = outlook.crossings.map(({ limit, time, interval }) => {
    const reach = `${signed(limit, 3)} on ${dayText(at(time ?? 0))}`;
    return interval === undefined
      ? `${reach}, without an interval that ends`
      : `${reach} (${dayText(at(interval[0]))} to ${dayText(at(interval[1]))})`;
  });
  return `${outlook.reason}${days.length === 0 ? " No limit is crossed ahead." : ` The line reaches ${days.join(" and ")}.`}`;
}
