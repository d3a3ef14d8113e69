import type { ParameterSeries, ProcessLimit } from "../../control/index.ts";
import { InputError } from "../../input/index.ts";
import { chartTime, densityDigits, minuteText, signed } from "../parts/chart-time.ts";
import type { Emphasis, Panel, PanelLine, PanelPoint } from "./chart-panel.ts";

const NO_LIMIT: Pick<ProcessLimit, "lower" | "upper"> = { lower: null, upper: null };
/** Far finer than a density reading, coarser than the rounding of a difference of two. */
const ON_THE_LIMIT = 1e-9;

/** The panel of one parameter, from its series in up to three colours. */
export function controlChartPanel(
  group: readonly ParameterSeries[],
  repeats: ReadonlySet<string>,
): Panel {
  const first = group[0];
  const points = group.flatMap((series) => pointsOf(series, repeats));
  const oneSided = group.every(({ colour }) => colour === null) && points.every(({ v }) => v >= 0);
  return {
    heading: first?.name ?? "",
    yTitle: oneSided ? ["Spread", "(density)"] : ["Deviation", "(density)"],
    height: 108,
    domain: first === undefined ? [-1, 1] : domainOf(points, first, oneSided),
    lines: first === undefined ? [] : processLines(first, !oneSided),
    points,
    rules: [],
    bands: [],
    unsigned: oneSided,
  };
}

/** Readings of a series as points, with what is beyond the process's limits emphasised. */
export function pointsOf(series: ParameterSeries, repeats: ReadonlySet<string>): PanelPoint[] {
  const channel = series.colour ?? "neutral";
  const named = series.colour === null ? series.name : `${series.name} ${series.colour}`;
  const digits = densityDigits(series.deviations);
  return series.takenAt.map((time, i) => {
    const v = series.deviations[i];
    if (v === undefined || !Number.isFinite(v)) {
      const advice = "write one finite density difference for each time";
      throw new InputError("controlChartFigure", "deviations", v, advice);
    }
    const t = chartTime("controlChartFigure", "takenAt", time);
    const emphasis = beyondProcess(series, v);
    const repeat = repeats.has(time);
    const beyond = emphasis === undefined ? "" : `, beyond the ${emphasis} limit`;
    const text = `${minuteText(t)}: ${named} ${signed(v, digits)}${beyond}${repeat ? ", repeat" : ""}`;
    return { t, v, channel, emphasis, repeat, text };
  });
}

/** Whether a deviation is strictly beyond a process limit, and which. */
export function beyondProcess({ limits }: ParameterSeries, v: number): Emphasis | undefined {
  for (const kind of ["control", "action"] as const) {
    const { lower, upper } = limits[kind] ?? NO_LIMIT;
    if (upper !== null && v > upper + ON_THE_LIMIT) return kind;
    if (lower !== null && v < lower - ON_THE_LIMIT) return kind;
  }
  return undefined;
}

/** The process's limits as lines; with the aim if deviations are drawn. */
export function processLines({ limits }: ParameterSeries, aim: boolean): PanelLine[] {
  const lines: PanelLine[] = aim ? [{ value: 0, label: "aim", style: "aim" }] : [];
  for (const style of ["action", "control"] as const) {
    const { lower, upper } = limits[style] ?? NO_LIMIT;
    for (const value of [upper, lower]) {
      if (value !== null && (aim || value > 0)) {
        lines.push({ value, label: `${style} ${signed(value)}`, style });
      }
    }
  }
  return lines;
}

/** Room for the limits and the readings; a reading far beyond is drawn at the edge instead. */
function domainOf(
  points: readonly PanelPoint[],
  series: ParameterSeries,
  oneSided: boolean,
): [number, number] {
  const lines = processLines(series, true).map(({ value }) => value);
  let low = 0;
  let high = 0;
  for (const { v } of points) {
    low = Math.min(low, v);
    high = Math.max(high, v);
  }
  const up = side(Math.max(...lines), high);
  return oneSided ? [0, up] : [-side(-Math.min(...lines), -low), up];
}

function side(limit: number, reading: number): number {
  if (limit <= 0) return Math.max(0.01, reading * 1.15);
  return Math.min(limit * 2, Math.max(limit * 1.2, reading * 1.15));
}
