import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import type { RateEstimate, RateTuning } from "../../replenishment/index.ts";
import { keyView } from "../parts/chart-key.ts";
import { chartTime, minuteText, timeAxis, timeChannel } from "../parts/chart-time.ts";
import { type JsonObject, type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";

const percent = (value: number) => `${value < 0 ? "−" : "+"}${Math.abs(100 * value).toFixed(1)} %`;

/**
 * The error as it was known after every strip, above the test by which it was told apart from nothing:
 * on which day one would have known, and how well.
 *
 * @param estimates from `sequentialRateChange` for the same strips
 * @param tuning from `tuneRate`
 * @param options.title what the figure shows; options.from first day drawn; default the first look
 * @returns Vega-Lite figure; its text alternative gives the day of the alarm and the last estimate
 * @throws InputError if no estimate is left to draw
 *
 * @example
 * const date = (i: number) => new Date(Date.UTC(2026, 2, 1 + i)).toISOString().slice(0, 10);
 * const readings = Array.from({ length: 60 }, (_, i) => ({ readAt: `${date(i)}T18:00`, counterStrokes: 360 * i, settingMlPerStroke: 5 }));
 * const days = readings.slice(1).map(({ readAt }) => ({ date: readAt.slice(0, 10), areaM2: 3 }));
 * const strips = { at: readings.map(({ readAt }) => readAt), deviations: readings.map((_, i) => [0.004 * Math.sin(5 * i)]) };
 * const tuning = tuneRate({ readings, days, volumeL: 20, strips }, { sensitivity: [0.4] });
 * rateSequenceFigure(sequentialRateChange(tuning.watch.series), tuning, { title: "Strip by strip" }).description.includes("no alarm") // => true
 */
export function rateSequenceFigure(
  estimates: readonly RateEstimate[],
  tuning: RateTuning,
  options: { readonly title: string; readonly from?: string },
): VegaLiteFigure {
  const where = "rateSequenceFigure";
  const { watch, alarm, change } = requireObject(where, "tuning", tuning, "what tuneRate gives");
  const timeOf = (strip: number) => chartTime(where, "at", watch.at[strip] ?? "");
  const firstLook = alarm.ratios[0]?.strip ?? 0;
  const from = requireObject(where, "options", options).from ?? watch.at[firstLook] ?? "";
  const drawn = requireEntries(where, "estimates", estimates).filter(
    ({ strip }) => (watch.at[strip] ?? "") >= from,
  );
  const ratios = alarm.ratios.filter(({ strip }) => (watch.at[strip] ?? "") >= from);
  const last = drawn.at(-1);
  if (last === undefined || drawn.length < 2) {
    throw new InputError(where, "from", from, "write a day with at least two strips after it");
  }
  const times = drawn.map(({ strip }) => timeOf(strip));
  const axis = timeAxis(times, "Strip run");
  const clip = (value: number) => Math.min(60, Math.max(-60, 100 * value));
  const values = drawn.map(({ error, errorInterval }, i) => ({
    t: times[i],
    error: clip(error),
    low: clip(errorInterval[0]),
    high: clip(errorInterval[1]),
  }));
  const told = tuning.toldAt === null ? null : chartTime(where, "toldAt", tuning.toldAt);
  const began = chartTime(where, "changeAt", tuning.changeAt);
  const found = change.finding === "rate changed";
  const marks = [
    ...(found && tuning.changeAt >= from ? [{ t: began, colour: palette.control }] : []),
    ...(told === null ? [] : [{ t: told, colour: palette.series[2] }]),
  ];
  const marksOn = (x: JsonObject) =>
    marks.map(({ t, colour }) => ({
      data: { values: [{ t }] },
      mark: { type: "rule", color: colour, strokeDash: [4, 3], strokeWidth: 1.8 },
      encoding: { x },
    }));
  const top = timeChannel(axis, false);
  const bottom = timeChannel(axis, true);
  const error = {
    type: "quantitative",
    title: ["Error of the rate", "as known that day (%)"],
    scale: { domain: [-60, 60] },
  };
  const ratio = {
    field: "ratio",
    type: "quantitative",
    title: ["How plain", "(variances)"],
    scale: { type: "symlog", constant: 10, nice: true },
    axis: { values: [0, 20, 100, 400, 2000] },
  };
  return vegaLiteFigure({
    title: options.title,
    description: `${told === null ? "The strips raised no alarm" : `The alarm fell with the strip of ${minuteText(told)}`} (threshold ${alarm.threshold.toFixed(1)} residual variances). Known after the last strip: ${percent(last.error)} (${percent(last.errorInterval[0])} to ${percent(last.errorInterval[1])}).`,
    specification: {
      spacing: 12,
      vconcat: [
        keyView(
          [
            {
              label: "best so far, 95 %",
              line: { colour: palette.series[0], dash: [], width: 2 },
            },
            ...(found
              ? [
                  {
                    label: "change, as known now",
                    line: { colour: palette.control, dash: [4, 3], width: 1.8 },
                    upright: true,
                  },
                ]
              : []),
            ...(told === null
              ? []
              : [
                  {
                    label: "alarm",
                    line: { colour: palette.series[2], dash: [4, 3], width: 1.8 },
                    upright: true,
                  },
                ]),
            { label: "threshold", line: { colour: palette.statistical, dash: [2, 3], width: 2 } },
          ],
          figureWidth.plot,
        ),
        {
          width: figureWidth.plot,
          height: 170,
          layer: [
            {
              data: { values },
              mark: { type: "area", color: palette.series[0], opacity: 0.2 },
              encoding: { x: top, y: { ...error, field: "low" }, y2: { field: "high" } },
            },
            {
              data: { values },
              mark: { type: "line", color: palette.series[0] },
              encoding: { x: top, y: { ...error, field: "error" } },
            },
            ...marksOn(top),
          ],
        },
        {
          width: figureWidth.plot,
          height: 120,
          layer: [
            {
              data: { values: [{ ratio: alarm.threshold }] },
              mark: {
                type: "rule",
                color: palette.statistical,
                strokeDash: [2, 3],
                strokeWidth: 2,
              },
              encoding: { y: ratio },
            },
            {
              data: {
                values: ratios.map((each) => ({ t: timeOf(each.strip), ratio: each.ratio })),
              },
              mark: { type: "line", color: palette.series[4] },
              encoding: { x: bottom, y: ratio },
            },
            ...marksOn(bottom),
          ],
        },
      ],
    },
  });
}
