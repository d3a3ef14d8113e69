import { requireObject } from "../../input/index.ts";
import type { SilverLog } from "../../replenishment/index.ts";
import { dateAxis } from "../parts/date-axis.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { requireRuns } from "../parts/require-runs.ts";
import { palette } from "../parts/theme.ts";

const WIDTH = 440;

/** One run of a fixer, under the name it has in the key. */
export interface NamedSilverLog {
  readonly name: string;
  readonly log: SilverLog;
}

/**
 * Silver in a fixer over days, with the limit at which it is changed or recovered.
 *
 * @param runs one to four named results of `silverOverDays`
 * @param options.title what the figure shows
 * @param options.limitGPerL your own limit, g/L, drawn as a line
 * @returns Vega-Lite figure; its text alternative gives the end, the peak and the day above the limit
 * @throws InputError for no run, more than four, or a run of fewer than two days
 *
 * @example
 * const tank = { volumeL: 16, rateMlPerM2: 800, components: [] };
 * const log = silverOverDays({ tank, coatedGPerM2: 5, fractionRemoved: 1 }, [{ date: "2026-03-02", areaM2: 3 }, { date: "2026-03-03", areaM2: 3 }]);
 * silverFigure([{ name: "no recovery", log }], { title: "Silver" }).description.includes("no recovery: 1.62 g/L at the end") // => true
 */
export function silverFigure(
  runs: readonly NamedSilverLog[],
  options: { readonly title: string; readonly limitGPerL?: number },
): VegaLiteFigure {
  const where = "silverFigure";
  requireRuns(where, runs);
  requireObject(where, "options", options, "an object with title");
  const values = runs.flatMap(({ name, log }) =>
    log.days.map(({ date, silverGPerL }) => ({ date, run: name, silver: silverGPerL })),
  );
  const y = { field: "silver", type: "quantitative", title: "Silver in the fixer (g/L)" };
  const key = { field: "run", type: "nominal", sort: null, title: null };
  const limit = options.limitGPerL;
  const limitData = { values: [{ silver: limit, text: `limit ${limit} g/L` }] };
  const limitLayers = [
    {
      data: limitData,
      mark: { type: "rule", color: palette.control, strokeDash: [6, 3], strokeWidth: 1.5 },
      encoding: { y },
    },
    {
      data: limitData,
      mark: { type: "text", align: "left", x: WIDTH + 6, color: palette.control },
      encoding: { y, text: { field: "text" } },
    },
  ];
  return vegaLiteFigure({
    title: options.title,
    description: runs
      .map(({ name, log }) => describe(name, log, limit))
      .join("; ")
      .concat("."),
    specification: {
      width: WIDTH,
      height: 220,
      layer: [
        {
          data: { values },
          mark: { type: "line" },
          encoding: {
            x: dateAxis("End of (date)"),
            y,
            color: key,
            strokeDash: key,
          },
        },
        ...(limit === undefined ? [] : limitLayers),
      ],
    },
  });
}

function describe(name: string, log: SilverLog, limit: number | undefined): string {
  const end = log.days.at(-1)?.silverGPerL ?? 0;
  const peak = Math.max(...log.days.map(({ silverGPerL }) => silverGPerL));
  const above = limit === undefined ? undefined : log.days.find((day) => day.silverGPerL > limit);
  const when =
    limit === undefined
      ? ""
      : above === undefined
        ? ", never above the limit"
        : `, above the limit from ${above.date}`;
  return `${name}: ${end.toFixed(2)} g/L at the end, ${peak.toFixed(2)} at most${when}`;
}
