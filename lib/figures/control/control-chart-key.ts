import { type KeyItem, keyView } from "../parts/chart-key.ts";
import type { JsonObject } from "../parts/figure.ts";
import { figureWidth, lineStyles, palette } from "../parts/theme.ts";
import { batchRule } from "./chart-layers.ts";
import type { Panel, PanelPoint } from "./chart-panel.ts";
import { emphasised, repeatMark } from "./chart-points.ts";
import { manyReadings } from "./chart-summary.ts";

const GREY = "#555555";
const channels = ["red", "green", "blue"] as const;

/** The key of a control chart: only what occurs in it. */
export function controlChartKey(panels: readonly Panel[]): JsonObject {
  const points = panels.flatMap((panel) => panel.points);
  const has = (test: (point: PanelPoint) => boolean) => points.some(test);
  const used = (style: keyof typeof lineStyles) =>
    panels.some(({ lines }) => lines.some((line) => line.style === style));
  const lines: KeyItem[] = channels
    .filter((channel) => has((point) => point.channel === channel))
    .map((channel) => {
      const { colour, dash, shape } = palette.channels[channel];
      const marker = { shape, color: colour, filled: true, size: 34 };
      return { label: channel, line: { colour, dash, width: 1.8 }, marker };
    });
  for (const style of ["action", "control"] as const) {
    if (used(style)) lines.push({ label: `process ${style} limit`, line: lineStyles[style] });
  }
  const marks: KeyItem[] = [];
  for (const kind of ["action", "control"] as const) {
    if (!has((point) => point.emphasis === kind)) continue;
    const marker = { shape: "circle", ...emphasised(kind, GREY) };
    marks.push({ label: `beyond the ${kind} limit`, marker });
  }
  if (has((point) => point.repeat === true))
    marks.push({ label: "repeat strip", marker: repeatMark });
  if (
    panels.some(({ points: own, domain }) => own.some(({ v }) => v < domain[0] || v > domain[1]))
  ) {
    const drawn = { filled: true, size: 55, color: GREY, stroke: palette.ink, strokeWidth: 1 };
    marks.push({ label: "off the scale", marker: { shape: "triangle-up", ...drawn } });
  }
  if (panels.some(({ rules }) => rules.length > 0)) {
    const line = { colour: batchRule.color, dash: batchRule.strokeDash, width: 1.2 };
    marks.push({ label: "new batch of strips", line, upright: true });
  }
  if (panels.some(({ bands }) => bands.length > 0)) {
    marks.push({ label: "marked day, named above", band: palette.band });
  }
  const perColour = channels.map((c) => points.filter((point) => point.channel === c).length);
  if (manyReadings(Math.max(...perColour) / panels.length)) {
    const line = { colour: GREY, dash: [], width: 1.6 };
    marks.push({ label: "line: running mean, pale: lowest to highest", band: "#dddddd", line });
  }
  const rows = [...lines, ...marks.map((item, i) => (i === 0 ? { ...item, newRow: true } : item))];
  return keyView(rows, figureWidth.plot + 110);
}
