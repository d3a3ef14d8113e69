import type { ProportionChart } from "../../control/index.ts";
import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import { keyView } from "../parts/chart-key.ts";
import { chartTime, dayText, timeAxis, timeChannel } from "../parts/chart-time.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";

const DAY_MS = 86_400_000;

/**
 * Chart of a daily share with limits that step with each day's number of prints. A second chart of
 * the same days (Laney beside binomial) adds its limits.
 *
 * @param days the days, `"2026-08-14"`, as many as the chart has
 * @param chart from `proportionChart`
 * @param options.title what the figure shows
 * @param options.compare the same days with other limits
 * @param options.what what is counted, for the axis; default "Remakes"
 * @returns Vega-Lite figure; its text alternative names the days beyond
 * @throws InputError if days and chart differ in length
 *
 * @example
 * proportionChartFigure(["2026-03-02", "2026-03-03", "2026-03-04"], proportionChart([3, 30, 4], [300, 300, 300], { limits: "binomial" }), { title: "Remakes" }).description.includes("3 Mar 2026") // => true
 */
export function proportionChartFigure(
  days: readonly string[],
  chart: ProportionChart,
  options: { readonly title: string; readonly compare?: ProportionChart; readonly what?: string },
): VegaLiteFigure {
  const where = "proportionChartFigure";
  requireEntries(where, "days", days, "a list of texts");
  requireObject(where, "chart", chart, "an object with mean, shares, lower, …");
  requireObject(where, "options", options, "an object with title");
  const { compare } = options;
  for (const each of compare === undefined ? [chart] : [chart, compare]) {
    if (days.length === each.shares.length) continue;
    throw new InputError(where, "days", days.length, `write ${each.shares.length} days`);
  }
  const times = days.map((day) => chartTime(where, "days", day));
  const beyond = new Set([...chart.beyond, ...(compare?.beyond ?? [])]);
  const values = times.map((t, i) => ({
    t,
    share: 100 * (chart.shares[i] ?? 0),
    beyond: beyond.has(i),
    tip: `${dayText(t)}: ${(100 * (chart.shares[i] ?? 0)).toFixed(2)} %`,
  }));
  const x = timeChannel(timeAxis(times, "Day"), true);
  const y = { type: "quantitative", title: `${options.what ?? "Remakes"} (% of the prints)` };
  const limits = (of: ProportionChart, color: string, strokeDash: readonly number[]) =>
    (["upper", "lower"] as const).map((side) => ({
      data: { values: steps(times, of[side]) },
      mark: { type: "line", interpolate: "step-after", color, strokeDash, strokeWidth: 1.5 },
      encoding: { x, y: { ...y, field: "v" } },
    }));
  const styles = [
    { of: chart, colour: palette.statistical, dash: [] },
    { of: compare, colour: palette.action, dash: [5, 3] },
  ].flatMap(({ of, ...style }) => (of === undefined ? [] : [{ of, ...style }]));
  const marker = {
    type: "point",
    filled: false,
    shape: "circle",
    size: 110,
    strokeWidth: 2,
    color: palette.control,
  };
  const key = [
    ...styles.map(({ of, colour, dash }) => ({
      label: `${of.limits} limits, ${of.beyond.length} beyond`,
      line: { colour, dash, width: 1.5 },
    })),
    {
      label: `mean ${percent(chart.mean)}`,
      line: { colour: palette.ink, dash: [2, 3], width: 1.2 },
    },
    ...(beyond.size === 0 ? [] : [{ label: "beyond", marker }]),
  ];
  const point = { encoding: { x, y: { ...y, field: "share" } } };
  return vegaLiteFigure({
    title: options.title,
    description: textOf(
      times,
      styles.map(({ of }) => of),
    ),
    specification: {
      vconcat: [
        keyView(key, figureWidth.plot),
        {
          width: figureWidth.plot,
          height: 250,
          data: { values },
          layer: [
            ...styles.flatMap(({ of, colour, dash }) => limits(of, colour, dash)),
            {
              data: { values: [{ v: 100 * chart.mean }] },
              mark: { type: "rule", color: palette.ink, strokeDash: [2, 3] },
              encoding: { y: { ...y, field: "v" } },
            },
            { ...point, mark: { type: "line", color: palette.series[0], strokeWidth: 1 } },
            {
              ...point,
              mark: { type: "point", color: palette.series[0], size: 22 },
              encoding: { ...point.encoding, tooltip: { field: "tip", type: "nominal" } },
            },
            { ...point, transform: [{ filter: "datum.beyond" }], mark: marker },
          ],
        },
      ],
      spacing: 10,
    },
  });
}

/** A limit as a step over each day, from half a day before to half a day after. */
function steps(times: readonly number[], limit: readonly number[]) {
  return times.flatMap((t, i) => {
    const v = 100 * (limit[i] ?? 0);
    return [-0.5, 0.5].map((half) => ({ t: t + half * DAY_MS, v }));
  });
}

function textOf(times: readonly number[], charts: readonly ProportionChart[]): string {
  const [chart] = charts;
  const mean = `${times.length} days, mean ${percent(chart?.mean ?? 0)}; the days scatter ${(chart?.dispersion ?? 0).toFixed(2)} times as widely as counting alone`;
  const found = charts.map(({ limits, beyond }) => {
    const days = beyond.map((i) => dayText(times[i] ?? 0));
    return `beyond ${limits} limits: ${days.length === 0 ? "no day" : days.join(", ")}`;
  });
  return `${mean}; ${found.join("; ")}.`;
}

function percent(share: number): string {
  return `${(100 * share).toFixed(2)} %`;
}
