import type { IndividualsChart, ParameterSeries } from "../../control/index.ts";
import { InputError } from "../../input/index.ts";
import type { KeyItem } from "../parts/chart-key.ts";
import { chartTime, type TimeAxis, timeAxis } from "../parts/chart-time.ts";
import { type FigureChannel, lineStyles, palette } from "../parts/theme.ts";
import { batchRule } from "./chart-layers.ts";
import type { Panel, PanelBand } from "./chart-panel.ts";
import { emphasised } from "./chart-points.ts";
import { batchChangesOf } from "./series-parts.ts";

/** A series on its time axis, for a chart with statistical limits. */
export interface ChartFrame {
  readonly name: string;
  readonly channel: FigureChannel;
  readonly times: readonly number[];
  readonly axis: TimeAxis;
  readonly rules: readonly number[];
  readonly events: Panel["events"];
}

/** Checks that chart and series have the same readings, and lays out the time axis. */
export function chartFrame(where: string, series: ParameterSeries, readings: number): ChartFrame {
  if (series.takenAt.length !== readings || readings === 0) {
    const advice = `write the chart computed from this series (${series.takenAt.length} readings, at least 1)`;
    throw new InputError(where, "chart", `${readings} readings`, advice);
  }
  const times = series.takenAt.map((time) => chartTime(where, "takenAt", time));
  const changes = batchChangesOf([series]);
  return {
    name: series.colour === null ? series.name : `${series.name} ${series.colour}`,
    channel: series.colour ?? "neutral",
    times,
    axis: timeAxis(times, "Strip processed"),
    rules: changes.map(({ t }) => t),
    events: changes.map((change) => ({ ...change, ruled: true })),
  };
}

/** The stretch of the base period, from which the statistical limits were computed. */
export function basePeriodBand(
  { times }: ChartFrame,
  limits: IndividualsChart["limits"],
): PanelBand[] {
  const from = times[limits.baseFirst];
  const to = times[limits.baseLast];
  if (from === undefined || to === undefined) return [];
  return [{ from, to, label: `base period, ${limits.baseReadings} readings` }];
}

/** A scale that holds every value, with a little room. */
export function domainAround(values: readonly number[]): [number, number] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const v of values) {
    low = Math.min(low, v);
    high = Math.max(high, v);
  }
  const room = Math.max((high - low) * 0.12, 0.004);
  return [low - room, high + room];
}

/** Entries of the key that all charts with statistical limits share. */
export const statisticalKey = {
  limit: (words: string): KeyItem => ({
    label: `statistical limit (${words})`,
    line: lineStyles.statistical,
  }),
  centre: (words: string): KeyItem => ({ label: words, line: lineStyles.centre }),
  readings: (channel: FigureChannel): KeyItem => {
    const { colour, shape } = palette.channels[channel];
    const marker = { shape, color: colour, filled: true, size: 34 };
    return { label: "reading", line: { colour, dash: [], width: 1.8 }, marker };
  },
  signal: { label: "signal", marker: { shape: "circle", ...emphasised("signal", "#555555") } },
  pattern: { label: "run rule", marker: { shape: "circle", ...emphasised("pattern", "#555555") } },
  batch: {
    label: "new batch of strips",
    line: { colour: batchRule.color, dash: batchRule.strokeDash, width: 1.2 },
    upright: true,
  },
} as const;
