import type { JsonObject } from "../parts/figure.ts";
import { spread } from "../parts/label-lanes.ts";
import { figureWidth, lineStyles, palette } from "../parts/theme.ts";
import type { Panel } from "./chart-panel.ts";

interface EdgeLabel {
  readonly text: string;
  readonly colour: string;
  readonly at: number;
}

/** The names at the right edge: the letter of each colour beside its last reading, the limits. */
export function edgeLabels({ lines, points, domain, height }: Panel): JsonObject[] {
  const pixel = (v: number) => (height * (domain[1] - v)) / (domain[1] - domain[0]);
  const channels = new Set(points.map(({ channel }) => channel));
  const lasts = (["red", "green", "blue"] as const).flatMap((channel): EdgeLabel[] => {
    const last = points.findLast((point) => point.channel === channel);
    if (last === undefined || channels.size < 2) return [];
    const { letter: text, colour } = palette.channels[channel];
    return [{ text, colour, at: Math.max(0, Math.min(height, pixel(last.v))) }];
  });
  const named = lines
    .filter(({ label }) => label !== "")
    .map(({ label: text, value, style }): EdgeLabel => {
      return { text, colour: lineStyles[style].colour, at: pixel(value) };
    });
  return [
    ...column(lasts, { height, size: 10, dx: 5, fontWeight: 700 }),
    ...column(named, { height, size: 12, dx: lasts.length > 0 ? 18 : 6, fontWeight: 400 }),
  ];
}

function column(
  labels: readonly EdgeLabel[],
  style: { height: number; size: number; dx: number; fontWeight: number },
): JsonObject[] {
  const { height, size, dx, fontWeight } = style;
  const sized = labels.map(({ at }) => ({ at, size }));
  const places = spread(sized, [4, height - 4]);
  const text = { type: "text", align: "left", baseline: "middle", fontSize: 10.5, fontWeight };
  return labels.map((label, i) => ({
    data: { values: [{}] },
    mark: { ...text, text: label.text, color: label.colour },
    encoding: { x: { value: figureWidth.plot + dx }, y: { value: places[i] ?? 0 } },
  }));
}
