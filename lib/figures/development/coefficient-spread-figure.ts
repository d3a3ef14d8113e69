import { publishedFactorSpan, type RateModel } from "../../development/index.ts";
import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { keyView } from "../parts/chart-key.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";

const STEPS = 60;

/**
 * What not knowing the coefficient costs: the corrected time against temperature for all factors
 * per 10 °C met in print, as a band, with the assumed factor and, if given, a model of one's own.
 *
 * @param input.timeMin @param input.atTemperatureC time that is right at a temperature, min and °C
 * @param input.fromC @param input.toC range of the axis, °C, default 4 below to 6 above
 * @param input.model a rate model to compare
 * @param input.title default names time and temperature
 * @returns Vega-Lite figure; its text alternative gives the span at both ends
 * @throws InputError for a range upside down
 *
 * @example
 * coefficientSpreadFigure({ timeMin: 8, atTemperatureC: 20 }).description.includes("from 4.1 to 6.5 min") // => true
 */
export function coefficientSpreadFigure(input: {
  readonly timeMin: number;
  readonly atTemperatureC: number;
  readonly fromC?: number;
  readonly toC?: number;
  readonly model?: RateModel;
  readonly title?: string;
}): VegaLiteFigure {
  const where = "coefficientSpreadFigure";
  requireObject(where, "input", input, "an object with timeMin and atTemperatureC");
  const timeMin = requireNumber(where, "timeMin", input.timeMin, { above: 0, unit: "min" });
  const at = requireNumber(where, "atTemperatureC", input.atTemperatureC, { min: 0, max: 45 });
  const fromC = requireNumber(where, "fromC", input.fromC ?? at - 4, { min: 0, max: 45 });
  const toC = requireNumber(where, "toC", input.toC ?? at + 6, { min: 0, max: 50 });
  if (fromC >= toC) throw new InputError(where, "fromC", fromC, "write fromC below toC");
  const { lowest, highest, assumed } = publishedFactorSpan;
  const time = (factor: number, t: number) => timeMin * factor ** ((at - t) / 10);
  const values = Array.from({ length: STEPS + 1 }, (_, i) => {
    const t = fromC + ((toC - fromC) * i) / STEPS;
    const edges = [time(lowest, t), time(highest, t)];
    return { t, low: Math.min(...edges), high: Math.max(...edges), assumed: time(assumed, t) };
  });
  const { model } = input;
  const own =
    model === undefined
      ? []
      : values
          .filter(({ t }) => t >= model.range.minC && t <= model.range.maxC)
          .map(({ t }) => ({
            t,
            own: (timeMin * model.relativeRate(at)) / model.relativeRate(t),
          }));
  const y = { type: "quantitative", title: "Developing time (min)", scale: { zero: false } };
  const x = {
    field: "t",
    type: "quantitative",
    title: "Temperature (°C)",
    scale: { domain: [fromC, toC], nice: false },
  };
  const span = (t: number) => {
    const edges = [time(lowest, t), time(highest, t)];
    return `at ${t} °C from ${Math.min(...edges).toFixed(1)} to ${Math.max(...edges).toFixed(1)} min`;
  };
  const line = (colour: string, dash: readonly number[]) => ({ colour, dash, width: 2 });
  const key = [
    { label: `factors ${lowest} to ${highest} per 10 °C`, band: palette.band },
    { label: `factor ${assumed} (assumed)`, line: line(palette.ink, [6, 3]) },
    ...(own.length === 0 ? [] : [{ label: "own table", line: line(palette.series[0], []) }]),
  ];
  const drawnLine = (color: string, strokeDash: readonly number[]) => ({
    type: "line",
    color,
    strokeDash,
    strokeWidth: 2,
  });
  return vegaLiteFigure({
    title: input.title ?? `${timeMin} min at ${at} °C, corrected for temperature`,
    description: `A time of ${timeMin} min at ${at} °C becomes, for factors per 10 °C from ${lowest} to ${highest}, ${span(fromC)} and ${span(toC)}.`,
    specification: {
      vconcat: [
        keyView(key, figureWidth.plot),
        {
          width: figureWidth.plot,
          height: 260,
          encoding: { x },
          layer: [
            {
              data: { values },
              mark: { type: "area", color: palette.band },
              encoding: { y: { ...y, field: "low" }, y2: { field: "high" } },
            },
            {
              data: { values },
              mark: drawnLine(palette.ink, [6, 3]),
              encoding: { y: { ...y, field: "assumed" } },
            },
            ...(own.length === 0
              ? []
              : [
                  {
                    data: { values: own },
                    mark: drawnLine(palette.series[0], []),
                    encoding: { y: { ...y, field: "own" } },
                  },
                ]),
          ],
        },
      ],
      spacing: 10,
    },
  });
}
