import { requireObject } from "../../input/index.ts";
import type { LoggedSensitivity } from "../../replenishment/index.ts";
import { keyView } from "../parts/chart-key.ts";
import { chartTime, dayText, timeAxis } from "../parts/chart-time.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";
import { parameterMeans, type RateChannel, ratePanelView, stripTimes } from "./rate-panels.ts";

/**
 * A step test: strips while the rate was changed on purpose and set back, with the tank's answer that
 * gives the sensitivity.
 *
 * @param learned from `sensitivityFromLogs`
 * @param options.title what the figure shows; options.channels those of `stripRows`
 * @returns Vega-Lite figure; its text alternative gives the changes and each sensitivity
 * @throws InputError if the channels are not those of the strips
 *
 * @example
 * const date = (i: number) => new Date(Date.UTC(2026, 2, 1 + i)).toISOString().slice(0, 10);
 * const readings = Array.from({ length: 40 }, (_, i) => ({ readAt: `${date(i)}T18:00`, counterStrokes: 360 * i + (i > 9 ? 36 * (i - 9) : 0), settingMlPerStroke: 5 }));
 * const days = readings.slice(1).map(({ readAt }) => ({ date: readAt.slice(0, 10), areaM2: 3 }));
 * const strips = { at: readings.map(({ readAt }) => readAt), deviations: readings.map((_, i) => [(i > 9 ? 0.03 : 0) + 0.001 * (i % 2)]) };
 * const learned = sensitivityFromLogs({ readings, days, volumeL: 20, strips });
 * stepTestFigure(learned, { title: "Step test", channels: [{ parameter: "ld", colour: "red" }] }).description.includes("660 mL/m² from 11 Mar 2026") // => true
 */
export function stepTestFigure(
  learned: LoggedSensitivity,
  options: { readonly title: string; readonly channels: readonly RateChannel[] },
): VegaLiteFigure {
  const where = "stepTestFigure";
  requireObject(
    where,
    "learned",
    learned,
    "an object with sensitivity, sensitivityError, channels, …",
  );
  requireObject(where, "options", options, "an object with title and channels");
  const { deviations, sensitivity, answer, setRateChanges: changes } = learned;
  const times = stripTimes(where, learned.at);
  const last = times.at(-1) ?? 0;
  const axis = timeAxis(times, "Strip run");
  const means = parameterMeans(where, options.channels, deviations, sensitivity);
  const starts = changes.map(({ fromReading }) => chartTime(where, "fromReading", fromReading));
  const stretches = changes.flatMap(({ fraction }, i) => {
    const fill = fraction > 0 ? "#e3ecf7" : "#f6ecdc";
    return Math.abs(fraction) < 0.01
      ? []
      : [{ from: starts[i] ?? last, to: starts[i + 1] ?? last, fill }];
  });
  const panels = means.map(({ name, means: values, sensitivity: s }) => {
    const rest = values.map((v, i) => v - s * (answer[i] ?? 0));
    const base = rest.reduce((sum, each) => sum + each, 0) / rest.length;
    const curve = times.map((t, i) => ({ t, v: base + s * (answer[i] ?? 0) }));
    return { name, at: times, means: values, curve, stretches, moments: [] };
  });
  const told = changes.map(
    ({ mlPerM2 }, i) =>
      `${mlPerM2.toFixed(0)} mL/m² from ${dayText((starts[i] ?? 0) + 43_200_000)}`,
  );
  const sizes = means.map(({ name, sensitivity: s }) => `${name} ${s.toFixed(3)}`);
  return vegaLiteFigure({
    title: options.title,
    description: `Set to ${told.join(", ")}. Density for a rate 100 % higher: ${sizes.join(", ")}.`,
    specification: {
      spacing: 10,
      vconcat: [
        keyView(
          [
            { label: "strip, colours averaged", marker: { size: 40, color: palette.series[0] } },
            { label: "tank's answer", line: { colour: palette.series[1], dash: [], width: 2.5 } },
            ...(stretches.some(({ fill }) => fill === "#e3ecf7")
              ? [{ label: "rate raised", band: "#e3ecf7" }]
              : []),
            ...(stretches.some(({ fill }) => fill !== "#e3ecf7")
              ? [{ label: "rate lowered", band: "#f6ecdc" }]
              : []),
          ],
          figureWidth.plot,
        ),
        ...panels.map((panel, i) => ratePanelView(panel, axis, i === panels.length - 1)),
      ],
    },
  });
}
