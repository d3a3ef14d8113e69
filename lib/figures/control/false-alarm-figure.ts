import { InputError, requireEntries, requireNumber } from "../../input/index.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { palette } from "../parts/theme.ts";

/** What one chart costs in false alarms. */
export interface FalseAlarmBar {
  readonly name: string;
  readonly perYear: number;
}

/**
 * False alarms a year of several charts or sets of rules, as bars.
 *
 * @param bars name and false alarms a year, at least one, 0 or more
 * @param options.title what the figure shows
 * @returns Vega-Lite figure; its text alternative gives every number
 * @throws InputError for no bar or a negative number
 *
 * @example
 * falseAlarmFigure([{ name: "3 sigma", perYear: 1.97 }]).description.includes("3 sigma: 2.0") // => true
 */
export function falseAlarmFigure(
  bars: readonly FalseAlarmBar[],
  options: { readonly title?: string } = {},
): VegaLiteFigure {
  const where = "falseAlarmFigure";
  requireEntries(where, "bars", bars);
  if (bars.length === 0) throw new InputError(where, "bars", bars, "write at least one chart");
  const values = bars.map(({ name, perYear }) => {
    const rate = requireNumber(where, "perYear", perYear, { min: 0 });
    return { name, perYear: rate, said: rate < 10 ? rate.toFixed(1) : rate.toFixed(0) };
  });
  const most = Math.max(...values.map((each) => each.perYear), 0.1);
  const y = {
    field: "name",
    type: "nominal",
    sort: null,
    title: "Chart (no unit)",
    axis: { labelLimit: 320 },
  };
  const x = {
    field: "perYear",
    type: "quantitative",
    title: "False alarms (a year)",
    scale: { domain: [0, 1.12 * most], nice: false },
  };
  return vegaLiteFigure({
    title: options.title ?? "What each chart costs in false alarms",
    description: `False alarms a year: ${values.map((v) => `${v.name}: ${v.said}`).join("; ")}.`,
    specification: {
      width: 380,
      height: { step: 30 },
      data: { values },
      encoding: { y, x },
      layer: [
        { mark: { type: "bar", height: 18, color: palette.series[0] } },
        {
          mark: { type: "text", align: "left", dx: 5 },
          encoding: { text: { field: "said", type: "nominal" } },
        },
      ],
    },
  });
}
