import type { ParameterSeries, ProcessLimit } from "../../control/index.ts";
import { InputError, requireObject } from "../../input/index.ts";
import { chartTime, dayText, densityDigits, signed } from "../parts/chart-time.ts";
import { type JsonObject, type PlotlyFigure, plotlyFigure } from "../parts/figure.ts";
import { lineStyles, palette } from "../parts/theme.ts";
import { beyondProcess } from "./control-chart-panel.ts";
import { batchChangesOf } from "./series-parts.ts";

const dashes = { red: "solid", green: "dash", blue: "dot", neutral: "solid" } as const;
const symbols = { red: "circle", green: "triangle-up", blue: "square", neutral: "circle" } as const;

/**
 * The control chart to explore: hover for each reading, drag to zoom all panels in time, click a
 * colour in the key to hide it.
 *
 * @param options.series deviations in density of one process, oldest first
 * @returns Plotly figure; its text alternative says span, parameters and counts beyond the limits
 * @throws InputError if there is no reading
 *
 * @example
 * const limits = { kind: "process limits", action: null, adjustment: null, control: { lower: -0.08, upper: 0.08, source: "own", howObtained: "the lab's own" } } as const;
 * const series = { process: "film", parameter: "ld", name: "LD", colour: "red", limits, rows: [0, 1, 2], takenAt: ["2026-03-02T08:05", "2026-03-03T08:05", "2026-03-04T08:05"], deviations: [0.02, -0.01, 0.09], batchChanges: [], gaps: [] } as const;
 * controlExplorer({ title: "Film line", series: [series] }).data.length // => 1
 */
export function controlExplorer(options: {
  readonly title: string;
  readonly series: readonly ParameterSeries[];
}): PlotlyFigure {
  requireObject("controlExplorer", "options", options, "an object with title and series");
  const { series } = options;
  const times = series.flatMap(({ takenAt }) => takenAt).sort();
  if (times.length === 0) {
    const advice = "write at least one reading to draw";
    throw new InputError("controlExplorer", "series", "without readings", advice);
  }
  const parameters = [...new Set(series.map(({ parameter }) => parameter))];
  const height = 1 / parameters.length;
  const layout: { [key: string]: unknown } = {
    xaxis: {
      title: { text: "Strip processed (date)" },
      type: "date",
      anchor: axisName("y", parameters.length - 1),
    },
    height: 120 + 150 * parameters.length,
    margin: { l: 70, r: 20, t: 90, b: 56 },
    legend: { orientation: "h", y: 1, yanchor: "bottom", x: 0 },
    hovermode: "closest",
    shapes: parameters
      .flatMap((parameter, i) => {
        const one = series.find((each) => each.parameter === parameter);
        return one === undefined ? [] : limitShapes(one, axisName("y", i), i === 0);
      })
      .concat(batchChangesOf(series).map(({ t }) => batchShape(t))),
  };
  parameters.forEach((parameter, i) => {
    const name = series.find((one) => one.parameter === parameter)?.name ?? parameter;
    const top = 1 - i * height;
    layout[`yaxis${i === 0 ? "" : i + 1}`] = {
      title: { text: `${name.replace(/ \(.*$/, "")}<br>(density)`, font: { size: 11 } },
      domain: [top - height * 0.86, top],
      zeroline: true,
      tickformat: "+.2f",
    };
  });
  const seen = new Set<string>();
  const data = series.map((one) => {
    const channel = one.colour ?? "neutral";
    const first = !seen.has(channel);
    seen.add(channel);
    return trace(one, axisName("y", parameters.indexOf(one.parameter)), first);
  });
  const beyond = (kind: string) =>
    series.reduce(
      (sum, one) => sum + one.deviations.filter((v) => beyondProcess(one, v) === kind).length,
      0,
    );
  const at = (time: string | undefined) =>
    dayText(chartTime("controlExplorer", "takenAt", time ?? ""));
  const names = parameters.map((p) => series.find((one) => one.parameter === p)?.name ?? p);
  return plotlyFigure({
    title: options.title,
    description: `Control chart to explore, ${at(times[0])} to ${at(times.at(-1))}, deviations from aim in density: ${names.join(", ")}. ${beyond("control")} readings are beyond a control limit of the process, ${beyond("action")} beyond an action limit only.`,
    data,
    layout,
  });
}

function axisName(letter: "y", i: number): string {
  return i === 0 ? letter : `${letter}${i + 1}`;
}

function trace(one: ParameterSeries, yaxis: string, showlegend: boolean): JsonObject {
  const channel = one.colour ?? "neutral";
  const { colour } = palette.channels[channel];
  const digits = densityDigits(one.deviations);
  const name = one.colour ?? "all colours";
  return {
    type: "scatter",
    mode: "lines+markers",
    name,
    legendgroup: name,
    showlegend,
    x: one.takenAt,
    y: one.deviations,
    yaxis,
    line: { color: colour, width: 1.3, dash: dashes[channel] },
    marker: { size: 5, symbol: symbols[channel], color: colour },
    text: one.deviations.map((v) => {
      const limit = beyondProcess(one, v);
      return `${one.name} ${one.colour ?? ""} ${signed(v, digits)}${limit === undefined ? "" : `, beyond the ${limit} limit`}`;
    }),
    hovertemplate: "%{x|%e %b %Y %H:%M}<br>%{text}<extra></extra>",
  };
}

function limitShapes({ limits }: ParameterSeries, yref: string, named: boolean): JsonObject[] {
  const across = { type: "line", xref: "paper", x0: 0, x1: 1, yref };
  return (["action", "control"] as const).flatMap((kind) => {
    const limit: ProcessLimit | null = limits[kind];
    const { colour, width } = lineStyles[kind];
    const line = { color: colour, width, dash: kind === "action" ? "dash" : "solid" };
    const name = `process ${kind} limit`;
    return [limit?.upper, limit?.lower].flatMap((v, i) => {
      if (v === null || v === undefined) return [];
      return [
        { ...across, y0: v, y1: v, line, name, legendgroup: name, showlegend: named && i === 0 },
      ];
    });
  });
}

function batchShape(t: number): JsonObject {
  const x = new Date(t).toISOString().slice(0, 16);
  const line = { color: palette.ink, width: 1.2, dash: "dash" };
  return { type: "line", x0: x, x1: x, yref: "paper", y0: 0, y1: 1, line };
}
