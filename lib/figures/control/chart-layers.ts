import type { JsonObject } from "../parts/figure.ts";
import { textWidth } from "../parts/label-lanes.ts";
import { figureWidth, lineStyles, palette } from "../parts/theme.ts";
import type { PanelBand, PanelCurve, PanelLine } from "./chart-panel.ts";

const NO_DATA = { values: [{}] };

export function bandLayers(bands: readonly PanelBand[], height: number): JsonObject[] {
  if (bands.length === 0) return [];
  const values = bands.map(({ from, to }) => ({ t: from, to }));
  const mark = { type: "rect", color: palette.band };
  const labels = bands.filter(({ label }) => label !== undefined);
  const text = { type: "text", align: "left", baseline: "bottom", dx: 4, fontSize: 10.5 };
  return [
    { data: { values }, mark, encoding: { x2: { field: "to" } } },
    ...labels.map(({ from, label }) => ({
      data: { values: [{ t: from }] },
      mark: { ...text, text: label, color: palette.quiet },
      encoding: { y: { value: height - 3 } },
    })),
  ];
}

export function ruleLayers(rules: readonly number[]): JsonObject[] {
  if (rules.length === 0) return [];
  const mark = { type: "rule", ...batchRule };
  return [{ data: { values: rules.map((t) => ({ t })) }, mark }];
}

/** The rule of a batch change. */
export const batchRule = { color: palette.ink, strokeWidth: 1.2, strokeDash: [3, 2] };

export function lineLayers(lines: readonly PanelLine[]): JsonObject[] {
  return lines.map(({ value, style }) => {
    const { colour, dash, width } = lineStyles[style];
    const mark = { type: "rule", color: colour, strokeDash: dash, strokeWidth: width };
    const encoding = { x: { value: 0 }, x2: { value: figureWidth.plot }, y: { field: "v" } };
    return { data: { values: [{ v: value }] }, mark, encoding };
  });
}

export function curveLayers(curves: readonly PanelCurve[]): JsonObject[] {
  return curves.map(({ values, style }) => {
    const { colour, dash, width } = lineStyles[style];
    const mark = { type: "line", color: colour, strokeDash: dash, strokeWidth: width, clip: true };
    const step = style === "statistical" ? { interpolate: "step" } : {};
    return { data: { values }, mark: { ...mark, ...step }, encoding: { y: { field: "v" } } };
  });
}

/** The heading above a panel, on white so that a rule passing behind it does not strike it out. */
export function headingLayers(text: string): JsonObject[] {
  const y = -10;
  const box = {
    x: { value: 0 },
    x2: { value: textWidth(text, 12) * 1.08 + 4 },
    y: { value: y - 8 },
    y2: { value: y + 8 },
  };
  const mark = { type: "text", text, align: "left", baseline: "middle", fontSize: 12 };
  return [
    { data: NO_DATA, mark: { type: "rect", color: "white" }, encoding: box },
    {
      data: NO_DATA,
      mark: { ...mark, fontWeight: 600 },
      encoding: { x: { value: 0 }, y: { value: y } },
    },
  ];
}
