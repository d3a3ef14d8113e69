import { requireNumber, requireObject } from "../../input/index.ts";
import { normalCdf } from "../../numerics/index.ts";
import { carrier } from "./carried-forward.ts";
import type { ChartKernel } from "./chart-kernel.ts";
import { upperCusumKernel } from "./cusum-kernel.ts";
import { ewmaHalfWidth, twoSidedEwmaKernel } from "./ewma-kernel.ts";
import { sumOf } from "./flat-vectors.ts";
import {
  type MeanCourse,
  meanCourse,
  type RunLengthChart,
  requireChart,
} from "./run-length-chart.ts";
import { zoneChain } from "./zone-chain.ts";
import { zoneChainStart, zoneChainStep, zoneProbabilities } from "./zone-chain-step.ts";
import type { ZoneRule } from "./zone-rule.ts";

/**
 * Probability that a chart has signalled by each reading: the whole distribution of its run length,
 * of which the average run length is only the mean.
 *
 * P(N ≤ t) = 1 − Σ of the chart's state after t readings without a signal, carried forward reading by
 * reading over the same states as the average.
 *
 * @param chart which chart, with its constants
 * @param course `shift` and `driftPerReading` of the mean, in standard deviations; default in control
 * @param upTo last reading wanted, 1 to 20,000
 * @returns the probabilities for readings 1 … `upTo`, rising towards 1
 * @throws InputError if a number is out of range
 *
 * @example
 * runLengthDistribution({ chart: "individuals", limitWidth: 3 }, {}, 100)[99] // => 0.236884
 *
 * Source: D. Brook and D. A. Evans, Biometrika 59 (1972) 539–549.
 */
export function runLengthDistribution(
  chart: RunLengthChart,
  course: MeanCourse,
  upTo: number,
): readonly number[] {
  const where = "runLengthDistribution";
  requireObject(where, "chart", chart, "an object");
  requireObject(where, "course", course, "an object");
  requireChart(where, chart);
  const meanAt = meanCourse(where, course);
  requireNumber(where, "upTo", upTo, { min: 1, max: 20_000, whole: true });
  const survive = survivor(chart);
  return Array.from({ length: upTo }, (_, i) => Math.max(0, 1 - survive(meanAt(i + 1))));
}

/** A chart's share without a signal, one reading further with every call. */
function survivor(chart: RunLengthChart): (mean: number) => number {
  if (chart.chart === "individuals") {
    let left = 1;
    const inside = (mean: number) =>
      normalCdf(chart.limitWidth - mean) - normalCdf(-chart.limitWidth - mean);
    return (mean) => (left *= inside(mean));
  }
  if (chart.chart === "zone rules") return ofZoneRules(chart.rules);
  return ofKernel(
    chart.chart === "ewma"
      ? twoSidedEwmaKernel(chart.lambda, ewmaHalfWidth(chart.lambda, chart.limitWidth))
      : upperCusumKernel(chart.referenceValue, chart.decisionInterval),
  );
}

function ofKernel(kernel: ChartKernel): (mean: number) => number {
  const carry = carrier(kernel);
  return (mean) => sumOf(carry(mean));
}

function ofZoneRules(rules: readonly ZoneRule[]): (mean: number) => number {
  const chain = zoneChain(rules);
  let mass = zoneChainStart(chain);
  return (mean) => {
    mass = zoneChainStep(chain, mass, zoneProbabilities(chain.zones, mean));
    return sumOf(mass);
  };
}
