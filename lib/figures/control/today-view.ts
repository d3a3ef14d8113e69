import { signed } from "../parts/chart-time.ts";
import type { JsonObject } from "../parts/figure.ts";
import { figureWidth, lineStyles, palette } from "../parts/theme.ts";
import { emphasised } from "./chart-points.ts";
import { beyondProcess } from "./control-chart-panel.ts";
import type { TodayRow } from "./today-figure.ts";

const ROW = 18;
const HEADING = 20;
const GAP = 6;
const LEFT = -86;
const FURTHEST = 2.4;
const NO_DATA = { values: [{}] };

/** The size that counts as 1 on the common scale, on the side of a deviation. */
function unitOf({ series: { limits } }: TodayRow, v: number): number | undefined {
  const { action, control } = limits;
  const on = (limit: typeof action) => {
    const [own, other] = v < 0 ? [limit?.lower, limit?.upper] : [limit?.upper, limit?.lower];
    return own ?? other ?? undefined;
  };
  const size = on(action) ?? on(control);
  return size === undefined || size === 0 ? undefined : Math.abs(size);
}

/** The dot rows, grouped by parameter, on the scale of the action limit. */
export function todayView(
  rows: readonly TodayRow[],
  digits: number,
  compared: boolean,
): JsonObject {
  const groups = [...new Set(rows.map(({ series }) => series.parameter))];
  const behind: JsonObject[] = [];
  const above: JsonObject[] = [];
  let y = 0;
  for (const group of groups) {
    const own = rows.filter(({ series }) => series.parameter === group);
    behind.push(
      label(own[0]?.series.name ?? group, LEFT, y + HEADING / 2, "left", palette.ink, 600),
    );
    y += HEADING;
    behind.push(...limitLines(own, y, y + own.length * ROW));
    for (const row of own) {
      const middle = y + ROW / 2;
      const channel = row.series.colour ?? "neutral";
      const name = row.series.colour ?? "all colours";
      behind.push(guide(middle));
      above.push(label(name, -10, middle, "right", palette.channels[channel].colour));
      above.push(...dotLayers(row, middle), ...numbers(row, middle, digits, compared));
      y += ROW;
    }
    y += GAP;
  }
  const x = {
    field: "s",
    type: "quantitative",
    scale: { domain: [-FURTHEST, FURTHEST], nice: false },
    axis: {
      title: "Deviation from aim as a share of the process action limit (no unit)",
      values: [-2, -1, 0, 1, 2],
      labelExpr: "datum.value === 0 ? 'aim' : format(datum.value, '+.0f')",
      grid: false,
    },
  };
  const layer = [...headings(compared), ...behind, ...above];
  return { width: figureWidth.plot, height: y, view: { stroke: null }, encoding: { x }, layer };
}

/** Aim, action and control limits over the rows of one parameter. */
function limitLines(rows: readonly TodayRow[], top: number, bottom: number): JsonObject[] {
  const row = rows[0];
  if (row === undefined) return [];
  const encoding = { y: { value: top }, y2: { value: bottom } };
  const across = (style: "aim" | "action" | "control", places: readonly number[]) => {
    if (places.length === 0) return [];
    const { colour, dash, width } = lineStyles[style];
    const mark = { type: "rule", color: colour, strokeDash: dash, strokeWidth: width };
    return [{ data: { values: places.map((s) => ({ s })) }, mark, encoding }];
  };
  const places = (kind: "action" | "control") => {
    const limit = row.series.limits[kind];
    return [limit?.lower, limit?.upper].flatMap((v) => {
      const unit = typeof v === "number" ? unitOf(row, v) : undefined;
      return unit === undefined || !v ? [] : [v / unit];
    });
  };
  return [
    ...across("aim", [0]),
    ...across("action", places("action")),
    ...across("control", places("control")),
  ];
}

function guide(y: number): JsonObject {
  const encoding = { x: { value: 0 }, x2: { value: figureWidth.plot }, y: { value: y } };
  return { data: NO_DATA, mark: { type: "rule", color: palette.grid, strokeWidth: 1 }, encoding };
}

function dotLayers(row: TodayRow, y: number): JsonObject[] {
  const { colour, shape } = palette.channels[row.series.colour ?? "neutral"];
  const [now, before] = [row.now, row.before].map((v) => {
    const unit = v === undefined ? undefined : unitOf(row, v);
    if (v === undefined || unit === undefined) return undefined;
    return Math.max(-FURTHEST, Math.min(FURTHEST, v / unit));
  });
  const layers: JsonObject[] = [];
  if (before !== undefined && now !== undefined) {
    const mark = { type: "rule", color: colour, strokeWidth: 1.4 };
    const encoding = { x2: { field: "to" }, y: { value: y } };
    layers.push({ data: { values: [{ s: before, to: now }] }, mark, encoding });
  }
  if (before !== undefined) {
    const mark = { type: "point", shape, filled: true, fill: "white", stroke: colour, size: 42 };
    layers.push({ data: { values: [{ s: before }] }, mark, encoding: { y: { value: y } } });
  }
  if (now !== undefined && row.now !== undefined) {
    const out = beyondProcess(row.series, row.now) !== undefined;
    const drawn = out ? emphasised("control", colour) : { filled: true, color: colour, size: 60 };
    const mark = { type: "point", shape, ...drawn };
    layers.push({ data: { values: [{ s: now }] }, mark, encoding: { y: { value: y } } });
  }
  return layers;
}

function numbers(row: TodayRow, y: number, digits: number, compared: boolean): JsonObject[] {
  const text = (v: number | undefined) => (v === undefined ? "–" : signed(v, digits));
  const limit = row.now === undefined ? undefined : beyondProcess(row.series, row.now);
  const weight = limit === undefined ? 400 : 700;
  const right = figureWidth.plot;
  const before = compared ? [label(text(row.before), right + 46, y, "right", palette.quiet)] : [];
  return [
    ...before,
    label(text(row.now), right + (compared ? 90 : 46), y, "right", palette.ink, weight),
  ];
}

function headings(compared: boolean): JsonObject[] {
  const right = figureWidth.plot;
  const before = compared ? [label("before", right + 46, -9, "right", palette.quiet)] : [];
  return [...before, label("now", right + (compared ? 90 : 46), -9, "right", palette.ink, 600)];
}

function label(
  text: string,
  x: number,
  y: number,
  align: "left" | "right",
  color: string,
  fontWeight = 400,
): JsonObject {
  const mark = { type: "text", text, align, baseline: "middle", color, fontWeight };
  return { data: NO_DATA, mark, encoding: { x: { value: x }, y: { value: y } } };
}
