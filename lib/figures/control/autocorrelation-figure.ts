import type { Autocorrelation } from "../../control/index.ts";
import { requireObject } from "../../input/index.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { palette } from "../parts/theme.ts";

/**
 * Correlation of readings with those before, lag by lag, with the band within which independent
 * readings would lie.
 *
 * @param study from `autocorrelation`
 * @param options.title what the figure shows
 * @returns Vega-Lite figure; its text alternative gives the study's sentence and every correlation
 *
 * @example
 * const wave = [1, 2, 3, 2, 1, 0, 1, 2, 3, 2, 1, 0];
 * autocorrelationFigure(autocorrelation(wave, { lags: 2 })).description.includes("lag 1 0.39") // => true
 */
export function autocorrelationFigure(
  study: Autocorrelation,
  options: { readonly title?: string } = {},
): VegaLiteFigure {
  requireObject(
    "autocorrelationFigure",
    "study",
    study,
    "an object with readings, lags, ljungBox, …",
  );
  const band = study.lags[0]?.independentHalfWidth ?? 0;
  const said = study.lags.map(({ lag, correlation }) => `lag ${lag} ${correlation.toFixed(2)}`);
  const values = study.lags.map(({ lag, correlation }) => ({ lag, correlation }));
  const y = {
    type: "quantitative",
    title: "Correlation (no unit)",
    scale: { domain: [-1, 1] },
  };
  const x = { field: "lag", type: "ordinal", title: "Lag (readings)", axis: { labelAngle: 0 } };
  return vegaLiteFigure({
    title: options.title ?? "How readings hang together with those before",
    description: `${study.sentence} ${said.join("; ")}. Independent readings would lie within ±${band.toFixed(2)}.`,
    specification: {
      width: 420,
      height: 200,
      data: { values },
      layer: [
        {
          mark: { type: "rect", color: palette.band },
          encoding: { y: { ...y, datum: -band }, y2: { datum: band } },
        },
        { mark: { type: "rule", color: palette.ink }, encoding: { y: { ...y, datum: 0 } } },
        {
          mark: { type: "bar", size: 8 },
          encoding: { x, y: { ...y, field: "correlation" } },
        },
      ],
    },
  });
}
