import { type TimeAxis, timeChannel } from "../parts/chart-time.ts";
import type { JsonObject } from "../parts/figure.ts";
import { type FigureChannel, figureWidth, type lineStyles } from "../parts/theme.ts";
import { edgeLabels } from "./chart-edge.ts";
import { type EventLabel, eventLayers } from "./chart-events.ts";
import { bandLayers, curveLayers, headingLayers, lineLayers, ruleLayers } from "./chart-layers.ts";
import { emphasisLayers, offScaleLayers, pointLabels, seriesLayers } from "./chart-points.ts";

/** A line across a panel, named at its right end. */
export interface PanelLine {
  readonly value: number;
  readonly label: string;
  readonly style: keyof typeof lineStyles;
}

/** What makes a reading stand out. */
export type Emphasis = "action" | "control" | "pattern" | "signal";

/** One reading in a panel. */
export interface PanelPoint {
  readonly t: number;
  readonly v: number;
  readonly channel: FigureChannel;
  readonly emphasis?: Emphasis | undefined;
  readonly repeat?: boolean | undefined;
  /** Printed beside the point, where there is room. */
  readonly label?: string | undefined;
  /** What a pointer held over the point says. */
  readonly text: string;
}

/** A limit that changes from reading to reading, or a second line. */
export interface PanelCurve {
  readonly values: readonly { readonly t: number; readonly v: number }[];
  readonly style: keyof typeof lineStyles;
}

/** A stretch of time shaded over the height of the panel. */
export interface PanelBand {
  readonly from: number;
  readonly to: number;
  readonly label?: string;
}

/** Everything a panel shows. */
export interface Panel {
  readonly heading: string;
  readonly yTitle: readonly [string, string];
  readonly height: number;
  readonly domain: readonly [number, number];
  readonly lines: readonly PanelLine[];
  readonly points: readonly PanelPoint[];
  readonly curves?: readonly PanelCurve[];
  /** Readings behind a line that was computed from them. */
  readonly background?: readonly { readonly t: number; readonly v: number }[];
  /** Vertical rules at these times (batch changes). */
  readonly rules: readonly number[];
  readonly bands: readonly PanelBand[];
  /** The points stand alone, no line joins them. */
  readonly unjoined?: boolean;
  /** One series alone: its line is drawn through, not dashed. */
  readonly single?: boolean;
  /** The numbers of the scale carry no plus sign. */
  readonly unsigned?: boolean;
  /** Labels above the panel, with their rules. */
  readonly events?: readonly EventLabel[];
}

/** The Vega-Lite view of one panel; the lowest one draws the labels of the time axis. */
export function panelView(panel: Panel, axis: TimeAxis, lowest: boolean): JsonObject {
  const y = {
    type: "quantitative",
    title: panel.yTitle,
    scale: { domain: panel.domain, nice: false, zero: false },
    axis: {
      tickCount: 5,
      minExtent: 40,
      maxExtent: 40,
      labelExpr: numberText(panel.unsigned === true),
    },
  };
  const layer = [
    ...bandLayers(panel.bands, panel.height),
    ...lineLayers(panel.lines),
    ...curveLayers(panel.curves ?? []),
    ...ruleLayers(panel.rules),
    ...seriesLayers(panel),
    ...emphasisLayers(panel),
    ...offScaleLayers(panel),
    ...pointLabels(panel, axis),
    ...edgeLabels(panel),
    ...eventLayers(panel.events ?? [], axis),
    ...headingLayers(panel.heading),
  ];
  return {
    width: figureWidth.plot,
    height: panel.height,
    encoding: { x: timeChannel(axis, lowest) },
    layer: layer.map((each) => withY(each, y)),
  };
}

function numberText(unsigned: boolean): string {
  return `abs(datum.value) < 1e-9 ? '0' : format(datum.value, '${unsigned ? "" : "+"}.2f')`;
}

function withY(layer: JsonObject, y: JsonObject): JsonObject {
  const encoding = layer.encoding as JsonObject | undefined;
  const own = encoding?.y as JsonObject | undefined;
  if (own === undefined || "value" in own) return layer;
  return { ...layer, encoding: { ...encoding, y: { ...y, ...own } } };
}
