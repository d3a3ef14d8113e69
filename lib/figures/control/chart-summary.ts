import type { JsonObject } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";
import type { PanelPoint } from "./chart-panel.ts";

const MOST_DRAWN_ONE_BY_ONE = 600;
const BINS = Math.round(figureWidth.plot / 5);

/** More readings of one colour than pixels to draw them: their course is summarised. */
export function manyReadings(count: number): boolean {
  return count > MOST_DRAWN_ONE_BY_ONE;
}

/** The running mean as a line over a pale band from the lowest to the highest reading. */
export function summary(points: readonly PanelPoint[], order: number): JsonObject[] {
  const { colour, dash, shape } = palette.channels[points[0]?.channel ?? "neutral"];
  const size = Math.ceil(points.length / BINS);
  const values: { t: number; v: number; low: number; high: number }[] = [];
  for (let i = 0; i < points.length; i += size) {
    const bin = points.slice(i, i + size);
    const readings = bin.map(({ v }) => v);
    values.push({
      t: bin[Math.floor(bin.length / 2)]?.t ?? 0,
      v: readings.reduce((sum, v) => sum + v, 0) / readings.length,
      low: Math.min(...readings),
      high: Math.max(...readings),
    });
  }
  const line = { type: "line", color: colour, strokeDash: dash, strokeWidth: 1.6, clip: true };
  const marker = { type: "point", shape, color: colour, filled: true, size: 24, clip: true };
  const area = { type: "area", color: colour, opacity: 0.16, clip: true };
  return [
    { data: { values }, mark: area, encoding: { y: { field: "low" }, y2: { field: "high" } } },
    { data: { values }, mark: line, encoding: { y: { field: "v" } } },
    {
      data: { values: values.filter((_, i) => i % 6 === 2 * order) },
      mark: marker,
      encoding: { y: { field: "v" } },
    },
  ];
}
