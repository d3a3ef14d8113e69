import type { ParameterSeries } from "../../control/index.ts";
import { InputError, requireObject } from "../../input/index.ts";
import { chartTime, type TimeAxis, timeAxis } from "../parts/chart-time.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import type { ChartEvent } from "./chart-events.ts";
import { type Panel, type PanelBand, panelView } from "./chart-panel.ts";
import { controlChartKey } from "./control-chart-key.ts";
import { controlChartPanel } from "./control-chart-panel.ts";
import { controlChartText } from "./control-chart-text.ts";
import { batchChangesOf, during } from "./series-parts.ts";

/** What a control chart is drawn from. */
export interface ControlChartOptions {
  readonly title: string;
  /** Deviations of every parameter and colour of one process, oldest first. */
  readonly series: readonly ParameterSeries[];
  /** Times at which a repeat strip was run, as in `takenAt`; those readings are ringed. */
  readonly repeats?: readonly string[];
  /** Days worth a mark (contaminated, line held): a grey band from `time` to `until`, named above. */
  readonly flagged?: readonly ChartEvent[];
  /** Draw from this local time on. */
  readonly from?: string;
  /** Draw up to this local time. */
  readonly to?: string;
}

/**
 * The trade's control chart: one panel for each parameter, three colours, time to the right,
 * deviation from aim upward, the process's action and control limits drawn and named, changes of
 * strip batch ruled and named, readings beyond a limit emphasised. The colours differ in dash and
 * marker as well, so that it can be printed in black and white. More than 600 readings of a colour
 * are drawn as their running mean over a band from lowest to highest.
 *
 * @param options.series deviations in density of one process, each series oldest first
 * @param options.from first local time drawn, `"2026-03-02"` or `"2026-03-02T08:05"`
 * @param options.to last local time drawn
 * @returns Vega-Lite figure; its text alternative says the limits, each reading beyond a control
 *   limit and each batch change
 * @throws InputError if there is no reading to draw, or if the series are of several processes
 *
 * @example
 * const limits = { kind: "process limits", action: null, adjustment: null, control: { lower: -0.08, upper: 0.08, source: "own", howObtained: "the lab's own" } } as const;
 * const series = { process: "film", parameter: "ld", name: "LD", colour: "red", limits, rows: [0, 1, 2], takenAt: ["2026-03-02T08:05", "2026-03-03T08:05", "2026-03-04T08:05"], deviations: [0.02, -0.01, 0.09], batchChanges: [], gaps: [] } as const;
 * controlChartFigure({ title: "Film line", series: [series] }).description.includes("1 reading is beyond a control limit") // => true
 *
 * Source: the arrangement (parameters in panels, deviation against time) is common practice,
 * no source.
 */
export function controlChartFigure(options: ControlChartOptions): VegaLiteFigure {
  const where = "controlChartFigure";
  requireObject(where, "options", options, "an object with title and series");
  const series = options.series.map((one) => during(one, options.from, options.to));
  const processes = new Set(series.map(({ process }) => process));
  if (processes.size > 1) {
    const advice = "write the series of one process; draw one chart for each";
    throw new InputError(where, "series", [...processes], advice);
  }
  const times = series.flatMap(({ takenAt }) => takenAt.map((t) => chartTime(where, "takenAt", t)));
  if (times.length === 0) {
    throw new InputError(where, "series", "without readings", "write at least one reading to draw");
  }
  const axis = timeAxis(times, "Strip processed");
  const bands = bandsOf(where, options.flagged ?? [], axis);
  const repeats = new Set(options.repeats ?? []);
  const parameters = [...new Set(series.map(({ parameter }) => parameter))];
  const drawn = parameters.map((parameter): Panel => {
    const group = series.filter((one) => one.parameter === parameter);
    return { ...controlChartPanel(group, repeats), bands };
  });
  const changes = batchChangesOf(series);
  const events = [
    ...changes.map((change) => ({ ...change, ruled: true })),
    ...bands.map(({ from, label = "" }) => ({ t: from, label, ruled: false })),
  ];
  const panels = drawn.map((panel, i): Panel => {
    const rules = changes.map(({ t }) => t);
    const plain = { ...panel, rules, bands: bands.map(({ from, to }) => ({ from, to })) };
    return i === 0 ? { ...plain, events } : plain;
  });
  const views = panels.map((panel, i) => panelView(panel, axis, i === panels.length - 1));
  return vegaLiteFigure({
    title: options.title,
    description: controlChartText(series, panels, changes, bands),
    specification: { vconcat: [controlChartKey(panels), ...views], spacing: 14 },
  });
}

function bandsOf(where: string, flagged: readonly ChartEvent[], axis: TimeAxis): PanelBand[] {
  const [first, last] = axis.domain;
  return flagged.flatMap(({ time, until, label }) => {
    const from = Math.max(first, chartTime(where, "flagged.time", time));
    const to = Math.min(
      last,
      chartTime(where, "flagged.until", until ?? `${time.slice(0, 10)}T23:59`),
    );
    return to > from ? [{ from, to, label }] : [];
  });
}
