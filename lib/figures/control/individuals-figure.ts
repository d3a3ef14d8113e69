import type { IndividualsChart, ParameterSeries } from "../../control/index.ts";
import { requireObject } from "../../input/index.ts";
import { type KeyItem, keyView } from "../parts/chart-key.ts";
import { dayText, minuteText, signed } from "../parts/chart-time.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth, lineStyles } from "../parts/theme.ts";
import { type Panel, type PanelLine, type PanelPoint, panelView } from "./chart-panel.ts";
import { processLines } from "./control-chart-panel.ts";
import {
  basePeriodBand,
  type ChartFrame,
  chartFrame,
  domainAround,
  statisticalKey,
} from "./statistical-chart.ts";

/**
 * The individuals chart with its moving-range chart below: readings of one parameter in one colour
 * against the statistical limits of the lab's own base period (dotted), with the number of each run
 * rule beside the reading that completes its pattern. The process's limits are drawn for comparison
 * in the style of the control chart, and are named as what they are.
 *
 * @param options.series the readings with their times and the process's limits
 * @param options.chart the individuals chart computed from the series' deviations
 * @returns Vega-Lite figure; its text alternative says limits, base period and signals
 * @throws InputError if chart and series differ in length
 *
 * @example
 * const limits = { kind: "process limits", action: null, adjustment: null, control: { lower: -0.08, upper: 0.08, source: "own", howObtained: "the lab's own" } } as const;
 * const series = { process: "film", parameter: "ld", name: "LD", colour: "red", limits, rows: [0, 1, 2], takenAt: ["2026-03-02T08:05", "2026-03-03T08:05", "2026-03-04T08:05"], deviations: [0.02, -0.01, 0.09], batchChanges: [], gaps: [] } as const;
 * const chart = individualsChart(series.deviations, { minimumReadings: 3 });
 * individualsFigure({ title: "LD red", series, chart }).kind // => "vega-lite"
 *
 * Source: arrangement as in NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2.
 */
export function individualsFigure(options: {
  readonly title: string;
  readonly series: ParameterSeries;
  readonly chart: IndividualsChart;
}): VegaLiteFigure {
  requireObject("individualsFigure", "options", options, "an object with title, series and chart");
  const { series, chart } = options;
  const frame = chartFrame("individualsFigure", series, chart.values.length);
  const panels = [individualsPanel(series, chart, frame), movingRangePanel(chart, frame)];
  const items: KeyItem[] = [
    statisticalKey.readings(frame.channel),
    statisticalKey.centre("mean of the base period"),
    statisticalKey.limit(`${chart.limits.widthSigma} sigma`),
    { ...statisticalKey.signal, label: "beyond it", newRow: true },
    { ...statisticalKey.pattern, label: "run rule, with its number where it begins" },
  ];
  for (const style of ["action", "control"] as const) {
    if (!panels[0]?.lines.some((line) => line.style === style)) continue;
    items.push({ label: `process ${style} limit`, line: lineStyles[style] });
  }
  if (frame.rules.length > 0) items.push(statisticalKey.batch);
  const views = panels.map((panel, i) => panelView(panel, frame.axis, i === 1));
  return vegaLiteFigure({
    title: options.title,
    description: individualsText(chart, frame),
    specification: { vconcat: [keyView(items, figureWidth.plot + 110), ...views], spacing: 14 },
  });
}

function individualsPanel(
  series: ParameterSeries,
  chart: IndividualsChart,
  frame: ChartFrame,
): Panel {
  const { centre, upperLimit, lowerLimit, widthSigma } = chart.limits;
  const rules = new Map<number, Set<string>>();
  for (const { at, rule } of chart.signals) {
    const number = rule.startsWith("nelson") ? rule.slice(7) : `W${rule.slice(-1)}`;
    rules.set(at, (rules.get(at) ?? new Set()).add(number));
  }
  const beyond = new Set(chart.beyond);
  const points = chart.values.map((v, i): PanelPoint => {
    const t = frame.times[i] ?? 0;
    const completed = rules.get(i);
    const words = completed === undefined ? "" : `, run rule ${[...completed].join(" and ")}`;
    const text = `${minuteText(t)}: ${frame.name} ${signed(v, 3)}${words}`;
    const emphasis = beyond.has(i) ? "signal" : completed === undefined ? undefined : "pattern";
    const begun = [...(completed ?? [])].filter((rule) => {
      return !/^W?1$/.test(rule) && !rules.get(i - 1)?.has(rule);
    });
    const label = begun.length === 0 ? undefined : begun.join(",");
    return { t, v, channel: frame.channel, emphasis, text, label };
  });
  const sigma = `${widthSigma}σ`;
  const statistical: PanelLine[] = [
    { value: centre, label: `mean ${signed(centre, 3)}`, style: "centre" },
    { value: upperLimit, label: `${sigma} ${signed(upperLimit, 3)}`, style: "statistical" },
    { value: lowerLimit, label: `${sigma} ${signed(lowerLimit, 3)}`, style: "statistical" },
  ];
  const own = [...chart.values, upperLimit, lowerLimit];
  const [low, high] = domainAround(own);
  const reach = Math.max(Math.abs(low), Math.abs(high)) * 1.8;
  const process = processLines(series, true).filter(({ style }) => style !== "aim");
  const near = new Map(
    process.filter(({ value }) => Math.abs(value) <= reach).map((l) => [l.value, l]),
  );
  return {
    heading: `Single readings: ${frame.name}`,
    yTitle: ["Deviation", "(density)"],
    height: 190,
    domain: domainAround([...own, ...near.keys()]),
    lines: [...near.values(), ...statistical],
    points,
    single: true,
    rules: frame.rules,
    bands: basePeriodBand(frame, chart.limits),
    events: frame.events ?? [],
  };
}

function movingRangePanel({ movingRange }: IndividualsChart, frame: ChartFrame): Panel {
  const beyond = new Set(movingRange.beyond);
  const points = movingRange.values.map((v, i): PanelPoint => {
    const row = movingRange.rows[i] ?? 0;
    const t = frame.times[row] ?? 0;
    const text = `${minuteText(t)}: moved by ${v.toFixed(3)}`;
    return { t, v, channel: frame.channel, text, emphasis: beyond.has(row) ? "signal" : undefined };
  });
  const { centre, upperLimit } = movingRange;
  return {
    heading: "Moving range: from each reading to the next",
    yTitle: ["Range", "(density)"],
    height: 90,
    domain: [0, domainAround([0, upperLimit, ...movingRange.values])[1]],
    lines: [
      { value: centre, label: `mean ${centre.toFixed(3)}`, style: "centre" },
      { value: upperLimit, label: `limit ${upperLimit.toFixed(3)}`, style: "statistical" },
    ],
    points,
    rules: frame.rules,
    bands: [],
    single: true,
    unsigned: true,
  };
}

function individualsText(chart: IndividualsChart, { name, times }: ChartFrame): string {
  const { limits, signals, movingRange } = chart;
  const last = signals
    .slice(-3)
    .map(({ at, sentence }) => `${minuteText(times[at] ?? 0)}: ${sentence}`);
  const base = `${dayText(times[limits.baseFirst] ?? 0)} to ${dayText(times[limits.baseLast] ?? 0)}`;
  return [
    `Individuals and moving-range chart of ${name}, ${chart.values.length} readings in density.`,
    `Statistical limits from the base period ${base} (${limits.baseReadings} readings):`,
    `mean ${signed(limits.centre, 3)}, limits ${signed(limits.lowerLimit, 3)} and ${signed(limits.upperLimit, 3)}.`,
    `${chart.beyond.length} readings and ${movingRange.beyond.length} moving ranges are beyond them;`,
    signals.length === 0
      ? "no run rule signals."
      : `${signals.length} run-rule signals, the last: ${last.join(" ")}`,
  ].join(" ");
}
