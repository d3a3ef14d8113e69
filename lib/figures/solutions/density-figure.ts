import { InputError, requireObject } from "../../input/index.ts";
import { solutionDensity } from "../../solutions/index.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { palette } from "../parts/theme.ts";

/**
 * Density of a solution against its strength, with mixes marked on the curve.
 *
 * @param of.substance as in `solutionDensity`
 * @param of.upToPercent end of the curve, per cent by mass; default 100 or as far as the data reach
 * @param of.marks strengths to mark, each with a name
 * @param of.temperatureC °C, default 20
 * @returns Vega-Lite figure; its text alternative says where the density is greatest
 * @throws InputError for an unknown substance or a mark beyond the data
 *
 * @example
 * densityFigure({ substance: "acetic acid", marks: [{ massPercent: 28, label: "28 %" }] }).description.includes("greatest near 78 %") // => true
 */
export function densityFigure(of: {
  readonly substance: string;
  readonly upToPercent?: number;
  readonly marks?: readonly { readonly massPercent: number; readonly label: string }[];
  readonly temperatureC?: number;
}): VegaLiteFigure {
  requireObject("densityFigure", "of", of, "an object with substance");
  const { substance } = of;
  const temperatureC = of.temperatureC ?? 20;
  const at = (massPercent: number) =>
    solutionDensity({ substance, massPercent, temperatureC }).densityGPerMl;
  const end = of.upToPercent ?? 100;
  if (!(end > 0 && end <= 100)) {
    throw new InputError("densityFigure", "upToPercent", end, "write more than 0, at most 100 %");
  }
  const values = Array.from({ length: 101 }, (_, i) => (end * i) / 100).map((massPercent) => ({
    massPercent,
    density: at(massPercent),
  }));
  const highest = values.reduce((best, each) => (each.density > best.density ? each : best));
  const marks = (of.marks ?? []).map((mark) => ({ ...mark, density: at(mark.massPercent) }));
  // A name stands below the curve: to the right where it rises, to the left where it falls.
  const falls = (massPercent: number) => massPercent > highest.massPercent;
  const sides = [true, false]
    .map((left) => ({ left, named: marks.filter((mark) => falls(mark.massPercent) === left) }))
    .filter(({ named }) => named.length > 0);
  const x = { field: "massPercent", type: "quantitative", title: "Strength (% by mass)" };
  const y = {
    field: "density",
    type: "quantitative",
    title: "Density (g/mL)",
    scale: { zero: false, nice: true },
    axis: { format: ".2f" },
  };
  const inside =
    highest.massPercent > 0 && highest.massPercent < end
      ? `is greatest near ${Math.round(highest.massPercent)} %`
      : `goes from ${values[0]?.density.toFixed(4)} to ${values.at(-1)?.density.toFixed(4)} g/mL`;
  return vegaLiteFigure({
    title: `Density of ${substance} at ${temperatureC} °C`,
    description: `The density of ${substance} in water from 0 to ${end} % by mass ${inside}.`,
    specification: {
      width: 420,
      height: 220,
      layer: [
        {
          data: { values },
          mark: { type: "line", color: palette.series[0], strokeWidth: 2 },
          encoding: { x, y },
        },
        {
          data: { values: marks },
          mark: { type: "point", filled: true, size: 70, color: palette.control },
          encoding: { x, y },
        },
        ...sides.map(({ left, named }) => ({
          data: { values: named },
          mark: {
            type: "text",
            align: left ? "right" : "left",
            baseline: "top",
            dx: left ? -8 : 8,
            dy: 3,
            color: palette.control,
          },
          encoding: { x, y, text: { field: "label" } },
        })),
      ],
    },
  });
}
