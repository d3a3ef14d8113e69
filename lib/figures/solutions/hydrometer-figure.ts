import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import type { GravityPoint, HydrometerCheck } from "../../solutions/index.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { palette } from "../parts/theme.ts";

const WIDTH = 420;

/**
 * A mix on the line between its known points: gravity against strength, the tolerance around the
 * target as a band, and the reading.
 *
 * @param check from `hydrometerCheck` with the same points
 * @param points the known mixes, at least two
 * @param options.title what was checked
 * @param options.tolerance the relative tolerance of the check; default 0.05
 * @param options.strengthTitle name of the strength with its unit; default 1 for the right mix
 * @returns Vega-Lite figure; its text alternative says the verdict and the correction
 * @throws InputError for fewer than two points
 *
 * @example
 * const points = [{ specificGravity: 1, strength: 0 }, { specificGravity: 1.05, strength: 1.25 }]
 * hydrometerFigure(hydrometerCheck({ reading: 1.044, temperatureC: 20, points, target: 1, tankMl: 12000, presentMl: 10000 }), points, { title: "Fixer" }).description.includes("too strong") // => true
 */
export function hydrometerFigure(
  check: HydrometerCheck,
  points: readonly GravityPoint[],
  options: { readonly title: string; readonly tolerance?: number; readonly strengthTitle?: string },
): VegaLiteFigure {
  requireObject("hydrometerFigure", "check", check, "an object with target, deviation, verdict, …");
  requireEntries("hydrometerFigure", "points", points);
  requireObject("hydrometerFigure", "options", options, "an object with title");
  if (points.length < 2) {
    throw new InputError("hydrometerFigure", "points", points, "write at least two known points");
  }
  const tolerance = options.tolerance ?? 0.05;
  const x = {
    field: "specificGravity",
    type: "quantitative",
    title: "Specific gravity at the scale's temperature (no unit)",
    scale: { zero: false, nice: true },
    axis: { format: ".3f", tickCount: 6 },
  };
  const y = {
    field: "strength",
    type: "quantitative",
    title: options.strengthTitle ?? "Strength (1 = the right mix)",
  };
  const band = {
    low: check.target * (1 - tolerance),
    high: check.target * (1 + tolerance),
    text: `target ± ${Number((tolerance * 100).toPrecision(3))} %`,
  };
  const reading = {
    specificGravity: check.specificGravity,
    strength: check.strength,
    text: `${check.verdict}: ${check.specificGravity.toFixed(4)}`,
  };
  const left = check.specificGravity > middleOf(points);
  return vegaLiteFigure({
    title: options.title,
    description: descriptionOf(check, tolerance),
    specification: {
      width: WIDTH,
      height: 240,
      layer: [
        {
          data: { values: [band] },
          mark: { type: "rect", color: palette.band },
          encoding: { y: { ...y, field: "low" }, y2: { field: "high" } },
        },
        {
          data: { values: [band] },
          mark: {
            type: "text",
            align: "right",
            x: WIDTH - 6,
            baseline: "bottom",
            dy: -3,
            color: palette.quiet,
          },
          encoding: { y: { ...y, field: "high" }, text: { field: "text" } },
        },
        {
          data: { values: points },
          mark: { type: "line", color: palette.series[0], point: { size: 50 } },
          encoding: { x, y },
        },
        {
          data: { values: [reading] },
          mark: {
            type: "point",
            shape: "diamond",
            size: 140,
            filled: true,
            color: palette.control,
          },
          encoding: { x, y },
        },
        {
          data: { values: [reading] },
          mark: {
            type: "text",
            align: left ? "right" : "left",
            dx: left ? -12 : 12,
            color: palette.control,
            fontWeight: "bold",
          },
          encoding: { x, y, text: { field: "text" } },
        },
      ],
    },
  });
}

function middleOf(points: readonly GravityPoint[]): number {
  const gravities = points.map(({ specificGravity }) => specificGravity);
  return (Math.min(...gravities) + Math.max(...gravities)) / 2;
}

function descriptionOf(check: HydrometerCheck, tolerance: number): string {
  const percent = (value: number) => `${Number((value * 100).toPrecision(2))} %`;
  const { action, addMl, dumpMl } = check.correction;
  const litres = (volumeMl: number) => `${Number((volumeMl / 1000).toPrecision(3))} L`;
  const done =
    action === "nothing"
      ? "nothing is added"
      : `${action === "add" ? "add" : `dump ${litres(dumpMl)}, then add`} ${litres(addMl)} of ${check.correction.addStrength === 0 ? "water" : "concentrate"}`;
  return `The mix reads ${check.specificGravity.toFixed(4)} at the scale's temperature, ${percent(check.deviation)} from its target strength: ${check.verdict} for a tolerance of ${percent(tolerance)}; ${done}.`;
}
