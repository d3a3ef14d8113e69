import type { TimeAxis } from "../parts/chart-time.ts";
import type { JsonObject } from "../parts/figure.ts";
import { lanes, textWidth } from "../parts/label-lanes.ts";
import { figureWidth, palette } from "../parts/theme.ts";
import { batchRule } from "./chart-layers.ts";

/** Something that happened on the line, drawn over all panels and named above them. */
export interface ChartEvent {
  /** Local date and time as the lab writes it, `"2026-03-02T08:05"`. */
  readonly time: string;
  /** End, for something that lasted; a grey band is drawn from `time` to it. */
  readonly until?: string;
  readonly label: string;
}

/** An event's label at its place on the time axis. */
export interface EventLabel {
  readonly t: number;
  readonly label: string;
  /** Whether a rule comes down from the label (a band shows its own place). */
  readonly ruled: boolean;
}

const LANE = 15;
const ABOVE = 30;

/** The labels above the first panel; labels that would touch stand in lanes. */
export function eventLayers(events: readonly EventLabel[], axis: TimeAxis): JsonObject[] {
  const width = figureWidth.plot;
  const [first, last] = axis.domain;
  const placed = events.map(({ t, label, ruled }) => {
    const at = Math.max(0, ((t - first) / (last - first)) * width);
    const size = textWidth(label) + 10;
    const flips = at + size > width + 100;
    return flips
      ? { at, label, ruled, from: at - size, to: at, align: "right", x: at - 5 }
      : { at, label, ruled, from: at, to: at + size, align: "left", x: at + (ruled ? 5 : 0) };
  });
  const lane = lanes(placed);
  const data = { values: [{}] };
  return placed.flatMap(({ at, label, ruled, align, x }, i) => {
    const y = -ABOVE - (lane[i] ?? 0) * LANE;
    const text = { type: "text", text: label, align, baseline: "middle", fontSize: 11 };
    const from = { x: { value: at }, y: { value: y - 6 }, y2: { value: 0 } };
    const rule = { data, mark: { type: "rule", ...batchRule }, encoding: from };
    const tick = { ...rule, mark: { type: "rule", color: palette.quiet, strokeWidth: 1 } };
    const under = { ...from, y: { value: y + 7 } };
    return [
      ruled ? rule : { ...tick, encoding: under },
      { data, mark: text, encoding: { x: { value: x }, y: { value: y } } },
    ];
  });
}
