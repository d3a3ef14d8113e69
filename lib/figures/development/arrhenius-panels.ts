import type { TimeTemperatureFit } from "../../development/index.ts";
import type { JsonObject } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";

/** A fitted table with the name it bears in the key. */
export interface NamedFit {
  readonly name: string;
  readonly fit: TimeTemperatureFit;
}

/** One shape for each table. */
export const SHAPES = [
  "circle",
  "square",
  "triangle-up",
  "diamond",
  "cross",
  "triangle-down",
] as const;
const KELVIN = 273.15;

/** 1000/T, T in kelvin. */
export function inverse(temperatureC: number): number {
  return 1000 / (temperatureC + KELVIN);
}

/** Colour of a table by its place. */
export function colourOf(i: number): string {
  return palette.series[i] ?? palette.ink;
}

/** Whole degrees for the upper axis, not more than about ten. */
export function degrees([warm, cold]: readonly [number, number]): readonly number[] {
  const coldest = 1000 / cold - KELVIN;
  const warmest = 1000 / warm - KELVIN;
  const step = [1, 2, 5, 10].find((each) => (warmest - coldest) / each <= 10) ?? 20;
  const first = Math.ceil(coldest / step);
  const last = Math.floor(warmest / step);
  return Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step);
}

/** Times on a logarithmic axis against 1/T. */
export function timePanel(
  fits: readonly NamedFit[],
  domain: readonly [number, number],
  ticksC: readonly number[],
): JsonObject {
  const times = fits.flatMap(({ fit }) => fit.rows.map((row) => row.timeMin));
  const low = Math.min(...times) * 0.9;
  const high = Math.max(...times) * 1.1;
  const y = {
    field: "y",
    type: "quantitative",
    title: "Time (min), log scale",
    scale: { type: "log", domain: [low, high], nice: false },
    axis: { values: minuteTicks(low, high), format: "~g" },
  };
  const upper = {
    field: "x",
    type: "quantitative",
    scale: { domain, nice: false },
    axis: {
      orient: "top",
      values: ticksC.map(inverse),
      labelExpr: `format(1000 / datum.value - ${KELVIN}, '.0f')`,
      title: "Temperature (°C)",
      labelOverlap: false,
    },
  };
  const layers = fits.flatMap(({ fit }, i) => {
    const half = fit.rounding.stepMin / 2;
    const points = fit.rows.map((row) => ({
      x: inverse(row.temperatureC),
      y: row.timeMin,
      low: row.timeMin - half,
      high: row.timeMin + half,
    }));
    const line = fit.rows.map((row) => ({ x: inverse(row.temperatureC), y: row.fittedMin }));
    return seriesLayers(i, points, line, y);
  });
  return {
    width: figureWidth.plot,
    height: 230,
    encoding: { x: upper },
    layer: layers,
  };
}

/** Residuals with what rounding leaves open. */
export function residualPanel(
  fits: readonly NamedFit[],
  domain: readonly [number, number],
): JsonObject {
  const y = { field: "y", type: "quantitative", title: "Residual (%)", scale: { nice: true } };
  const layers = fits.flatMap(({ fit }, i) => {
    // Side by side, so that whiskers of tables with the same temperatures do not hide each other.
    const shift = (i - (fits.length - 1) / 2) * 0.012 * (domain[1] - domain[0]);
    const points = fit.rows.map((row) => {
      const half = (50 * fit.rounding.stepMin) / row.timeMin;
      return {
        x: inverse(row.temperatureC) + shift,
        y: row.residualPercent,
        low: row.residualPercent - half,
        high: row.residualPercent + half,
      };
    });
    return seriesLayers(i, points, [], y);
  });
  const zero = {
    data: { values: [{ y: 0 }] },
    mark: { type: "rule", color: palette.ink, strokeWidth: 1 },
    encoding: { y, x: { value: 0 }, x2: { value: figureWidth.plot } },
  };
  const x = {
    field: "x",
    type: "quantitative",
    title: "1000 / temperature (1/K)",
    scale: { domain, nice: false },
    axis: { format: ".3f", tickCount: 6 },
  };
  return { width: figureWidth.plot, height: 120, encoding: { x }, layer: [zero, ...layers] };
}

function seriesLayers(
  i: number,
  points: readonly JsonObject[],
  line: readonly JsonObject[],
  y: JsonObject,
): JsonObject[] {
  const color = colourOf(i);
  const whisker = { type: "rule", color, strokeWidth: 1, opacity: 0.7 };
  return [
    ...(line.length === 0
      ? []
      : [
          {
            data: { values: line },
            mark: { type: "line", color, strokeWidth: 1.6 },
            encoding: { y },
          },
        ]),
    {
      data: { values: points },
      mark: whisker,
      encoding: { y: { ...y, field: "low" }, y2: { field: "high" } },
    },
    {
      data: { values: points },
      mark: { type: "point", shape: SHAPES[i], color, filled: true, size: 42 },
      encoding: { y },
    },
  ];
}

function minuteTicks(low: number, high: number): readonly number[] {
  const step = [0.5, 1, 2, 5, 10].find((each) => (high - low) / each <= 8) ?? 20;
  const first = Math.ceil(low / step);
  return Array.from({ length: Math.floor(high / step) - first + 1 }, (_, i) => (first + i) * step);
}
