import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { keyView } from "../parts/chart-key.ts";
import { type VegaLiteFigure, vegaLiteFigure } from "../parts/figure.ts";
import { figureWidth, palette } from "../parts/theme.ts";

/** Monte Carlo errors that the whiskers reach. */
const REACH = 2;

/**
 * Simulated run lengths beside the computed distribution: bars are the share of runs that signalled
 * in each stretch of readings, points what theory expects, whiskers two Monte Carlo errors.
 *
 * @param runLengths simulated run lengths, at least 10
 * @param signalledBy computed probability of a signal by reading 1, 2, …
 * @param options.title what the figure shows
 * @param options.binReadings readings in a bar, a whole number; chosen for some 20 bars if left out
 * @returns Vega-Lite figure; its text alternative compares mean and median, and counts the bars
 *   beyond their whiskers (one in twenty is to be expected)
 * @throws InputError for too few runs or an empty distribution
 *
 * @example
 * runLengthDistributionFigure(Array.from({ length: 40 }, (_, i) => 1 + (i % 4)), [0.25, 0.5, 0.75, 1], { title: "Even" }).kind // => "vega-lite"
 */
export function runLengthDistributionFigure(
  runLengths: readonly number[],
  signalledBy: readonly number[],
  options: { readonly title: string; readonly binReadings?: number },
): VegaLiteFigure {
  const where = "runLengthDistributionFigure";
  requireEntries(where, "runLengths", runLengths, "a list of numbers");
  requireEntries(where, "signalledBy", signalledBy, "a list of numbers");
  requireObject(where, "options", options, "an object with title");
  const runs = requireNumber(where, "number of runs", runLengths.length, { min: 10 });
  if (signalledBy.length === 0) {
    throw new InputError(where, "signalledBy", [], "write the probabilities by reading");
  }
  const sorted = runLengths.toSorted((a, b) => a - b);
  const shown = Math.min(signalledBy.length, sorted[Math.ceil(0.99 * runs) - 1] ?? 1);
  const bin = requireNumber(where, "binReadings", options.binReadings ?? Math.ceil(shown / 22), {
    min: 1,
    whole: true,
  });
  const bars = Array.from({ length: Math.floor(shown / bin) }, (_, i) => {
    const [after, upTo] = [i * bin, (i + 1) * bin];
    const share = sorted.filter((n) => n > after && n <= upTo).length / runs;
    const theory = (signalledBy[upTo - 1] ?? 1) - (after === 0 ? 0 : (signalledBy[after - 1] ?? 1));
    const reach = REACH * Math.sqrt((theory * (1 - theory)) / runs);
    return {
      from: after + 0.5,
      to: upTo + 0.5,
      middle: (after + upTo + 1) / 2,
      share: 100 * share,
      theory: 100 * theory,
      low: 100 * Math.max(0, theory - reach),
      high: 100 * (theory + reach),
    };
  });
  const beyond = bars.filter(({ share, low, high }) => share < low || share > high).length;
  const half = signalledBy.findIndex((p) => p >= 0.5) + 1;
  const medians = `median ${sorted[Math.ceil(runs / 2) - 1]}${half > 0 ? `, computed ${half}` : ""}`;
  const mean = runLengths.reduce((sum, n) => sum + n, 0) / runs;
  const y = { type: "quantitative", title: "Share of the runs (%)" };
  const wide = [0.5, bars.length * bin + 0.5];
  const x = {
    type: "quantitative",
    title: "Readings to the signal (strips)",
    scale: { domain: wide, nice: false },
  };
  const dot = { type: "point", shape: "diamond", size: 45, color: palette.series[1] };
  return vegaLiteFigure({
    title: options.title,
    description: `${runs} simulated runs, mean ${mean.toPrecision(4)} readings, ${medians}. ${beyond} of ${bars.length} bars lie beyond two Monte Carlo errors of theory.`,
    specification: {
      vconcat: [
        keyView(
          [
            { label: `simulated, ${runs} runs`, band: palette.series[5] },
            { label: "computed", marker: dot },
            {
              label: "two Monte Carlo errors",
              line: { colour: palette.series[1], dash: [], width: 1.5 },
              upright: true,
            },
          ],
          figureWidth.plot,
        ),
        {
          width: figureWidth.plot,
          height: 240,
          data: { values: bars },
          layer: [
            {
              mark: { type: "rect", color: palette.series[5], stroke: "white" },
              encoding: {
                x: { ...x, field: "from" },
                x2: { field: "to" },
                y: { ...y, field: "share" },
                y2: { datum: 0 },
              },
            },
            {
              mark: { type: "rule", color: palette.series[1], strokeWidth: 1.5 },
              encoding: {
                x: { ...x, field: "middle" },
                y: { ...y, field: "low" },
                y2: { field: "high" },
              },
            },
            {
              mark: dot,
              encoding: { x: { ...x, field: "middle" }, y: { ...y, field: "theory" } },
            },
          ],
        },
      ],
      spacing: 10,
    },
  });
}
