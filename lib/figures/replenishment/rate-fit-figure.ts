import { requireObject } from "../../input/index.ts";
import { type RateTuning, rateAnswer } from "../../replenishment/index.ts";
import { keyView } from "../parts/chart-key.ts";
import { chartTime, minuteText, timeAxis } from "../parts/chart-time.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";
import { parameterMeans, type RateChannel, ratePanelView, stripTimes } from "./rate-panels.ts";

const STRETCH = "#f3d9d4";
const percent = (value: number) => `${value < 0 ? "−" : "+"}${Math.abs(100 * value).toFixed(1)} %`;

/**
 * What a change of the delivered rate looks like on the strips: each parameter, its colours averaged,
 * with the tank's answer fitted, the moment and the stretch in which it lies.
 *
 * @param tuning from `tuneRate`
 * @param options.title what the figure shows; options.channels those of `stripRows`
 * @returns Vega-Lite figure; its text alternative gives error and moment with their intervals
 * @throws InputError if the channels are not those of the strips
 *
 * @example
 * const date = (i: number) => new Date(Date.UTC(2026, 2, 1 + i)).toISOString().slice(0, 10);
 * const readings = Array.from({ length: 60 }, (_, i) => ({ readAt: `${date(i)}T18:00`, counterStrokes: 360 * i, settingMlPerStroke: 5 }));
 * const days = readings.slice(1).map(({ readAt }) => ({ date: readAt.slice(0, 10), areaM2: 3 }));
 * const strips = { at: readings.map(({ readAt }) => readAt), deviations: readings.map((_, i) => [0.004 * Math.sin(5 * i)]) };
 * const tuning = tuneRate({ readings, days, volumeL: 20, strips }, { sensitivity: [0.4] });
 * rateFitFigure(tuning, { title: "Strips", channels: [{ parameter: "ld", colour: "red" }] }).description.includes("no change to speak of") // => true
 */
export function rateFitFigure(
  tuning: RateTuning,
  options: { readonly title: string; readonly channels: readonly RateChannel[] },
): VegaLiteFigure {
  const where = "rateFitFigure";
  requireObject(where, "tuning", tuning, "an object with watch, change, changeAt, …");
  requireObject(where, "options", options, "an object with title and channels");
  const { watch, change } = tuning;
  const { deviations, sensitivity, turnovers } = watch.series;
  const times = stripTimes(where, watch.at);
  const axis = timeAxis(times, "Strip run");
  const [early, late] = tuning.changeAtInterval.map((t) => chartTime(where, "changeAt", t));
  const found = change.finding === "rate changed";
  const moment = chartTime(where, "changeAt", tuning.changeAt);
  const answers = (error: number) =>
    turnovers.map((n) => rateAnswer(error, n - change.changeAtTurnovers));
  const [best, ...ends] = [change.error, ...change.errorInterval].map(answers);
  const means = parameterMeans(where, options.channels, deviations, sensitivity);
  const panels = means.map(({ name, means: values, sensitivity: s }) => {
    const rest = values.map((v, i) => (found ? v - s * (best?.[i] ?? 0) : v));
    const base = rest.reduce((sum, each) => sum + each, 0) / rest.length;
    const at = (answer: readonly number[] | undefined, i: number) =>
      base + (found ? s * (answer?.[i] ?? 0) : 0);
    return {
      name,
      at: times,
      means: values,
      curve: times.map((t, i) => ({ t, v: at(best, i) })),
      ...(found
        ? { band: times.map((t, i) => ({ t, low: at(ends[0], i), high: at(ends[1], i) })) }
        : {}),
      stretches: found ? [{ from: early ?? moment, to: late ?? moment, fill: STRETCH }] : [],
      moments: found ? [{ t: moment, colour: palette.control }] : [],
    };
  });
  const key = [
    { label: "strip, colours averaged", marker: { size: 40, color: palette.series[0] } },
    {
      label: found ? "tank's answer, 95 % of the error" : "mean",
      line: { colour: palette.series[1], dash: [], width: 2.5 },
    },
    ...(found
      ? [
          {
            label: "change",
            line: { colour: palette.control, dash: [4, 3], width: 1.5 },
            upright: true,
          },
          { label: "95 % of its moment", band: STRETCH },
        ]
      : []),
  ];
  const [low, high] = change.errorInterval;
  return vegaLiteFigure({
    title: options.title,
    description: found
      ? `${change.strips} strips over ${change.turnovers.toFixed(1)} tank turnovers. The rate is off by ${percent(change.error)} (${percent(low)} to ${percent(high)}) since ${minuteText(moment)} (${minuteText(early ?? moment)} to ${minuteText(late ?? moment)}).`
      : `${change.strips} strips over ${change.turnovers.toFixed(1)} tank turnovers: ${change.finding}.`,
    specification: {
      spacing: 10,
      vconcat: [
        keyView(key, figureWidth.plot),
        ...panels.map((panel, i) => ratePanelView(panel, axis, i === panels.length - 1)),
      ],
    },
  });
}
