import { InputError, requireObject } from "../../input/index.ts";
import { type RateTuning, rateAnswer } from "../../replenishment/index.ts";
import { keyView } from "../parts/chart-key.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";
import { parameterMeans, type RateChannel } from "./rate-panels.ts";

const DAY_MS = 86_400_000;
const LOOK_BACK_DAYS = 14;
const signed = (v: number) => `${v < 0 ? "−" : "+"}${Math.abs(v).toFixed(3)}`;

/**
 * The way back after the advised setting, in one parameter: the strips of the last fortnight, what is
 * expected with the new setting, what without, and the process's limits.
 *
 * @param tuning from `tuneRate`
 * @param options.title what the figure shows; options.channels those of `stripRows`;
 *   options.parameter which one, default that of the first channel; options.limits densities to draw as
 *   lines, such as `{ "action limit": -0.06 }`
 * @returns Vega-Lite figure; its text alternative gives today's and the expected deviations
 * @throws InputError for a parameter that is not among the channels, or an advice without days
 *
 * @example
 * const date = (i: number) => new Date(Date.UTC(2026, 2, 1 + i)).toISOString().slice(0, 10);
 * const readings = Array.from({ length: 60 }, (_, i) => ({ readAt: `${date(i)}T18:00`, counterStrokes: 360 * i, settingMlPerStroke: 5 }));
 * const days = readings.slice(1).map(({ readAt }) => ({ date: readAt.slice(0, 10), areaM2: 3 }));
 * const strips = { at: readings.map(({ readAt }) => readAt), deviations: readings.map((_, i) => [0.004 * Math.sin(5 * i)]) };
 * const tuning = tuneRate({ readings, days, volumeL: 20, strips }, { sensitivity: [0.4] });
 * ratePathFigure(tuning, { title: "The way back", channels: [{ parameter: "ld", colour: "red" }] }).kind // => "vega-lite"
 */
export function ratePathFigure(
  tuning: RateTuning,
  options: {
    readonly title: string;
    readonly channels: readonly RateChannel[];
    readonly parameter?: string;
    readonly limits?: Readonly<Record<string, number>>;
  },
): VegaLiteFigure {
  const where = "ratePathFigure";
  requireObject(where, "tuning", tuning, "an object with watch, change, changeAt, …");
  requireObject(where, "options", options, "an object with title and channels");
  const { watch, change, advice } = tuning;
  const { deviations, sensitivity, turnovers } = watch.series;
  const means = parameterMeans(where, options.channels, deviations, sensitivity);
  const chosen = means.find(({ parameter }) => parameter === options.parameter) ?? means[0];
  if (chosen === undefined || (options.parameter ?? chosen.parameter) !== chosen.parameter) {
    const advised = `write one of ${means.map(({ parameter }) => parameter).join(", ")}`;
    throw new InputError(where, "parameter", options.parameter, advised);
  }
  const s = chosen.sensitivity;
  const end = Date.parse(`${watch.at.at(-1)}Z`);
  const fitted = turnovers.map((n) => rateAnswer(change.error, n - change.changeAtTurnovers));
  const rest = chosen.means.map((v, i) => v - s * (fitted[i] ?? 0));
  const base = rest.reduce((sum, each) => sum + each, 0) / rest.length;
  const strips = watch.at
    .map((at, i) => ({ day: (Date.parse(`${at}Z`) - end) / DAY_MS, v: chosen.means[i] ?? 0 }))
    .filter(({ day }) => day >= -LOOK_BACK_DAYS);
  const path = advice.path.map(({ days = 0, expected, low, high }) => ({
    day: days,
    v: base + s * expected,
    low: base + s * Math.min(low, high),
    high: base + s * Math.max(low, high),
  }));
  const since = (turnovers.at(-1) ?? 0) - change.changeAtTurnovers;
  const untouched = advice.path.map(({ days = 0, turnovers: n }) => ({
    day: days,
    v: base + s * rateAnswer(change.error, since + n),
  }));
  const lines = Object.entries(options.limits ?? {}).map(([name, v]) => ({ name, v }));
  const x = {
    field: "day",
    type: "quantitative",
    title: "From the last strip on, at the load of the last four weeks (days)",
    scale: { nice: false },
  };
  const y = {
    field: "v",
    type: "quantitative",
    title: [chosen.name, "(density, mean of colours)"],
    scale: { zero: true },
    axis: { format: "+.2f", tickCount: 6 },
  };
  const [now, later] = [path[0], path.at(-1)];
  return vegaLiteFigure({
    title: options.title,
    description: `${chosen.name} stands at ${signed(now?.v ?? 0)}; with ${advice.newRateMlPerM2.toFixed(0)} mL/m² it is expected at ${signed(later?.v ?? 0)} after ${later?.day.toFixed(0)} days (${signed(later?.low ?? 0)} to ${signed(later?.high ?? 0)}), left alone at ${signed(untouched.at(-1)?.v ?? 0)}.`,
    specification: {
      spacing: 10,
      vconcat: [
        keyView(
          [
            { label: "strip", marker: { size: 40, color: palette.series[0] } },
            { label: "expected, 95 %", line: { colour: palette.series[2], dash: [], width: 2.5 } },
            {
              label: "if nothing is done",
              line: { colour: palette.series[1], dash: [6, 3], width: 2 },
            },
            ...(lines.length === 0
              ? []
              : [{ label: "limit", line: { colour: palette.action, dash: [8, 4], width: 1.4 } }]),
          ],
          figureWidth.plot,
        ),
        {
          width: figureWidth.plot,
          height: 230,
          layer: [
            {
              data: { values: path },
              mark: { type: "area", color: palette.series[2], opacity: 0.25 },
              encoding: { x, y: { ...y, field: "low" }, y2: { field: "high" } },
            },
            ...lines.flatMap((line) => [
              {
                data: { values: [line] },
                mark: { type: "rule", color: palette.action, strokeDash: [8, 4] },
                encoding: { y },
              },
              {
                data: { values: [line] },
                mark: {
                  type: "text",
                  align: "right",
                  x: figureWidth.plot - 4,
                  dy: -6,
                  color: palette.action,
                },
                encoding: { y, text: { field: "name" } },
              },
            ]),
            {
              data: { values: strips },
              mark: { type: "point", size: 24, color: palette.series[0], opacity: 0.75 },
              encoding: { x, y },
            },
            {
              data: { values: untouched },
              mark: { type: "line", color: palette.series[1], strokeDash: [6, 3], strokeWidth: 2 },
              encoding: { x, y },
            },
            {
              data: { values: path },
              mark: { type: "line", color: palette.series[2], strokeWidth: 2.5 },
              encoding: { x, y },
            },
          ],
        },
      ],
    },
  });
}
