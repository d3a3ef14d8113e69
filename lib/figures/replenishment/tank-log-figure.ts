import { InputError, requireObject } from "../../input/index.ts";
import type { TankLog } from "../../replenishment/index.ts";
import { dateAxis } from "../parts/date-axis.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { requireRuns } from "../parts/require-runs.ts";
import { palette } from "../parts/theme.ts";

const WIDTH = 480;

/** One run of a tank, under the name it has in the key. */
export interface NamedTankLog {
  readonly name: string;
  readonly log: TankLog;
}

/**
 * Concentrations of a tank over a log of days, a panel for each component, above the area of each day;
 * several runs of the same days are drawn over each other.
 *
 * @param runs one to four named results of `tankOverDays` over the same days
 * @param options.components which components, in order; default all
 * @param options.aims aim of a component, g/L, drawn as a thin line
 * @param options.title what the figure shows
 * @returns Vega-Lite figure; its text alternative gives first and last day of each curve
 * @throws InputError for no run, more than four, fewer than two days, or a component that is not there
 *
 * @example
 * const tank = { volumeL: 20, rateMlPerM2: 600, components: [{ name: "bromide", replenisherGPerL: 0.4, startGPerL: 1, releasedGPerM2: 0.5 }] };
 * const log = tankOverDays(tank, [{ date: "2026-03-02", areaM2: 3 }, { date: "2026-03-03", areaM2: 4 }]);
 * tankLogFigure([{ name: "as set", log }], { title: "Bromide" }).description.includes("as set: bromide 1.02 to 1.04 g/L") // => true
 */
export function tankLogFigure(
  runs: readonly NamedTankLog[],
  options: {
    readonly title: string;
    readonly components?: readonly string[];
    readonly aims?: Readonly<Record<string, number>>;
  },
): VegaLiteFigure {
  const where = "tankLogFigure";
  requireRuns(where, runs);
  requireObject(where, "options", options, "an object with title");
  const [first] = runs;
  const names = Object.keys(first?.log.days[0]?.concentrationGPerL ?? {});
  const components = options.components ?? names;
  for (const component of components) {
    if (names.includes(component)) continue;
    const advice = `write one of ${names.map((name) => `"${name}"`).join(", ")}`;
    throw new InputError(where, "components", component, advice);
  }
  const key = { type: "nominal", sort: null, title: null } as const;
  const panels = components.map((component) => {
    const values = runs.flatMap(({ name, log }) =>
      log.days.map(({ date, concentrationGPerL }) => ({
        date,
        run: name,
        value: concentrationGPerL[component] ?? null,
      })),
    );
    const y = {
      field: "value",
      type: "quantitative",
      title: [`${component}`, "(g/L)"],
      scale: { zero: false, nice: true },
      axis: { tickCount: 4 },
    };
    const aim = options.aims?.[component];
    const aimLayer = {
      data: { values: [{ value: aim, text: "aim" }] },
      layer: [
        { mark: { type: "rule", color: palette.quiet, strokeDash: [2, 2] }, encoding: { y } },
        {
          mark: { type: "text", align: "left", x: WIDTH + 5, color: palette.quiet },
          encoding: { y, text: { field: "text" } },
        },
      ],
    };
    const curve = {
      data: { values },
      mark: { type: "line", strokeWidth: 1.8 },
      encoding: {
        x: dateAxis(null),
        y,
        color: runs.length > 1 ? { field: "run", ...key } : { value: palette.series[0] },
        ...(runs.length > 1 ? { strokeDash: { field: "run", ...key } } : {}),
      },
    };
    return { width: WIDTH, height: 110, layer: aim === undefined ? [curve] : [aimLayer, curve] };
  });
  const area = {
    width: WIDTH,
    height: 60,
    data: { values: (first?.log.days ?? []).map(({ date, areaM2 }) => ({ date, areaM2 })) },
    mark: {
      type: "bar",
      color: palette.quiet,
      size: Math.max(1, (0.8 * WIDTH) / (first?.log.days.length ?? 1)),
    },
    encoding: {
      x: dateAxis("Day (date)"),
      y: {
        field: "areaM2",
        type: "quantitative",
        title: ["Load", "(m²/day)"],
        axis: { tickCount: 3 },
      },
    },
  };
  return vegaLiteFigure({
    title: options.title,
    description: described(runs, components),
    specification: { spacing: 12, vconcat: [...panels, area] },
  });
}

function described(runs: readonly NamedTankLog[], components: readonly string[]): string {
  const days = runs[0]?.log.days ?? [];
  const curves = runs.map(({ name, log }) => {
    const ends = components.map((component) => {
      const at = (day: TankLog["days"][number] | undefined) =>
        Number((day?.concentrationGPerL[component] ?? 0).toPrecision(3));
      return `${component} ${at(log.days[0])} to ${at(log.days.at(-1))} g/L`;
    });
    return `${name}: ${ends.join(", ")}`;
  });
  return `Tank from ${days[0]?.date} to ${days.at(-1)?.date}. ${curves.join("; ")}. Below, the load of each day.`;
}
