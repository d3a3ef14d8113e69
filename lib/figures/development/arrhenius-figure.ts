import { InputError } from "../../input/index.ts";
import { keyView } from "../parts/chart-key.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth } from "../parts/theme.ts";
import {
  colourOf,
  degrees,
  inverse,
  type NamedFit,
  residualPanel,
  SHAPES,
  timePanel,
} from "./arrhenius-panels.ts";

/**
 * Arrhenius plot of fitted time–temperature tables: time on a logarithmic axis against 1/T, where
 * the law is a straight line, with the residuals below. Whiskers show how far a printed time may
 * have been rounded; a whisker that touches the line (below: zero) is a time that the law explains.
 *
 * @param fits one to six results of fitTimeTemperature with their names
 * @param options.title default "Developing time against temperature"
 * @returns Vega-Lite figure; its text alternative gives each coefficient with its interval and the
 * largest residual
 * @throws InputError for no fit or more than six
 *
 * @example
 * const rows = publishedTimeTable("ascorbate-1-1-135-film-a").rows
 * arrheniusFigure([{ name: "film A", fit: fitTimeTemperature({ rows }) }]).description.includes("62.9 kJ/mol (57.9 to 67.9)") // => true
 */
export function arrheniusFigure(
  fits: readonly NamedFit[],
  options: { readonly title?: string } = {},
): VegaLiteFigure {
  if (!Array.isArray(fits) || fits.length < 1 || fits.length > SHAPES.length) {
    const advice = "write one to six fits as { name, fit }";
    throw new InputError("arrheniusFigure", "fits", `${fits?.length} fits`, advice);
  }
  const coldest = Math.min(...fits.map(({ fit }) => fit.range.minC));
  const warmest = Math.max(...fits.map(({ fit }) => fit.range.maxC));
  const room = 0.06 * (inverse(coldest) - inverse(warmest));
  const domain = [inverse(warmest) - room, inverse(coldest) + room] as const;
  const keyItems = fits.map(({ name }, i) => ({
    label: name,
    line: { colour: colourOf(i), dash: [], width: 1.6 },
    marker: { shape: SHAPES[i], color: colourOf(i), filled: true, size: 42 },
  }));
  return vegaLiteFigure({
    title: options.title ?? "Developing time against temperature",
    description: fits.map(describe).join(" "),
    specification: {
      vconcat: [
        keyView(keyItems, figureWidth.plot),
        timePanel(fits, domain, degrees(domain)),
        residualPanel(fits, domain),
      ],
      spacing: 14,
    },
  });
}

function describe({ name, fit }: NamedFit): string {
  const { value, lower, upper } = fit.coefficient;
  const unit = fit.coefficientUnit;
  const digits = unit === "kJ/mol" ? 1 : 2;
  const worst = fit.rows.reduce((max, row) => Math.max(max, Math.abs(row.residualPercent)), 0);
  const shownInterval = `${value.toFixed(digits)} ${unit} (${lower.toFixed(digits)} to ${upper.toFixed(digits)})`;
  return `${name}: ${fit.rows.length} printed times, ${shownInterval}, largest residual ${worst.toFixed(1)} %.`;
}
