import type { JsonObject } from "./figure.ts";

const FONT = "sans-serif";

/**
 * Colours, dashes and shapes shared by all figures. The three channels of a strip differ in
 * lightness, dash and shape as well as in hue, so that a print in black and white and a reader
 * with a colour-vision deficiency can still tell them apart.
 */
export const palette = {
  ink: "#222222",
  quiet: "#6b6b6b",
  grid: "#e6e6e6",
  band: "#dfe3e8",
  /** Process limits. */
  action: "#8a6100",
  control: "#7a1f1f",
  /** Statistical limits. */
  statistical: "#5b3f8c",
  channels: {
    red: { colour: "#c8321e", dash: [], shape: "circle", letter: "R" },
    green: { colour: "#1f9a5b", dash: [7, 3], shape: "triangle-up", letter: "G" },
    blue: { colour: "#1f4a9c", dash: [2, 2], shape: "square", letter: "B" },
    neutral: { colour: "#333333", dash: [], shape: "circle", letter: "" },
  },
  /** For series that are not channels, dark to light, safe for colour-blind readers. */
  series: ["#1f4a9c", "#d1770a", "#0f8a6d", "#8c3b73", "#4d4d4d", "#7fa7d8"],
} as const;

/** How a line across a chart is drawn; process and statistical limits never look alike. */
export const lineStyles = {
  aim: { colour: palette.ink, dash: [], width: 1 },
  action: { colour: palette.action, dash: [8, 4], width: 1.4 },
  control: { colour: palette.control, dash: [], width: 2 },
  centre: { colour: palette.statistical, dash: [], width: 1 },
  statistical: { colour: palette.statistical, dash: [1.5, 3], width: 2 },
  /** A name at the edge for a curve that is drawn by itself. */
  named: { colour: palette.statistical, dash: [], width: 0 },
  upperSum: { colour: palette.series[0], dash: [], width: 1.8 },
  lowerSum: { colour: palette.series[1], dash: [6, 3], width: 1.8 },
} as const;

/** Channel of a strip reading, or `neutral` for a parameter that has only one value. */
export type FigureChannel = keyof typeof palette.channels;

/** Widths in pixels that fit a notebook, a page and a sheet of A4. */
export const figureWidth = { plot: 500, total: 700 } as const;

/** Vega-Lite config of all figures. */
export const vegaLiteTheme: JsonObject = {
  font: FONT,
  view: { stroke: "#bbbbbb", strokeWidth: 1 },
  title: {
    font: FONT,
    fontSize: 15,
    fontWeight: 600,
    color: palette.ink,
    anchor: "start",
    frame: "group",
    offset: 12,
    subtitleColor: palette.quiet,
    subtitleFontSize: 12,
    subtitlePadding: 4,
  },
  axis: {
    labelFontSize: 11,
    titleFontSize: 12,
    titleFontWeight: "normal",
    labelColor: palette.ink,
    titleColor: palette.ink,
    gridColor: palette.grid,
    domainColor: "#888888",
    tickColor: "#888888",
    labelOverlap: true,
    titlePadding: 8,
  },
  legend: {
    labelFontSize: 12,
    titleFontSize: 12,
    titleFontWeight: "normal",
    labelColor: palette.ink,
    titleColor: palette.ink,
    orient: "bottom",
    symbolStrokeWidth: 2,
    symbolSize: 70,
  },
  header: { labelFontSize: 12, titleFontSize: 12, titleFontWeight: "normal" },
  line: { strokeWidth: 1.8, color: palette.series[0] },
  point: { filled: true, size: 45, opacity: 1, color: palette.series[0] },
  rule: { color: palette.quiet },
  text: { font: FONT, fontSize: 11, color: palette.ink },
  bar: { color: palette.series[0] },
  range: { category: palette.series },
};

/** A Plotly layout with the shared fonts, colours, white background and margins. */
export function withPlotlyTheme(title: string, layout: JsonObject): JsonObject {
  return {
    title: { text: title, x: 0, xref: "paper", font: { size: 15 } },
    font: { family: FONT, size: 12, color: palette.ink },
    paper_bgcolor: "white",
    plot_bgcolor: "white",
    colorway: palette.series,
    hovermode: "closest",
    margin: { l: 64, r: 24, t: 56, b: 56 },
    height: 420,
    autosize: true,
    ...layout,
  };
}
