import { InputError, requireObject } from "../../input/index.ts";
import type { TankLog } from "../../replenishment/index.ts";
import { type JsonObject, type PlotlyFigure, plotlyFigure } from "../parts/figure.ts";
import { palette } from "../parts/theme.ts";

/** One position of the slider. */
export interface SliderRun {
  /** What the slider shows at this position, such as "500 mL/m²". */
  readonly label: string;
  readonly log: TankLog;
}

const dashes = ["solid", "dash", "dot", "dashdot", "longdash", "longdashdot"] as const;

/**
 * A tank over a season to explore: a slider over runs that were computed beforehand, each component as
 * per cent of its aim, so that all share one axis.
 *
 * @param options.title what the figure shows
 * @param options.slider what the slider changes, such as "Rate"
 * @param options.runs two or more labelled results of `tankOverDays`
 * @param options.aims the 100 % of each component, g/L, above 0; these components are drawn
 * @param options.start position of the slider at the beginning, from 0; default the middle
 * @returns Plotly figure; its text alternative gives lowest, highest and last value of every component at every position
 * @throws InputError for fewer than two runs, no component, or an aim that is not above 0
 *
 * @example
 * const run = (rateMlPerM2) => tankOverDays({ volumeL: 20, rateMlPerM2, components: [{ name: "bromide", replenisherGPerL: 0.4, startGPerL: 1, releasedGPerM2: 0.5 }] }, [{ date: "2026-03-02", areaM2: 3 }, { date: "2026-03-03", areaM2: 4 }]);
 * tankExplorer({ title: "Bromide", slider: "Rate", runs: [500, 600].map((r) => ({ label: `${r} mL/m²`, log: run(r) })), aims: { bromide: 1 } }).data.length // => 2
 */
export function tankExplorer(options: {
  readonly title: string;
  readonly slider: string;
  readonly runs: readonly SliderRun[];
  readonly aims: Readonly<Record<string, number>>;
  readonly start?: number;
}): PlotlyFigure {
  const where = "tankExplorer";
  requireObject(where, "options", options, "an object with title, slider, runs, …");
  const { runs, aims } = options;
  if (!(runs?.length >= 2)) {
    throw new InputError(where, "runs", runs?.length, "write two or more { label, log }");
  }
  const components = Object.keys(aims);
  if (components.length === 0) {
    throw new InputError(where, "aims", aims, "write at least one component with its aim in g/L");
  }
  for (const component of components) {
    const aim = aims[component];
    if (aim === undefined || !Number.isFinite(aim) || aim <= 0) {
      throw new InputError(where, `aims of ${component}`, aim, "write g/L greater than 0");
    }
  }
  const start = options.start ?? Math.floor((runs.length - 1) / 2);
  if (runs[start] === undefined) {
    throw new InputError(where, "start", start, `write a position from 0 to ${runs.length - 1}`);
  }
  const data = runs.flatMap(({ log }, i) =>
    components.map((component, k) => traceOf(log, component, aims[component] ?? 1, k, i === start)),
  );
  const values = data.flatMap(({ y }) => (Array.isArray(y) ? y.filter(Number.isFinite) : []));
  const [low, high] = [Math.min(...values, 95), Math.max(...values, 105)];
  const pad = 0.05 * (high - low);
  const steps = runs.map(({ label }, i) => ({
    label,
    method: "restyle",
    args: ["visible", data.map((_, k) => Math.floor(k / components.length) === i)],
  }));
  return plotlyFigure({
    title: options.title,
    description: `${options.slider} by a slider. Lowest to highest, as per cent of aim: ${runs.map((run) => spanOf(run, aims)).join(". ")}.`,
    data,
    layout: {
      xaxis: { title: { text: "Day (date)" }, type: "date" },
      yaxis: {
        title: { text: "Concentration (% of aim)" },
        range: [low - pad, high + pad],
      },
      height: 480,
      margin: { l: 64, r: 24, t: 80, b: 130 },
      legend: { orientation: "h", y: 1, yanchor: "bottom", x: 0 },
      shapes: [
        {
          type: "line",
          xref: "paper",
          x0: 0,
          x1: 1,
          y0: 100,
          y1: 100,
          line: { color: palette.quiet, width: 1, dash: "dot" },
        },
      ],
      sliders: [
        { active: start, currentvalue: { prefix: `${options.slider}: ` }, pad: { t: 60 }, steps },
      ],
    },
  });
}

function traceOf(
  log: TankLog,
  component: string,
  aim: number,
  k: number,
  visible: boolean,
): JsonObject {
  return {
    type: "scatter",
    mode: "lines",
    name: component,
    visible,
    x: log.days.map(({ date }) => date),
    y: log.days.map(({ concentrationGPerL }) => {
      const value = concentrationGPerL[component];
      return value === undefined ? null : Number(((100 * value) / aim).toPrecision(6));
    }),
    line: {
      color: palette.series[k % palette.series.length],
      dash: dashes[k % dashes.length],
      width: 2,
    },
    hovertemplate: `%{x|%e %b}<br>${component} %{y:.1f} % of aim<extra></extra>`,
  };
}

function spanOf({ label, log }: SliderRun, aims: Readonly<Record<string, number>>): string {
  const spans = Object.entries(aims).map(([component, aim]) => {
    const values = log.days.map((day) => (100 * (day.concentrationGPerL[component] ?? 0)) / aim);
    const [low, high, end] = [Math.min(...values), Math.max(...values), values.at(-1) ?? 0];
    return `${component} ${low.toFixed(0)} to ${high.toFixed(0)} %, at last ${end.toFixed(0)} %`;
  });
  const falls = log.fallingOn === null ? "" : ` (the level falls on ${log.fallingOn})`;
  return `${label}: ${spans.join("; ")}${falls}`;
}
