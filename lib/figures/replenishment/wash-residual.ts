import type { FilmWashResult } from "../../development/index.ts";
import { InputError, requireObject } from "../../input/index.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { palette } from "../parts/theme.ts";

/**
 * Thiosulfate left in film after each change of wash water, against the published limit, on a
 * logarithmic axis.
 *
 * @param wash from `washByChanges`, at least one change
 * @param options.title default names the quantity
 * @returns Vega-Lite figure; its text alternative says what is left and when the limit is reached
 * @throws InputError for a wash without changes
 *
 * @example
 * washResidualFigure(washByChanges({ areaM2: 0.1134, waterMl: 580 }, [3, 3, 3, 3, 3])).description.includes("below the limit after 4 changes") // => true
 */
export function washResidualFigure(
  wash: FilmWashResult,
  options: { readonly title?: string } = {},
): VegaLiteFigure {
  requireObject(
    "washResidualFigure",
    "wash",
    wash,
    "an object with residualGPerM2, limitGPerM2, withinLimit, …",
  );
  const { residualGPerM2, limitGPerM2 } = wash;
  const changes = residualGPerM2.length - 1;
  if (changes < 1) {
    const advice = "write the result of washByChanges with at least one change";
    throw new InputError("washResidualFigure", "wash.residualGPerM2", residualGPerM2, advice);
  }
  const values = residualGPerM2.map((left, change) => ({ change, left }));
  const below = residualGPerM2.findIndex((left) => left <= limitGPerM2);
  const title = options.title ?? "Thiosulfate left in the film";
  const y = {
    field: "left",
    type: "quantitative",
    title: "Thiosulfate left (g/m²)",
    scale: { type: "log", nice: true },
    axis: { format: "~g", values: [10, 1, 0.1, 0.01, 0.001, 0.0001] },
  };
  return vegaLiteFigure({
    title,
    description: `Thiosulfate in the film falls from ${residualGPerM2[0]?.toPrecision(2)} to ${residualGPerM2.at(-1)?.toPrecision(2)} g/m² over ${changes} changes of water; ${below > 0 ? `it is below the limit after ${below} changes` : "it does not reach the limit"} of ${limitGPerM2} g/m².`,
    specification: {
      width: 300,
      height: 200,
      data: { values },
      layer: [
        {
          data: { values: [{ left: limitGPerM2, text: `limit ${limitGPerM2} g/m²` }] },
          mark: { type: "rule", strokeDash: [6, 3], strokeWidth: 1.5, color: palette.control },
          encoding: { y },
        },
        {
          data: { values: [{ left: limitGPerM2, text: `limit ${limitGPerM2} g/m²` }] },
          mark: {
            type: "text",
            align: "left",
            baseline: "top",
            dy: 5,
            x: 4,
            color: palette.control,
          },
          encoding: { y, text: { field: "text" } },
        },
        {
          mark: { type: "line", point: true },
          encoding: {
            y,
            x: {
              field: "change",
              type: "quantitative",
              title: "Change of water (count)",
              axis: { tickMinStep: 1, format: "d" },
            },
          },
        },
      ],
    },
  });
}
