import type { CusumChart, ParameterSeries } from "../../control/index.ts";
import { requireObject } from "../../input/index.ts";
import { type KeyItem, keyView } from "../parts/chart-key.ts";
import { minuteText, signed } from "../parts/chart-time.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth, lineStyles } from "../parts/theme.ts";
import { type Panel, type PanelPoint, panelView } from "./chart-panel.ts";
import { chartFrame, domainAround, statisticalKey } from "./statistical-chart.ts";

/** Sums beyond this many decision intervals are off the scale. */
const FURTHEST = 4;

const offScale: KeyItem = {
  label: "off the scale",
  marker: { shape: "triangle-up", filled: true, size: 55, color: "#555555" },
};

/**
 * The chart of the tabular CUSUM: the sum of what stood above the target drawn upward, the sum of
 * what stood below it drawn downward, the decision interval dotted on both sides.
 *
 * @param options.series the readings with their times
 * @param options.chart the CUSUM chart computed from the series' deviations
 * @returns Vega-Lite figure; its text alternative says target, allowance, interval and signals
 * @throws InputError if chart and series differ in length
 *
 * @example
 * const limits = { kind: "process limits", action: null, adjustment: null, control: { lower: -0.08, upper: 0.08, source: "own", howObtained: "the lab's own" } } as const;
 * const series = { process: "film", parameter: "ld", name: "LD", colour: "red", limits, rows: [0, 1, 2], takenAt: ["2026-03-02T08:05", "2026-03-03T08:05", "2026-03-04T08:05"], deviations: [0.02, -0.01, 0.09], batchChanges: [], gaps: [] } as const;
 * const chart = cusumChart(series.deviations, { target: 0, sigma: 0.01 });
 * cusumFigure({ title: "LD red", series, chart }).description.includes("1 signal: 4 Mar 08:05") // => true
 *
 * Source: arrangement as in NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.3.
 */
export function cusumFigure(options: {
  readonly title: string;
  readonly series: ParameterSeries;
  readonly chart: CusumChart;
}): VegaLiteFigure {
  requireObject("cusumFigure", "options", options, "an object with title, series and chart");
  const { series, chart } = options;
  const frame = chartFrame("cusumFigure", series, chart.upperSums.length);
  const downward = chart.lowerSums.map((v) => -v);
  const at = (values: readonly number[]) => values.map((v, i) => ({ t: frame.times[i] ?? 0, v }));
  const h = chart.decisionInterval;
  const points = chart.signals.map(({ at: i, side, sentence }): PanelPoint => {
    const t = frame.times[i] ?? 0;
    const v = (side === "above" ? chart.upperSums[i] : downward[i]) ?? 0;
    return { t, v, channel: "neutral", emphasis: "signal", text: `${minuteText(t)}: ${sentence}` };
  });
  const last = chart.upperSums.length - 1;
  for (const sums of [chart.upperSums, downward]) {
    const v = sums[last] ?? 0;
    const t = frame.times[last] ?? 0;
    const text = `${minuteText(t)}: sum ${signed(v, 3)}`;
    if (Math.abs(v) > FURTHEST * h) points.push({ t, v, channel: "neutral", text });
  }
  const reach = domainAround([...chart.upperSums, ...downward, h, -h]);
  const panel: Panel = {
    heading: `Cumulative sums: ${frame.name}`,
    yTitle: ["Sum", "(density)"],
    height: 190,
    domain: [Math.max(-FURTHEST * h, reach[0]), Math.min(FURTHEST * h, reach[1])],
    lines: [
      { value: 0, label: "zero", style: "aim" },
      { value: h, label: `interval ${signed(h, 3)}`, style: "statistical" },
      { value: -h, label: `interval ${signed(-h, 3)}`, style: "statistical" },
    ],
    curves: [
      { values: at(chart.upperSums), style: "upperSum" },
      { values: at(downward), style: "lowerSum" },
    ],
    points,
    unjoined: true,
    rules: frame.rules,
    bands: [],
    events: frame.events ?? [],
  };
  const items: KeyItem[] = [
    { label: "sum above target", line: lineStyles.upperSum },
    { label: "sum below target, drawn downward", line: lineStyles.lowerSum },
    { label: "decision interval (statistical)", line: lineStyles.statistical, newRow: true },
    ...(chart.signals.length > 0 ? [{ ...statisticalKey.signal, label: "interval passed" }] : []),
    ...(points.some(({ v }) => Math.abs(v) > FURTHEST * h) ? [offScale] : []),
    ...(frame.rules.length > 0 ? [statisticalKey.batch] : []),
  ];
  const signals = chart.signals.slice(-3);
  return vegaLiteFigure({
    title: options.title,
    description: [
      `Tabular CUSUM of ${frame.name}, ${chart.upperSums.length} readings in density, target`,
      `${signed(chart.target, 3)}, allowance ${chart.allowance.toFixed(3)}, decision interval ${h.toFixed(3)}.`,
      chart.signals.length === 0
        ? "Neither sum passes the interval."
        : `${chart.signals.length === 1 ? "1 signal" : `${chart.signals.length} signals, the last`}: ${signals.map(({ at: i, sentence }) => `${minuteText(frame.times[i] ?? 0)}: ${sentence}`).join(" ")}`,
    ].join(" "),
    specification: {
      vconcat: [keyView(items, figureWidth.plot + 110), panelView(panel, frame.axis, true)],
      spacing: 14,
    },
  });
}
