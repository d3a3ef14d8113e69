import type { ChangePoint } from "../../control/index.ts";
import { InputError, requireObject } from "../../input/index.ts";
import { keyView } from "../parts/chart-key.ts";
import { chartTime, minuteText, signed, timeAxis, timeChannel } from "../parts/chart-time.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";

/**
 * A series with its change of level: the mean before and after, the moment, and the stretch in which
 * the moment lies with 95 %.
 *
 * @param series `takenAt` local times in order, and `values`, deviations in density
 * @param change from `changePoint` for the same values
 * @param options.title what the figure shows
 * @returns Vega-Lite figure; its text alternative gives moment, interval, levels and confidence
 * @throws InputError if times and values differ in length, or the change is not within them
 *
 * @example
 * const values = [1, 2, 1, 2, 1, 2, 5, 6, 5, 6, 5, 6];
 * const takenAt = values.map((_, i) => `2026-03-${String(i + 1).padStart(2, "0")}T08:00`);
 * changePointFigure({ takenAt, values }, changePoint(values), { title: "LD" }).description.includes("7 Mar 08:00") // => true
 */
export function changePointFigure(
  series: { readonly takenAt: readonly string[]; readonly values: readonly number[] },
  change: ChangePoint,
  options: { readonly title: string },
): VegaLiteFigure {
  const where = "changePointFigure";
  requireObject(where, "series", series, "an object with takenAt and values");
  requireObject(where, "change", change, "an object with firstAfter, k, pValue, …");
  requireObject(where, "options", options, "an object with title");
  const { values } = series;
  if (series.takenAt.length !== values.length) {
    throw new InputError(where, "takenAt", series.takenAt.length, `write ${values.length} times`);
  }
  const times = series.takenAt.map((time) => chartTime(where, "takenAt", time));
  const [moment, first, last] = [times[change.firstAfter], times[0], times.at(-1)];
  if (moment === undefined || first === undefined || last === undefined) {
    throw new InputError(where, "change", change.firstAfter, "compute it from these values");
  }
  const [low, high] = change.firstAfterInterval.map((i) => times[i] ?? last) as [number, number];
  const before = times[change.firstAfter - 1] ?? first;
  const levels = [
    { from: first, to: (before + moment) / 2, v: change.meanBefore },
    { from: (before + moment) / 2, to: last, v: change.meanAfter },
  ];
  const x = timeChannel(timeAxis(times, "Strip run"), true);
  const y = { type: "quantitative", title: "Deviation from aim (density)", scale: { zero: false } };
  const ink = palette.series[1];
  const sure = `confidence ${(100 * change.confidence).toFixed(change.confidence > 0.995 ? 1 : 0)} %`;
  return vegaLiteFigure({
    title: options.title,
    description: `The level moves from ${signed(change.meanBefore, 3)} to ${signed(change.meanAfter, 3)} at ${minuteText(moment)} (95 %: ${minuteText(low)} to ${minuteText(high)}), ${sure}.`,
    specification: {
      vconcat: [
        keyView(
          [
            { label: "mean before and after", line: { colour: ink, dash: [], width: 2.5 } },
            {
              label: "first reading after",
              line: { colour: palette.control, dash: [4, 3], width: 1.5 },
              upright: true,
            },
            { label: "95 % of the moment", band: "#f3d9d4" },
          ],
          figureWidth.plot,
        ),
        {
          width: figureWidth.plot,
          height: 220,
          layer: [
            {
              data: { values: [{ from: low, to: high }] },
              mark: { type: "rect", color: "#f3d9d4" },
              encoding: { x: { ...x, field: "from" }, x2: { field: "to" } },
            },
            {
              data: { values: [{ t: moment }] },
              mark: { type: "rule", color: palette.control, strokeDash: [4, 3], strokeWidth: 1.5 },
              encoding: { x },
            },
            {
              data: { values: times.map((t, i) => ({ t, v: values[i] ?? 0 })) },
              mark: { type: "point", size: 24, color: palette.series[0] },
              encoding: { x, y: { ...y, field: "v" } },
            },
            {
              data: { values: levels },
              mark: { type: "rule", color: ink, strokeWidth: 2.5 },
              encoding: {
                x: { ...x, field: "from" },
                x2: { field: "to" },
                y: { ...y, field: "v" },
              },
            },
          ],
        },
      ],
      spacing: 10,
    },
  });
}
