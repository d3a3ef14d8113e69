import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import type { BathPhPoint } from "../../solutions/index.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { palette } from "../parts/theme.ts";

/** Width of the plot; the limit is named to the right of it, where no curve runs. */
const WIDTH = 420;

/** One curve: a bath, or one bath under one carry-over. */
export interface BathPhSeries {
  readonly name: string;
  readonly points: readonly Pick<BathPhPoint, "areaM2" | "pH">[];
}

/**
 * pH of a bath against the film area that has passed through it, with the limit at which it is done.
 *
 * @param series one or more named curves from `bathPhAgainstArea`, at least two points each
 * @param options.pHLimit drawn as a line, 0 to 14; none if left out
 * @param options.title what the figure shows; names the quantity if left out
 * @returns Vega-Lite figure; its text alternative gives the ends of each curve
 * @throws InputError for no curve, a curve of fewer than two points, or a limit outside 0 to 14
 *
 * @example
 * bathPhFigure([{ name: "stop", points: [{ areaM2: 0, pH: 2.7 }, { areaM2: 2, pH: 5.5 }] }], { pHLimit: 5.5 }).description.includes("stop from 2.7 at 0 m² to 5.5 at 2.0 m²") // => true
 */
export function bathPhFigure(
  series: readonly BathPhSeries[],
  options: { readonly pHLimit?: number; readonly title?: string } = {},
): VegaLiteFigure {
  const where = "bathPhFigure";
  requireEntries(where, "series", series);
  requireObject(where, "options", options, "an object of options, or leave it out");
  if (!(series?.length > 0)) {
    throw new InputError(where, "series", series, "write at least one { name, points }");
  }
  const short = series.find(({ points }) => points.length < 2);
  if (short) {
    const advice = "write at least two points, such as areas [0, 1, 2]";
    throw new InputError(where, `points of ${short.name}`, short.points.length, advice);
  }
  const { pHLimit } = options;
  if (pHLimit !== undefined) requireNumber(where, "pHLimit", pHLimit, { min: 0, max: 14 });
  const values = series.flatMap(({ name, points }) =>
    points.map(({ areaM2, pH }) => ({ bath: name, areaM2, pH })),
  );
  const ends = series.map(({ name, points }) => {
    const [first, last] = [points[0], points.at(-1)];
    return `${name} from ${first?.pH.toFixed(1)} at ${first?.areaM2.toFixed(0)} m² to ${last?.pH.toFixed(1)} at ${last?.areaM2.toFixed(1)} m²`;
  });
  const y = { field: "pH", type: "quantitative", title: "pH (no unit)", scale: { zero: false } };
  const limitData = { values: [{ pH: pHLimit, text: `limit pH ${pHLimit}` }] };
  const limit =
    pHLimit === undefined
      ? []
      : [
          {
            data: limitData,
            mark: { type: "rule", strokeDash: [6, 3], strokeWidth: 1.5, color: palette.control },
            encoding: { y },
          },
          {
            data: limitData,
            mark: {
              type: "text",
              align: "left",
              baseline: "middle",
              x: WIDTH + 6,
              color: palette.control,
            },
            encoding: { y, text: { field: "text" } },
          },
        ];
  const limitText = pHLimit === undefined ? "" : ` The limit is pH ${pHLimit}.`;
  return vegaLiteFigure({
    title: options.title ?? "pH of the bath as film carries the bath before it in",
    description: `pH of the bath: ${ends.join("; ")}.${limitText}`,
    specification: {
      width: WIDTH,
      height: 260,
      data: { values },
      layer: [
        ...limit,
        {
          mark: { type: "line", interpolate: "monotone" },
          encoding: {
            y,
            x: { field: "areaM2", type: "quantitative", title: "Film area (m²)" },
            color: { field: "bath", type: "nominal", sort: null, title: null },
            strokeDash: { field: "bath", type: "nominal", sort: null, title: null },
          },
        },
      ],
    },
  });
}
