import { type StripHistory, seriesOfStrips, verdictHistory } from "../../control/index.ts";
import { requireObject } from "../../input/index.ts";
import type { PlotlyFigure, VegaLiteFigure } from "../parts/figure.ts";
import { controlChartFigure } from "./control-chart.ts";
import { controlExplorer } from "./control-explorer.ts";
import { todayFigure } from "./today-figure.ts";

/** What the figures of a process's strips may be told. */
export interface StripFigureOptions {
  /** Default: the name of the process and what is shown. */
  readonly title?: string;
  /** Ids of the parameters to draw. Default: all. */
  readonly parameters?: readonly string[];
}

/**
 * The control chart of a process from its strips: every parameter, repeat strips ringed, days on which
 * the line was held marked.
 *
 * A strip that follows one after which customer work had to wait is its repeat; the days held are those
 * of `verdictHistory` by the process's limits alone.
 *
 * @param history strips, batches, crossovers, specification, and the time up to which strips count
 * @param options title and parameters
 * @returns Vega-Lite figure, as of `controlChartFigure`
 * @throws InputError if the process has no strip, and as `seriesOfStrips`
 *
 * @example
 * const grey = (d: number) => ({ red: d, green: d, blue: d });
 * const reference = { dMin: grey(0.1), ld: grey(0.8), hd: grey(1.6), dMax: grey(2.4) };
 * const batches = [{ id: "77", process: "colour-paper", reference, correction: {} }];
 * const strips = [{ takenAt: "2026-08-14T07:10", process: "colour-paper", stripBatch: "77", operator: "A", patches: reference }];
 * stripChart({ strips, batches, specification: colourPaperProcess }).title // => "Colour-paper process: control strips"
 */
export function stripChart(
  history: StripHistory,
  options: StripFigureOptions = {},
): VegaLiteFigure {
  requireObject(
    "stripChart",
    "history",
    history,
    "an object with strips, batches and specification",
  );
  const course = verdictHistory(history);
  const held = new Set(course.filter((one) => one.verdict === "hold").map((one) => one.day));
  return controlChartFigure({
    title: options.title ?? `${history.specification.name}: control strips`,
    series: chosen(history, options),
    repeats: course.filter((_, i) => course[i - 1]?.workMayRun === false).map((one) => one.takenAt),
    flagged: [...held].map((time) => ({ time, label: "line held" })),
  });
}

/**
 * The latest strip of a process against its limits, with the last strip of the working day before.
 *
 * @param history strips, batches, crossovers, specification, and the time up to which strips count
 * @param options title and parameters
 * @returns Vega-Lite figure, as of `todayFigure`
 * @throws InputError if the process has no strip, and as `seriesOfStrips`
 *
 * @example
 * const grey = (d: number) => ({ red: d, green: d, blue: d });
 * const reference = { dMin: grey(0.1), ld: grey(0.8), hd: grey(1.6), dMax: grey(2.4) };
 * const batches = [{ id: "77", process: "colour-paper", reference, correction: {} }];
 * const strips = [{ takenAt: "2026-08-14T07:10", process: "colour-paper", stripBatch: "77", operator: "A", patches: reference }];
 * latestStripFigure({ strips, batches, specification: colourPaperProcess }).title // => "Colour-paper process: the latest strip"
 */
export function latestStripFigure(
  history: StripHistory,
  options: StripFigureOptions = {},
): VegaLiteFigure {
  requireObject(
    "latestStripFigure",
    "history",
    history,
    "an object with strips, batches and specification",
  );
  const series = chosen(history, options);
  const times = [...new Set(series.flatMap((one) => one.takenAt))].sort();
  const now = times.at(-1);
  const before = times.findLast((time) => time.slice(0, 10) < (now ?? "").slice(0, 10));
  return todayFigure({
    title: options.title ?? `${history.specification.name}: the latest strip`,
    series,
    ...(now === undefined ? {} : { now }),
    ...(before === undefined ? {} : { before }),
  });
}

/**
 * The control chart of a process to explore: to hover over and to zoom into.
 *
 * @param history strips, batches, crossovers, specification, and the time up to which strips count
 * @param options title and parameters
 * @returns Plotly figure, as of `controlExplorer`
 * @throws InputError if the process has no strip, and as `seriesOfStrips`
 *
 * @example
 * const grey = (d: number) => ({ red: d, green: d, blue: d });
 * const reference = { dMin: grey(0.1), ld: grey(0.8), hd: grey(1.6), dMax: grey(2.4) };
 * const batches = [{ id: "77", process: "colour-paper", reference, correction: {} }];
 * const strips = [{ takenAt: "2026-08-14T07:10", process: "colour-paper", stripBatch: "77", operator: "A", patches: reference }];
 * stripExplorer({ strips, batches, specification: colourPaperProcess }).kind // => "plotly"
 */
export function stripExplorer(
  history: StripHistory,
  options: StripFigureOptions = {},
): PlotlyFigure {
  requireObject(
    "stripExplorer",
    "history",
    history,
    "an object with strips, batches and specification",
  );
  const title = options.title ?? `${history.specification.name}: to explore`;
  return controlExplorer({ title, series: chosen(history, options) });
}

function chosen(history: StripHistory, { parameters }: StripFigureOptions) {
  const series = seriesOfStrips(history);
  return parameters === undefined
    ? series
    : series.filter((one) => parameters.includes(one.parameter));
}
