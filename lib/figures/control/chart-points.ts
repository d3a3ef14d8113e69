import type { TimeAxis } from "../parts/chart-time.ts";
import type { JsonObject } from "../parts/figure.ts";
import { textWidth } from "../parts/label-lanes.ts";
import { type FigureChannel, figureWidth, palette } from "../parts/theme.ts";
import type { Emphasis, Panel, PanelPoint } from "./chart-panel.ts";
import { manyReadings, summary } from "./chart-summary.ts";

/** Most markers on one line; beyond them every second, third … reading is marked. */
const MOST_MARKERS = 36;
const channels = Object.keys(palette.channels) as FigureChannel[];

const pointEncoding = { y: { field: "v" }, tooltip: { field: "text", type: "nominal" } };

/** Lines and markers of each colour; of very many readings, their running median and range. */
export function seriesLayers(panel: Panel): JsonObject[] {
  const behind = { type: "point", filled: true, size: 12, color: "#9a9a9a", clip: true };
  const pale = panel.background ?? [];
  const background = { data: { values: pale }, mark: behind, encoding: { y: { field: "v" } } };
  const layers = channels.flatMap((channel, order) => {
    const points = panel.points.filter((point) => point.channel === channel);
    if (points.length === 0 || panel.unjoined) return [];
    return manyReadings(points.length) ? summary(points, order) : lineOf(points, panel, order);
  });
  return pale.length > 0 ? [background, ...layers] : layers;
}

function lineOf(points: readonly PanelPoint[], panel: Panel, order: number): JsonObject[] {
  const channel = points[0]?.channel ?? "neutral";
  const { colour, dash, shape } = palette.channels[channel];
  const strokeDash = panel.single ? [] : dash;
  const width = points.length > 60 ? 1.2 : 1.8;
  const line = { type: "line", color: colour, strokeDash, strokeWidth: width, clip: true };
  const step = Math.max(1, Math.ceil(points.length / MOST_MARKERS));
  const shift = Math.round((order * step) / 3) % step;
  const [low, high] = panel.domain;
  const marked = points.filter(({ v }, i) => i % step === shift && v >= low && v <= high);
  const mark = { type: "point", shape, color: colour, filled: true, size: step === 1 ? 34 : 24 };
  const encoding = { y: { field: "v" } };
  return [
    { data: { values: points.map(({ t, v }) => ({ t, v })) }, mark: line, encoding },
    { data: { values: marked.map(bare) }, mark, encoding: pointEncoding },
  ];
}

const bare = ({ t, v, text }: PanelPoint) => ({ t, v, text });

/** Readings beyond a limit, and repeats. */
export function emphasisLayers({ points, domain: [low, high] }: Panel): JsonObject[] {
  const crowd = points.length / new Set(points.map(({ channel }) => channel)).size;
  const size = crowd > 600 ? 0.3 : crowd > MOST_MARKERS ? 0.5 : 1;
  const inside = points.filter(({ v }) => v >= low && v <= high);
  const layers: JsonObject[] = [];
  for (const kind of ["action", "pattern", "control", "signal"] as const) {
    for (const channel of channels) {
      const marked = inside.filter((p) => p.emphasis === kind && p.channel === channel);
      if (marked.length === 0) continue;
      const { colour, shape } = palette.channels[channel];
      const mark = { type: "point", shape, ...emphasised(kind, colour, size) };
      layers.push({ data: { values: marked.map(bare) }, mark, encoding: pointEncoding });
    }
  }
  const repeats = inside.filter((point) => point.repeat).map(bare);
  if (repeats.length === 0) return layers;
  return [...layers, { data: { values: repeats }, mark: repeatMark, encoding: pointEncoding }];
}

/** The sign of a repeat strip: a ring around its readings. */
export const repeatMark = {
  type: "point",
  shape: "circle",
  size: 110,
  filled: false,
  stroke: palette.ink,
  strokeWidth: 1,
} as const;

/** Beyond the action limit, or a pattern: hollow. Beyond the other limits: large and outlined. */
export function emphasised(kind: Emphasis, colour: string, size = 1): JsonObject {
  if (kind === "action" || kind === "pattern") {
    return { filled: true, fill: "white", stroke: colour, strokeWidth: 1.5, size: 50 * size };
  }
  const strokeWidth = size < 0.5 ? 0.7 : size < 1 ? 1.1 : 1.4;
  return { filled: true, fill: colour, stroke: palette.ink, strokeWidth, size: 80 * size };
}

/** A reading beyond the scale: an arrowhead at the edge. */
export function offScaleLayers({ points, domain: [low, high] }: Panel): JsonObject[] {
  return ([1, -1] as const).flatMap((side) => {
    const values = points
      .filter(({ v }) => (side === 1 ? v > high : v < low))
      .map(({ t, channel, text }) => {
        return { t, v: side === 1 ? high : low, text, colour: palette.channels[channel].colour };
      });
    if (values.length === 0) return [];
    const shape = side === 1 ? "triangle-up" : "triangle-down";
    const drawn = { filled: true, size: 55, stroke: palette.ink, strokeWidth: 1, opacity: 1 };
    const color = { field: "colour", type: "nominal", scale: null };
    const mark = { type: "point", shape, yOffset: side * 5, ...drawn };
    return [{ data: { values }, mark, encoding: { ...pointEncoding, color } }];
  });
}

/** Words beside points, left out where they would run into one another. */
export function pointLabels(panel: Panel, axis: TimeAxis): JsonObject[] {
  const { points, domain, height } = panel;
  const [first, last] = axis.domain;
  const taken: { x: number; y: number; half: number }[] = [];
  const values: JsonObject[] = [];
  for (const { t, v, label } of [...points].reverse()) {
    if (label === undefined || v < domain[0] || v > domain[1]) continue;
    const x = ((t - first) / (last - first)) * figureWidth.plot;
    const above = v >= (domain[0] + domain[1]) / 2;
    const y = (height * (domain[1] - v)) / (domain[1] - domain[0]) + (above ? -11 : 12);
    const half = textWidth(label, 10) / 2 + 2;
    const touches = taken.some((one) => {
      return Math.abs(one.x - x) < one.half + half && Math.abs(one.y - y) < 11;
    });
    if (touches || y < 4 || y > height - 3) continue;
    taken.push({ x, y, half });
    values.push({ t, v, label, above });
  }
  return [true, false].flatMap((above) => {
    const those = values.filter((each) => each.above === above);
    if (those.length === 0) return [];
    const mark = { type: "text", fontSize: 10, dy: above ? -11 : 12, color: palette.ink };
    const halo = { ...mark, color: "white", stroke: "white", strokeWidth: 3 };
    const encoding = { y: { field: "v" }, text: { field: "label", type: "nominal" } };
    return [halo, mark].map((each) => ({ data: { values: those }, mark: each, encoding }));
  });
}
