import { InputError, requireObject } from "../../input/index.ts";
import type { DeliveredRates } from "../../replenishment/index.ts";
import { dateAxis } from "../parts/date-axis.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { palette } from "../parts/theme.ts";

const WIDTH = 500;

/**
 * What a pump delivered against what it was set to: each interval's rate, and below it the running
 * sum of delivered minus set volume, whose slope changes on the day a pump begins to lie.
 *
 * @param rates from `deliveredRates`
 * @param options.title what the figure shows
 * @param options.rateMlPerM2 the rate that is wanted, mL/m², drawn as a line
 * @returns Vega-Lite figure; its text alternative gives the rates over all and the sum at the end
 * @throws InputError if no interval has both a set and a measured volume
 *
 * @example
 * const readings = [{ readAt: "2026-03-01T18:00", counterStrokes: 0, settingMlPerStroke: 5 }, { readAt: "2026-03-02T18:00", counterStrokes: 360, settingMlPerStroke: 5, deliveredMl: 1500 }];
 * deliveredRateFigure(deliveredRates({ readings, days: [{ date: "2026-03-02", areaM2: 3 }] }), { title: "Film developer" }).description.includes("−0.3 L") // => true
 */
export function deliveredRateFigure(
  rates: DeliveredRates,
  options: { readonly title: string; readonly rateMlPerM2?: number },
): VegaLiteFigure {
  requireObject(
    "deliveredRateFigure",
    "rates",
    rates,
    "an object with intervals, setMlPerM2, deliveredMlPerM2, …",
  );
  requireObject("deliveredRateFigure", "options", options, "an object with title");
  let sumMl = 0;
  const values = rates.intervals.flatMap(
    ({ to, setMl, deliveredMl, setMlPerM2, deliveredMlPerM2 }) => {
      if (setMl === null || deliveredMl === null) return [];
      sumMl += deliveredMl - setMl;
      return [{ date: to, set: setMlPerM2, delivered: deliveredMlPerM2, sumL: sumMl / 1000 }];
    },
  );
  if (values.length === 0) {
    const advice = "write intervals with strokes and measured volumes";
    throw new InputError("deliveredRateFigure", "rates.intervals", "without both volumes", advice);
  }
  const x = dateAxis(null);
  const y = { type: "quantitative", title: "Rate (mL/m²)", scale: { zero: false, padding: 8 } };
  const points = values.flatMap(({ date, set, delivered }) => [
    ...(delivered === null ? [] : [{ date, rate: delivered, which: "measured" }]),
    ...(set === null ? [] : [{ date, rate: set, which: "as set" }]),
  ]);
  const key = {
    field: "which",
    type: "nominal",
    sort: ["measured", "as set"],
    title: null,
  };
  const wanted = {
    data: { values: [{ rate: options.rateMlPerM2 }] },
    mark: { type: "rule", color: palette.quiet, strokeDash: [2, 2] },
    encoding: { y: { field: "rate", ...y } },
  };
  return vegaLiteFigure({
    title: options.title,
    description: describe(rates, sumMl),
    specification: {
      spacing: 12,
      vconcat: [
        {
          width: WIDTH,
          height: 150,
          layer: [
            ...(options.rateMlPerM2 === undefined ? [] : [wanted]),
            {
              data: { values: points },
              mark: { type: "point", size: 30, filled: true },
              encoding: {
                x,
                y: { field: "rate", ...y },
                color: { ...key, scale: { range: [palette.series[0], palette.series[1]] } },
                shape: { ...key, scale: { range: ["circle", "triangle-up"] } },
              },
            },
          ],
        },
        {
          width: WIDTH,
          height: 110,
          data: { values },
          layer: [
            {
              data: { values: [{ zero: 0 }] },
              mark: { type: "rule" },
              encoding: {
                y: {
                  field: "zero",
                  type: "quantitative",
                  title: ["Delivered − set,", "running sum (L)"],
                },
              },
            },
            {
              mark: { type: "line", color: palette.series[0] },
              encoding: {
                x: dateAxis("Evening of (date)"),
                y: {
                  field: "sumL",
                  type: "quantitative",
                  title: ["Delivered − set,", "running sum (L)"],
                },
              },
            },
          ],
        },
      ],
    },
  });
}

function describe(rates: DeliveredRates, sumMl: number): string {
  const rate = (value: number | null) => (value === null ? "unknown" : `${value.toFixed(0)} mL/m²`);
  const litres = `${sumMl < 0 ? "−" : "+"}${Math.abs(sumMl / 1000).toFixed(1)} L`;
  return `By strokes and setting ${rate(rates.setMlPerM2)}, as measured ${rate(rates.deliveredMlPerM2)}; delivered minus set comes to ${litres} at the end. ${rates.problems.length} problems in the logs.`;
}
