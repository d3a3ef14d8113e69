import { InputError } from "../../input/index.ts";
import { chartTime, type TimeAxis, timeChannel } from "../parts/chart-time.ts";
import type { JsonObject } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";

/** The channels of strips: which columns belong to which parameter. */
export interface RateChannel {
  readonly parameter: string;
  readonly colour: string;
  /** The trade's name; default the parameter's id. */
  readonly name?: string;
}

/** One parameter, its colours averaged. */
export interface ParameterMean {
  readonly parameter: string;
  readonly name: string;
  readonly means: readonly number[];
  readonly sensitivity: number;
}

const NAMES: Readonly<Record<string, string>> = {
  dMin: "D-min",
  ld: "LD (speed)",
  hdLessLd: "HD − LD (contrast)",
  dMax: "D-max",
};

/** Means over the colours of each parameter, in the order of the channels. */
export function parameterMeans(
  where: string,
  channels: readonly RateChannel[],
  deviations: readonly (readonly number[])[],
  sensitivity: readonly number[],
): readonly ParameterMean[] {
  if (channels.length !== sensitivity.length || channels.length === 0) {
    const advice = `write ${sensitivity.length} channels, those of stripRows`;
    throw new InputError(where, "channels", channels.length, advice);
  }
  return [...new Set(channels.map(({ parameter }) => parameter))].map((parameter) => {
    const columns = channels.flatMap((each, i) => (each.parameter === parameter ? [i] : []));
    const mean = (row: readonly number[]) =>
      columns.reduce((sum, i) => sum + (row[i] ?? 0), 0) / columns.length;
    const named = channels.find((each) => each.parameter === parameter)?.name;
    return {
      parameter,
      name: named ?? NAMES[parameter] ?? parameter,
      means: deviations.map(mean),
      sensitivity: mean(sensitivity),
    };
  });
}

/** What a panel of strips and a fitted curve is drawn from. */
export interface RatePanel {
  readonly name: string;
  readonly at: readonly number[];
  readonly means: readonly number[];
  readonly curve: readonly { readonly t: number; readonly v: number }[];
  readonly band?: readonly { readonly t: number; readonly low: number; readonly high: number }[];
  readonly stretches: readonly {
    readonly from: number;
    readonly to: number;
    readonly fill: string;
  }[];
  readonly moments: readonly { readonly t: number; readonly colour: string }[];
}

/** One panel: shaded stretches, upright moments, strips, the curve with its band. */
export function ratePanelView(panel: RatePanel, axis: TimeAxis, last: boolean): JsonObject {
  const x = timeChannel(axis, last);
  const y = {
    type: "quantitative",
    title: [panel.name, "(density)"],
    scale: { zero: false },
    axis: { format: "+.2f", tickCount: 5 },
  };
  return {
    width: figureWidth.plot,
    height: 150,
    layer: [
      ...panel.stretches.map((stretch) => ({
        data: { values: [stretch] },
        mark: { type: "rect", color: stretch.fill },
        encoding: { x: { ...x, field: "from" }, x2: { field: "to" } },
      })),
      ...panel.moments.map(({ t, colour }) => ({
        data: { values: [{ t }] },
        mark: { type: "rule", color: colour, strokeDash: [4, 3], strokeWidth: 1.5 },
        encoding: { x },
      })),
      {
        data: { values: panel.at.map((t, i) => ({ t, v: panel.means[i] ?? 0 })) },
        mark: { type: "point", size: 20, color: palette.series[0], opacity: 0.75 },
        encoding: { x, y: { ...y, field: "v" } },
      },
      ...(panel.band === undefined
        ? []
        : [
            {
              data: { values: panel.band },
              mark: { type: "area", color: palette.series[1], opacity: 0.3 },
              encoding: { x, y: { ...y, field: "low" }, y2: { field: "high" } },
            },
          ]),
      {
        data: { values: panel.curve },
        mark: { type: "line", color: palette.series[1], strokeWidth: 2.5 },
        encoding: { x, y: { ...y, field: "v" } },
      },
    ],
  };
}

/** Times of strips for an axis, checked. */
export function stripTimes(where: string, at: readonly string[]): readonly number[] {
  if (at.length < 2) throw new InputError(where, "strips", at.length, "write at least two");
  return at.map((time) => chartTime(where, "at", time));
}
