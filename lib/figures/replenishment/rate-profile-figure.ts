import { requireObject } from "../../input/index.ts";
import { momentAtTurnovers, type RateProfile, type RateTuning } from "../../replenishment/index.ts";
import { chartTime, minuteText, timeAxis, timeChannel } from "../parts/chart-time.ts";
import { type JsonObject, type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";

const LEAST_HEIGHT = 15;
const percent = (value: number) => `${value < 0 ? "−" : "+"}${Math.abs(100 * value).toFixed(1)} %`;

/**
 * The likelihood of the error and of the moment: how much worse each fits than the best, in residual
 * variances, with the interval that `rateChange` gives.
 *
 * @param profile from `rateProfile` for the same strips
 * @param tuning from `tuneRate`
 * @param options.title what the figure shows
 * @returns Vega-Lite figure; its text alternative gives best values and intervals
 * @throws InputError if the strips have no times
 *
 * @example
 * const date = (i: number) => new Date(Date.UTC(2026, 2, 1 + i)).toISOString().slice(0, 10);
 * const readings = Array.from({ length: 60 }, (_, i) => ({ readAt: `${date(i)}T18:00`, counterStrokes: 360 * i, settingMlPerStroke: 5 }));
 * const days = readings.slice(1).map(({ readAt }) => ({ date: readAt.slice(0, 10), areaM2: 3 }));
 * const strips = { at: readings.map(({ readAt }) => readAt), deviations: readings.map((_, i) => [0.004 * Math.sin(5 * i)]) };
 * const tuning = tuneRate({ readings, days, volumeL: 20, strips }, { sensitivity: [0.4] });
 * rateProfileFigure(rateProfile(tuning.watch.series), tuning, { title: "Likelihood" }).kind // => "vega-lite"
 */
export function rateProfileFigure(
  profile: RateProfile,
  tuning: RateTuning,
  options: { readonly title: string },
): VegaLiteFigure {
  const where = "rateProfileFigure";
  requireObject(where, "profile", profile, "an object with byError, byMoment, errors, …");
  requireObject(where, "tuning", tuning, "an object with watch, change, changeAt, …");
  requireObject(where, "options", options, "an object with title");
  const { watch, change } = tuning;
  const strips = { at: watch.at, turnovers: watch.series.turnovers };
  const timeOf = (n: number) => chartTime(where, "at", momentAtTurnovers(strips, n));
  const byMoment = profile.byMoment.map(({ turnovers, ratio }) => ({
    t: timeOf(turnovers),
    ratio,
  }));
  const byError = profile.byError.map(({ error, ratio }) => ({ percent: 100 * error, ratio }));
  const [low, high] = change.errorInterval;
  const [early, late] = change.changeAtInterval.map(timeOf) as [number, number];
  const best = timeOf(change.changeAtTurnovers);
  const shown = [...byMoment.map(({ t }) => t), early, late];
  return vegaLiteFigure({
    title: options.title,
    description: `Best error ${percent(change.error)}, interval ${percent(low)} to ${percent(high)}; best moment ${minuteText(best)}, interval ${minuteText(early)} to ${minuteText(late)}. Both curves rise on either side of the best.`,
    specification: {
      spacing: 18,
      vconcat: [
        panel(
          byError,
          {
            field: "percent",
            type: "quantitative",
            title: "Error of the delivered rate (%)",
            scale: { zero: false, nice: false },
          },
          { low: 100 * low, high: 100 * high, best: 100 * change.error },
          heightFor(
            byError
              .filter((each) => each.percent >= 100 * low && each.percent <= 100 * high)
              .map(({ ratio }) => ratio),
          ),
        ),
        panel(
          byMoment,
          timeChannel(timeAxis(shown, "Moment of the change"), true),
          { low: early, high: late, best },
          heightFor(byMoment.filter(({ t }) => t >= early && t <= late).map(({ ratio }) => ratio)),
        ),
      ],
    },
  });
}

/** High enough to show the curve on either side of its interval. */
function heightFor(ratios: readonly number[]): number {
  return Math.max(LEAST_HEIGHT, 1.5 * Math.max(0, ...ratios));
}

function panel(
  values: readonly object[],
  x: JsonObject,
  at: { readonly low: number; readonly high: number; readonly best: number },
  height: number,
): JsonObject {
  const y = {
    field: "ratio",
    type: "quantitative",
    title: ["Worse than best", "(variances)"],
    scale: { domain: [0, height] },
  };
  return {
    width: figureWidth.plot,
    height: 140,
    layer: [
      {
        data: { values: [at] },
        mark: { type: "rect", color: palette.band, clip: true },
        encoding: { x: { ...x, field: "low" }, x2: { field: "high" } },
      },
      {
        data: { values: [at] },
        mark: { type: "rule", color: palette.control, strokeDash: [4, 3], strokeWidth: 1.5 },
        encoding: { x: { ...x, field: "best" } },
      },
      { data: { values }, mark: { type: "line", clip: true }, encoding: { x, y } },
    ],
  };
}
