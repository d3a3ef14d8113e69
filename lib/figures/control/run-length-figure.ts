import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";

/** Run lengths of one chart against the size of a change. */
export interface RunLengthCurve {
  /** Name of the chart: `"EWMA 0.1, 2.7"`. */
  readonly name: string;
  /** Size in standard deviations (of a shift) or standard deviations a reading (of a drift). */
  readonly points: readonly { readonly size: number; readonly readings: number }[];
}

const DASHES = [[], [7, 3], [2, 2], [9, 3, 2, 3], [4, 4], [1, 4]] as const;
const MOST = DASHES.length;
/** Ticks of logarithmic axes: 1, 2 and 5 in every decade. */
const TICKS = Array.from({ length: 10 }, (_, i) => [1, 2, 5].map((v) => v * 10 ** (i - 4))).flat();

/**
 * Readings to the signal against the size of a change, for several charts, on a logarithmic scale;
 * the scale on the right says the same in days.
 *
 * @param curves one for each chart, 1 to 6; sizes and readings greater than 0 (a shift may be 0)
 * @param options.change `"shift"` (axis from the smallest size, linear) or `"drift"` (logarithmic)
 * @param options.stripsPerDay control strips a day, greater than 0
 * @param options.title what the figure shows
 * @returns Vega-Lite figure; its text alternative gives both ends of every curve
 * @throws InputError for no curve, more than six, or a number that has no logarithm
 *
 * @example
 * runLengthFigure([{ name: "3 sigma", points: [{ size: 0, readings: 370 }, { size: 3, readings: 2 }] }], { change: "shift", stripsPerDay: 2 }).description.includes("370 readings (185 days)") // => true
 */
export function runLengthFigure(
  curves: readonly RunLengthCurve[],
  options: {
    readonly change: "shift" | "drift";
    readonly stripsPerDay: number;
    readonly title?: string;
  },
): VegaLiteFigure {
  const where = "runLengthFigure";
  requireEntries(where, "curves", curves);
  requireObject(where, "options", options, "an object with change and stripsPerDay");
  const isDrift = options.change === "drift";
  const perDay = requireNumber(where, "stripsPerDay", options.stripsPerDay, { above: 0 });
  if (curves.length === 0 || curves.length > MOST) {
    throw new InputError(where, "curves", curves.length, `write 1 to ${MOST} curves`);
  }
  const values = curves.flatMap(({ name, points }) =>
    points.map(({ size, readings }) => {
      requireNumber(where, "size", size, isDrift ? { above: 0 } : { min: 0 });
      requireNumber(where, "readings", readings, { above: 0 });
      const days = readings / perDay;
      return { chart: name, size, readings, days, tip: `${name}: ${said(readings, perDay)}` };
    }),
  );
  const lengths = values.map((each) => each.readings);
  const domain = [decadeBelow(Math.min(...lengths)), 1.15 * Math.max(...lengths)] as const;
  const x = {
    field: "size",
    type: "quantitative",
    title: isDrift ? "Drift of the mean (sigma a reading)" : "Shift of the mean (sigma)",
    scale: isDrift ? { type: "log", nice: false } : { nice: false },
    ...(isDrift ? { axis: logAxis("~g") } : {}),
  };
  const log = (factor: number) => ({
    type: "log",
    domain: domain.map((each) => each / factor),
    nice: false,
  });
  const key = { field: "chart", type: "nominal", sort: null, title: null };
  const names = curves.map((each) => each.name);
  const range = palette.series.slice(0, names.length);
  return vegaLiteFigure({
    title: options.title ?? `How soon each chart signals a ${options.change}`,
    description: `${words(curves, options.change)} At ${perDay} strips a day: ${ends(curves, perDay)}.`,
    specification: {
      width: figureWidth.plot,
      height: 300,
      data: { values },
      resolve: { scale: { y: "independent" } },
      layer: [
        {
          mark: { type: "line", strokeWidth: 2.2, interpolate: "monotone" },
          encoding: {
            x,
            y: {
              field: "readings",
              type: "quantitative",
              title: "Readings to the signal (strips)",
              scale: log(1),
              axis: logAxis("~r"),
            },
            color: { ...key, scale: { domain: names, range }, legend: legend(names) },
            strokeDash: { ...key, scale: { domain: names, range: DASHES.slice(0, names.length) } },
          },
        },
        {
          mark: { type: "point", opacity: 0, size: 90 },
          encoding: {
            x,
            y: {
              field: "days",
              type: "quantitative",
              title: `The same in days, ${perDay} strips a day (d)`,
              scale: log(perDay),
              axis: { ...logAxis("~r"), orient: "right", grid: false },
            },
            tooltip: { field: "tip", type: "nominal" },
          },
        },
      ],
    },
  });
}

/** Long names stand in fewer columns. */
function legend(names: readonly string[]) {
  const longest = Math.max(...names.map((name) => name.length));
  return {
    columns: longest > 26 ? 2 : 3,
    labelLimit: 300,
    symbolStrokeWidth: 2.2,
    symbolSize: 300,
  };
}

function logAxis(format: string) {
  return { values: TICKS, format, labelOverlap: true };
}

function decadeBelow(value: number): number {
  return value < 1.2 ? 0.9 : value / 1.25;
}

function words(curves: readonly RunLengthCurve[], change: string): string {
  return `Average readings to the signal against the size of a ${change}, for ${curves.length} charts.`;
}

function ends(curves: readonly RunLengthCurve[], perDay: number): string {
  return curves
    .map(({ name, points }) => {
      const [first, last] = [points[0], points.at(-1)];
      if (first === undefined || last === undefined) return `${name} has no point`;
      const at = (p: typeof first) =>
        `${said(p.readings, perDay)} at ${Number(p.size.toPrecision(3))}`;
      return `${name}: ${at(first)}, ${at(last)}`;
    })
    .join("; ");
}

function said(readings: number, perDay: number): string {
  const short = (v: number) => Number(v.toPrecision(3));
  const days = short(readings / perDay);
  return `${short(readings)} readings (${days} ${days === 1 ? "day" : "days"})`;
}
