import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { seededRandom } from "../../numerics/index.ts";
import { ewmaHalfWidth } from "./ewma-kernel.ts";
import {
  type MeanCourse,
  meanCourse,
  type RunLengthChart,
  requireChart,
} from "./run-length-chart.ts";
import { zoneChain } from "./zone-chain.ts";

/** Run lengths drawn by chance, with their mean. */
export interface SimulatedRunLengths {
  /** Readings to the signal, run by run. */
  readonly runLengths: readonly number[];
  readonly mean: number;
  /** Monte Carlo standard error of the mean: sd/√runs. */
  readonly standardError: number;
}

/** One chart: takes a reading, says whether it signals. */
type Watcher = (reading: number) => boolean;

const LONGEST_RUN = 1_000_000;

/**
 * Run lengths of a chart by simulation: normal readings are drawn and put through the chart itself
 * until it signals, over and over. It uses nothing of the theory, so that it can check it.
 *
 * @param chart which chart, with its constants
 * @param course `shift` and `driftPerReading` of the mean, in standard deviations; default in control
 * @param options `runs`, 10 to 1,000,000 (default 2,000); `seed`, a whole number (default 1)
 * @returns all run lengths, their mean and its Monte Carlo standard error
 * @throws InputError if a number is out of range or a run passes a million readings
 *
 * @example
 * simulateRunLengths({ chart: "individuals", limitWidth: 3 }, { shift: 2 }, { runs: 500 }).runLengths.length // => 500
 *
 * Source: JCGM 101:2008, 7.9 (standard error of a Monte Carlo mean).
 */
export function simulateRunLengths(
  chart: RunLengthChart,
  course: MeanCourse = {},
  options: { readonly runs?: number; readonly seed?: number } = {},
): SimulatedRunLengths {
  const where = "simulateRunLengths";
  requireObject(where, "chart", chart, "an object");
  requireObject(where, "course", course, "an object of options, or leave it out");
  requireObject(where, "options", options, "an object of options, or leave it out");
  requireChart(where, chart);
  const meanAt = meanCourse(where, course);
  const runs = requireNumber(where, "runs", options.runs ?? 2000, {
    min: 10,
    max: 1_000_000,
    whole: true,
  });
  const { normal } = seededRandom(options.seed ?? 1);
  const fresh = watchers(chart);
  const runLengths = Array.from({ length: runs }, () => {
    const signals = fresh();
    for (let t = 1; t <= LONGEST_RUN; t++) if (signals(normal() + meanAt(t))) return t;
    const advice = "narrow the limits: one run passed a million readings";
    throw new InputError(where, "chart", chart, advice);
  });
  const mean = runLengths.reduce((sum, n) => sum + n, 0) / runs;
  const squares = runLengths.reduce((sum, n) => sum + (n - mean) ** 2, 0);
  return { runLengths, mean, standardError: Math.sqrt(squares / (runs - 1) / runs) };
}

function watchers(chart: RunLengthChart): () => Watcher {
  if (chart.chart === "individuals") return () => (x) => Math.abs(x) > chart.limitWidth;
  if (chart.chart === "ewma") {
    const half = ewmaHalfWidth(chart.lambda, chart.limitWidth);
    return () => {
      let average = 0;
      return (x) => {
        average += chart.lambda * (x - average);
        return Math.abs(average) > half;
      };
    };
  }
  if (chart.chart === "cusum") {
    return () => {
      let sum = 0;
      return (x) => {
        sum = Math.max(0, sum + x - chart.referenceValue);
        return sum > chart.decisionInterval;
      };
    };
  }
  const { zones, next } = zoneChain(chart.rules);
  return () => {
    let state = 0;
    return (x) => {
      state = next[state * zones.length + zones.findIndex((zone) => x < zone.upper)] ?? -1;
      return state < 0;
    };
  };
}
