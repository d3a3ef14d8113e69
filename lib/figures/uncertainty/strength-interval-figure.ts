import { InputError, requireEntries } from "../../input/index.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { palette } from "../parts/theme.ts";
import type { NamedBudget } from "./uncertainty-share-figure.ts";

/**
 * How far each mix may be from what was wanted: the coverage interval of its strength, in per cent of
 * the value, one line per mix.
 *
 * @param mixes named budgets, at least one, each with a value other than 0
 * @param options.title what the figure shows; names the quantity if left out
 * @param options.tolerancePercent a band of ± so many per cent that would not be noticed, at least 0;
 *   none if left out
 * @returns Vega-Lite figure; its text alternative gives each half-width
 * @throws InputError for no mix, a value of 0, or a negative band
 *
 * @example
 * strengthIntervalFigure([{ name: "stop", budget: propagateUncertainty(({ x }) => x, [{ name: "x", distribution: { kind: "normal", mean: 10, standardUncertainty: 0.1 } }]) }]).description.includes("stop ± 2.0 %") // => true
 */
export function strengthIntervalFigure(
  mixes: readonly NamedBudget[],
  options: { readonly title?: string; readonly tolerancePercent?: number } = {},
): VegaLiteFigure {
  const where = "strengthIntervalFigure";
  requireEntries(where, "mixes", mixes);
  if (!(mixes?.length > 0)) {
    throw new InputError(where, "mixes", mixes, "write at least one { name, budget }");
  }
  const { tolerancePercent: band } = options;
  if (band !== undefined && !(Number.isFinite(band) && band >= 0)) {
    throw new InputError(where, "tolerancePercent", band, "write a number of at least 0");
  }
  const values = mixes.map(({ name, budget }) => {
    if (budget.value === 0) {
      throw new InputError(where, "budget.value", 0, "per cent of 0 have no meaning; leave it out");
    }
    const half = (100 * budget.expandedUncertainty) / Math.abs(budget.value);
    return { mix: name, low: -half, high: half, label: `± ${half.toFixed(1)} %` };
  });
  const probability = Math.round(100 * (mixes[0]?.budget.coverageProbability ?? 0.95));
  const reach = 1.3 * Math.max(band ?? 0, ...values.map(({ high }) => high));
  const y = {
    field: "mix",
    type: "nominal",
    sort: null,
    title: "Mix (no unit)",
    axis: { labelLimit: 400 },
  };
  const title = `Deviation from the strength wanted (%)`;
  const x = { type: "quantitative", title, scale: { domain: [-reach, reach] } };
  const bandLayer =
    band === undefined
      ? []
      : [
          {
            data: { values: [{ from: -band, to: band }] },
            mark: { type: "rect", color: palette.band },
            encoding: { x: { ...x, field: "from" }, x2: { field: "to" } },
          },
        ];
  const bandText = band === undefined ? "" : ` The grey band is ± ${band} %.`;
  return vegaLiteFigure({
    title: options.title ?? `How sure each mix is (${probability} % interval)`,
    description: `${probability} % intervals of the strength: ${values.map(({ mix, label }) => `${mix} ${label}`).join("; ")}.${bandText}`,
    specification: {
      width: 420,
      height: { step: 34 },
      data: { values },
      layer: [
        ...bandLayer,
        {
          mark: { type: "rule", strokeWidth: 3, color: palette.series[0] },
          encoding: { y, x: { ...x, field: "low" }, x2: { field: "high" } },
        },
        {
          mark: { type: "tick", thickness: 3, size: 14, color: palette.series[0] },
          encoding: { y, x: { ...x, field: "low" } },
        },
        {
          mark: { type: "tick", thickness: 3, size: 14, color: palette.series[0] },
          encoding: { y, x: { ...x, field: "high" } },
        },
        {
          mark: { type: "text", dy: -9, color: palette.ink },
          encoding: { y, x: { ...x, datum: 0 }, text: { field: "label" } },
        },
      ],
    },
  });
}
