import type { ContrastCurve, ContrastReading, ZoneDevelopments } from "../../development/index.ts";
import { requireObject } from "../../input/index.ts";
import { type JsonObject, type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";

const STEPS = 90;
const HEIGHT = 280;

/**
 * Contrast index against developing time: the curve, the readings it rests on, and where the
 * developments for longer and shorter subjects lie on it.
 *
 * @param input.curve contrast curve
 * @param input.readings readings that the curve was fitted to
 * @param input.developments result of developmentForRange, drawn as lines down to their times
 * @param input.title default "Contrast index against developing time"
 * @returns Vega-Lite figure; its text alternative gives range, ceiling and the times
 * @throws InputError through vegaLiteFigure for an empty title
 *
 * @example
 * const curve = exponentialApproach({ ceiling: 0.9, ratePerMin: 0.14, range: { minMin: 4, maxMin: 14 } })
 * contrastTimeFigure({ curve }).description.includes("from 0.39 at 4 min to 0.77 at 14 min") // => true
 */
export function contrastTimeFigure(input: {
  readonly curve: ContrastCurve;
  readonly readings?: readonly ContrastReading[];
  readonly developments?: ZoneDevelopments;
  readonly title?: string;
}): VegaLiteFigure {
  requireObject("contrastTimeFigure", "input", input, "an object with curve");
  const { curve } = input;
  const readings = input.readings ?? [];
  const marked = (input.developments?.developments ?? []).flatMap(
    ({ name, timeMin, contrastIndex }) =>
      timeMin === undefined
        ? []
        : [{ label: `${name}  ${timeMin.toFixed(1)} min`, t: timeMin, c: contrastIndex }],
  );
  const { minMin, maxMin } = curve.range;
  const end = 1.1 * Math.max(maxMin, ...readings.map((r) => r.timeMin), ...marked.map((m) => m.t));
  const values = Array.from({ length: STEPS }, (_, i) => {
    const t = (end * (i + 1)) / STEPS;
    return { t, c: curve.contrastAt(t) };
  });
  const x = {
    field: "t",
    type: "quantitative",
    title: "Developing time (min)",
    scale: { domain: [0, end], nice: false },
  };
  const most = Math.max(curve.highestContrast ?? 0, ...values.map((each) => each.c));
  const y = {
    field: "c",
    type: "quantitative",
    title: "Contrast index (no unit)",
    scale: { domain: [0, 1.08 * most], nice: false },
  };
  const inside = values.filter(({ t }) => t >= minMin && t <= maxMin);
  return vegaLiteFigure({
    title: input.title ?? "Contrast index against developing time",
    description: describe(curve, input.developments),
    specification: {
      width: figureWidth.plot,
      height: HEIGHT,
      encoding: { x },
      layer: [
        ...ceilingLayers(curve, y),
        ...developmentLayers(marked, y),
        {
          data: { values },
          mark: { type: "line", strokeDash: [4, 3], strokeWidth: 1.3 },
          encoding: { y },
        },
        { data: { values: inside }, mark: { type: "line", strokeWidth: 2.2 }, encoding: { y } },
        ...(readings.length === 0 ? [] : [readingLayer(readings, y)]),
      ],
    },
  });
}

function readingLayer(readings: readonly ContrastReading[], y: JsonObject): JsonObject {
  const values = readings.map(({ timeMin, contrastIndex }) => ({ t: timeMin, c: contrastIndex }));
  const mark = { type: "point", shape: "circle", size: 60, stroke: "white", strokeWidth: 1 };
  return { data: { values }, mark, encoding: { y } };
}

function ceilingLayers(curve: ContrastCurve, y: JsonObject): JsonObject[] {
  const { highestContrast: c } = curve;
  if (c === undefined) return [];
  const data = { values: [{ c }] };
  const text = `no time gives more than ${c.toFixed(2)}`;
  return [
    {
      data,
      mark: { type: "rule", color: palette.quiet, strokeDash: [2, 3] },
      encoding: { y, x: { value: 0 }, x2: { value: figureWidth.plot } },
    },
    {
      data,
      mark: { type: "text", text, align: "left", baseline: "top", dx: 4, dy: 4 },
      encoding: { y, x: { value: 0 } },
    },
  ];
}

function developmentLayers(
  marked: readonly { readonly label: string; readonly t: number; readonly c: number }[],
  y: JsonObject,
): JsonObject[] {
  if (marked.length === 0) return [];
  const data = { values: marked };
  const rule = { type: "rule", color: palette.series[1], strokeWidth: 1.2 };
  return [
    { data, mark: rule, encoding: { y, y2: { value: HEIGHT } } },
    { data, mark: rule, encoding: { y, x2: { value: 0 } } },
    {
      data,
      mark: {
        type: "text",
        align: "left",
        baseline: "bottom",
        angle: 270,
        dy: -3,
        fontWeight: 600,
        color: palette.action,
      },
      encoding: { y: { value: HEIGHT - 5 }, text: { field: "label" } },
    },
  ];
}

function describe(curve: ContrastCurve, set: ZoneDevelopments | undefined): string {
  const { minMin, maxMin } = curve.range;
  const at = (t: number) => `${curve.contrastAt(t).toFixed(2)} at ${Number(t.toFixed(1))} min`;
  const ceiling =
    curve.highestContrast === undefined
      ? ""
      : ` and cannot exceed ${curve.highestContrast.toFixed(2)}`;
  const times = (set?.developments ?? []).map(({ name, timeMin }) =>
    timeMin === undefined ? `${name} cannot be had` : `${name} ${timeMin.toFixed(1)} min`,
  );
  const list = times.length === 0 ? "" : ` Times: ${times.join(", ")}.`;
  return `Contrast index rises from ${at(minMin)} to ${at(maxMin)}${ceiling}.${list}`;
}
