import type { JsonObject } from "./figure.ts";
import { textWidth } from "./label-lanes.ts";
import { palette } from "./theme.ts";

/** One entry of a drawn key: a sample and what it means. */
export interface KeyItem {
  readonly label: string;
  /** A line sample. */
  readonly line?: {
    readonly colour: string;
    readonly dash: readonly number[];
    readonly width: number;
  };
  /** A marker sample, as Vega-Lite mark properties. */
  readonly marker?: JsonObject;
  /** A band sample. */
  readonly band?: string;
  /** The line sample stands upright. */
  readonly upright?: boolean;
  /** Begins a new row. */
  readonly newRow?: boolean;
}

const SAMPLE = 26;
const ROW = 19;

/** A key laid out by hand in rows, so that it prints the same everywhere. */
export function keyView(items: readonly KeyItem[], width: number): JsonObject {
  let x = 0;
  let row = 0;
  const layer: JsonObject[] = [];
  for (const item of items) {
    const size = SAMPLE + 5 + textWidth(item.label) + 18;
    if (x > 0 && (item.newRow || x + size - 18 > width)) {
      x = 0;
      row += 1;
    }
    layer.push(...sample(item, x, row * ROW + ROW / 2));
    x += size;
  }
  const height = (row + 1) * ROW;
  return { width, height, view: { stroke: null }, layer };
}

function sample(item: KeyItem, x: number, y: number): JsonObject[] {
  const data = { values: [{}] };
  const layers: JsonObject[] = [];
  const middle = x + SAMPLE / 2;
  if (item.band !== undefined) {
    const encoding = {
      x: { value: x },
      x2: { value: x + SAMPLE },
      y: { value: y - 6 },
      y2: { value: y + 6 },
    };
    layers.push({ data, mark: { type: "rect", color: item.band }, encoding });
  }
  if (item.line !== undefined) {
    const { colour, dash, width } = item.line;
    const mark = { type: "rule", color: colour, strokeDash: dash, strokeWidth: width };
    const encoding = item.upright
      ? { x: { value: middle }, y: { value: y - 8 }, y2: { value: y + 8 } }
      : { x: { value: x }, x2: { value: x + SAMPLE }, y: { value: y } };
    layers.push({ data, mark, encoding });
  }
  if (item.marker !== undefined) {
    layers.push({
      data,
      mark: { type: "point", ...item.marker },
      encoding: { x: { value: middle }, y: { value: y } },
    });
  }
  const text = {
    type: "text",
    text: item.label,
    align: "left",
    baseline: "middle",
    color: palette.ink,
  };
  layers.push({ data, mark: text, encoding: { x: { value: x + SAMPLE + 5 }, y: { value: y } } });
  return layers;
}
