import type { EwmaChart, ParameterSeries } from "../../control/index.ts";
import { requireObject } from "../../input/index.ts";
import { type KeyItem, keyView } from "../parts/chart-key.ts";
import { minuteText, signed } from "../parts/chart-time.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth } from "../parts/theme.ts";
import { type Panel, type PanelPoint, panelView } from "./chart-panel.ts";
import { chartFrame, domainAround, statisticalKey } from "./statistical-chart.ts";

/**
 * The chart of the exponentially weighted moving average: the average as a line, its statistical
 * limits dotted, the single readings pale behind it.
 *
 * @param options.series the readings with their times
 * @param options.chart the EWMA chart computed from the series' deviations
 * @returns Vega-Lite figure; its text alternative says weight, limits and when they were passed
 * @throws InputError if chart and series differ in length
 *
 * @example
 * const limits = { kind: "process limits", action: null, adjustment: null, control: { lower: -0.08, upper: 0.08, source: "own", howObtained: "the lab's own" } } as const;
 * const series = { process: "film", parameter: "ld", name: "LD", colour: "red", limits, rows: [0, 1, 2], takenAt: ["2026-03-02T08:05", "2026-03-03T08:05", "2026-03-04T08:05"], deviations: [0.02, -0.01, 0.09], batchChanges: [], gaps: [] } as const;
 * const chart = ewmaChart(series.deviations, { centre: 0, sigma: 0.01, lambda: 0.5 });
 * ewmaFigure({ title: "LD red", series, chart }).description.includes("the average ends at +0.045") // => true
 *
 * Source: arrangement as in NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4.
 */
export function ewmaFigure(options: {
  readonly title: string;
  readonly series: ParameterSeries;
  readonly chart: EwmaChart;
}): VegaLiteFigure {
  requireObject("ewmaFigure", "options", options, "an object with title, series and chart");
  const { series, chart } = options;
  const frame = chartFrame("ewmaFigure", series, chart.values.length);
  const beyond = new Set(chart.beyond);
  const at = (values: readonly number[]) => values.map((v, i) => ({ t: frame.times[i] ?? 0, v }));
  const points = chart.values.map((v, i): PanelPoint => {
    const t = frame.times[i] ?? 0;
    const text = `${minuteText(t)}: moving average ${signed(v, 3)}`;
    return { t, v, channel: frame.channel, text, emphasis: beyond.has(i) ? "signal" : undefined };
  });
  const upper = chart.upperLimits.at(-1) ?? chart.centre;
  const lower = chart.lowerLimits.at(-1) ?? chart.centre;
  const panel: Panel = {
    heading: `Moving average: ${frame.name}`,
    yTitle: ["Deviation", "(density)"],
    height: 190,
    domain: domainAround([...chart.values, upper, lower, ...series.deviations]),
    lines: [
      { value: chart.centre, label: `mean ${signed(chart.centre, 3)}`, style: "centre" },
      { value: upper, label: `limit ${signed(upper, 3)}`, style: "named" },
      { value: lower, label: `limit ${signed(lower, 3)}`, style: "named" },
    ],
    curves: [
      { values: at(chart.upperLimits), style: "statistical" },
      { values: at(chart.lowerLimits), style: "statistical" },
    ],
    background: at(series.deviations),
    points,
    single: true,
    rules: frame.rules,
    bands: [],
    events: frame.events ?? [],
  };
  const reading: KeyItem = {
    label: "single reading",
    marker: { shape: "circle", filled: true, size: 16, color: "#9a9a9a" },
  };
  const items: KeyItem[] = [
    { ...statisticalKey.readings(frame.channel), label: `moving average, weight ${chart.lambda}` },
    reading,
    statisticalKey.limit(`${chart.widthSigma} sigma of the average`),
    { ...statisticalKey.centre("mean of the base period"), newRow: true },
    ...(beyond.size > 0 ? [statisticalKey.signal] : []),
    ...(frame.rules.length > 0 ? [statisticalKey.batch] : []),
  ];
  const since = chart.beyond.map((i) => minuteText(frame.times[i] ?? 0));
  return vegaLiteFigure({
    title: options.title,
    description: [
      `Exponentially weighted moving average of ${frame.name}, ${chart.values.length} readings in`,
      `density, weight ${chart.lambda} for the newest. Statistical limits at the end:`,
      `${signed(lower, 3)} and ${signed(upper, 3)}; the average ends at ${signed(chart.values.at(-1) ?? 0, 3)}.`,
      since.length === 0
        ? "It is never beyond them."
        : `It is beyond them after ${since.length} readings, first ${since[0]}, last ${since.at(-1)}.`,
    ].join(" "),
    specification: {
      vconcat: [keyView(items, figureWidth.plot + 110), panelView(panel, frame.axis, true)],
      spacing: 14,
    },
  });
}
