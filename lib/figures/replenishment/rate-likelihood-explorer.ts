import { requireObject } from "../../input/index.ts";
import { momentAtTurnovers, type RateProfile, type RateTuning } from "../../replenishment/index.ts";
import { type PlotlyFigure, plotlyFigure } from "../parts/figure.ts";
import { palette } from "../parts/theme.ts";

const WORST = 40;
const percent = (value: number) => `${value < 0 ? "−" : "+"}${Math.abs(100 * value).toFixed(1)} %`;

/**
 * Every pair of error and moment with how much worse it fits than the best, to explore: a long slanting
 * valley means that a small early change and a large late one can hardly be told apart.
 *
 * @param profile from `rateProfile` for the same strips
 * @param tuning from `tuneRate`
 * @param options.title what the figure shows
 * @returns Plotly figure; its text alternative gives the best pair
 *
 * @example
 * const date = (i: number) => new Date(Date.UTC(2026, 2, 1 + i)).toISOString().slice(0, 10);
 * const readings = Array.from({ length: 60 }, (_, i) => ({ readAt: `${date(i)}T18:00`, counterStrokes: 360 * i, settingMlPerStroke: 5 }));
 * const days = readings.slice(1).map(({ readAt }) => ({ date: readAt.slice(0, 10), areaM2: 3 }));
 * const strips = { at: readings.map(({ readAt }) => readAt), deviations: readings.map((_, i) => [0.004 * Math.sin(5 * i)]) };
 * const tuning = tuneRate({ readings, days, volumeL: 20, strips }, { sensitivity: [0.4] });
 * rateLikelihoodExplorer(rateProfile(tuning.watch.series), tuning, { title: "Which pairs fit" }).kind // => "plotly"
 */
export function rateLikelihoodExplorer(
  profile: RateProfile,
  tuning: RateTuning,
  options: { readonly title: string },
): PlotlyFigure {
  requireObject("rateLikelihoodExplorer", "options", options, "an object with title");
  requireObject(
    "rateLikelihoodExplorer",
    "profile",
    profile,
    "an object with byError, byMoment, errors, …",
  );
  requireObject(
    "rateLikelihoodExplorer",
    "tuning",
    tuning,
    "an object with watch, change, changeAt, …",
  );
  const { watch, change } = tuning;
  const strips = { at: watch.at, turnovers: watch.series.turnovers };
  const x = profile.moments.map((n) => momentAtTurnovers(strips, n).replace("T", " "));
  const z = profile.surface.map((row) =>
    row.map((each) => Number(Math.min(WORST, each).toPrecision(4))),
  );
  return plotlyFigure({
    title: options.title,
    description: `The best pair is an error of ${percent(change.error)} since ${tuning.changeAt.replace("T", " ")}; dark pairs fit about as well, light ones do not.`,
    data: [
      {
        type: "heatmap",
        x,
        y: profile.errors.map((error) => Number((100 * error).toPrecision(4))),
        z,
        zmin: 0,
        zmax: WORST,
        colorscale: [
          [0, palette.series[0]],
          [0.1, palette.series[5]],
          [1, "#f4f4f4"],
        ],
        colorbar: { title: { text: "worse (variances)", side: "right" }, thickness: 14 },
        hovertemplate: "%{x}<br>error %{y:.1f} %<br>%{z:.1f} variances worse<extra></extra>",
      },
      {
        type: "scatter",
        mode: "markers",
        x: [tuning.changeAt.replace("T", " ")],
        y: [Number((100 * change.error).toPrecision(4))],
        marker: { symbol: "x", size: 11, color: palette.control },
        hovertemplate: "best: %{y:.1f} %<extra></extra>",
        showlegend: false,
      },
    ],
    layout: {
      xaxis: { title: { text: "Moment of the change (date)" }, type: "date" },
      yaxis: { title: { text: "Error of the delivered rate (%)" } },
    },
  });
}
