import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import type { StockForecast, StockLevel } from "../../solutions/index.ts";
import { dateAxis } from "../parts/date-axis.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { palette } from "../parts/theme.ts";

/**
 * What stands on the shelf each morning at this week's load, with the last day to order and the day
 * it runs short.
 *
 * @param levels from `stockLevels`, at least two mornings
 * @param forecast from `stockForecast` for the same shelf
 * @param options.title what is on the shelf
 * @param options.reserveMl kept untouched, mL; drawn as a line if above 0
 * @returns Vega-Lite figure; its text alternative gives the dates
 * @throws InputError for fewer than two mornings
 *
 * @example
 * const shelf = { onShelfMl: 12000, weekUseMl: [900, 900, 900, 900, 1400, 0, 0], from: "2026-03-02" }
 * stockFigure(stockLevels({ ...shelf, days: 18 }), stockForecast({ ...shelf, leadDays: 5 }), { title: "Fixer concentrate" }).description.includes("2026-03-18") // => true
 */
export function stockFigure(
  levels: readonly StockLevel[],
  forecast: StockForecast,
  options: { readonly title: string; readonly reserveMl?: number },
): VegaLiteFigure {
  requireEntries("stockFigure", "levels", levels);
  requireObject(
    "stockFigure",
    "forecast",
    forecast,
    "an object with daysLeft, emptyOn, orderBy, …",
  );
  requireObject("stockFigure", "options", options, "an object with title");
  const [first, last] = [levels[0], levels.at(-1)];
  if (first === undefined || last === undefined || levels.length < 2) {
    const advice = "write the levels of at least two mornings";
    throw new InputError("stockFigure", "levels", levels, advice);
  }
  const values = levels.map(({ date, onShelfMl }) => ({ date, litres: onShelfMl / 1000 }));
  const reserveL = (options.reserveMl ?? 0) / 1000;
  const named = [
    { date: forecast.orderBy, text: "order by", ink: palette.action, top: 8 },
    { date: forecast.emptyOn, text: "short on", ink: palette.control, top: 24 },
  ].filter(({ date }) => date !== null && date >= first.date && date <= last.date);
  const x = dateAxis("Morning of (date)");
  const y = { field: "litres", type: "quantitative", title: "On the shelf (L)" };
  // A name stands on the side of its day where there is room for it.
  const middle = levels[Math.floor(levels.length / 2)]?.date ?? last.date;
  const beside = (date: string | null) =>
    (date ?? "") < middle ? { align: "left", dx: 5 } : { align: "right", dx: -5 };
  const days = named.map(({ date, text, ink, top }) => ({
    data: { values: [{ date, text: `${text} ${date}` }] },
    layer: [
      { mark: { type: "rule", color: ink, strokeDash: [6, 3], strokeWidth: 1.5 } },
      {
        mark: { type: "text", ...beside(date), y: top, baseline: "top", color: ink },
        encoding: { text: { field: "text" } },
      },
    ],
    encoding: { x },
  }));
  const reserve = {
    data: { values: [{ litres: reserveL, text: `reserve ${reserveL} L` }] },
    layer: [
      { mark: { type: "rule", color: palette.quiet, strokeDash: [2, 2] } },
      {
        mark: {
          type: "text",
          align: "left",
          baseline: "bottom",
          x: 4,
          dy: -3,
          color: palette.quiet,
        },
        encoding: { text: { field: "text" } },
      },
    ],
    encoding: { y },
  };
  return vegaLiteFigure({
    title: options.title,
    description: descriptionOf(first, forecast, reserveL),
    specification: {
      width: 480,
      height: 200,
      data: { values },
      layer: [
        { mark: { type: "area", interpolate: "step-after", opacity: 0.18 }, encoding: { x, y } },
        {
          mark: { type: "line", interpolate: "step-after", strokeWidth: 2 },
          encoding: { x, y },
        },
        ...(reserveL > 0 ? [reserve] : []),
        ...days,
      ],
    },
  });
}

function descriptionOf(first: StockLevel, forecast: StockForecast, reserveL: number): string {
  const start = `On the morning of ${first.date} there are ${first.onShelfMl / 1000} L on the shelf`;
  const use = `this week's load takes ${Number((forecast.usePerWeekMl / 1000).toPrecision(3))} L a week`;
  const kept = reserveL > 0 ? ` above a reserve of ${reserveL} L` : "";
  return forecast.emptyOn === null
    ? `${start}; ${use}; it does not run short.`
    : `${start}; ${use}; it runs short${kept} on ${forecast.emptyOn}, so the order must go out by ${forecast.orderBy}.`;
}
