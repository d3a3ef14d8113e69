import { InputError, requireNumber, requireObject } from "../../input/index.ts";
import { normalCdf } from "../../numerics/index.ts";
import { carrier } from "./carried-forward.ts";
import type { ChartKernel } from "./chart-kernel.ts";
import { upperCusumKernel } from "./cusum-kernel.ts";
import type { CusumDesign } from "./cusum-run-length.ts";
import { ewmaHalfWidth, twoSidedEwmaKernel } from "./ewma-kernel.ts";
import type { EwmaDesign } from "./ewma-run-length.ts";
import { sumOf } from "./flat-vectors.ts";

/** A chart that a drift may be caught with. */
export type DriftChart =
  | ({ readonly chart: "ewma" } & EwmaDesign)
  | ({ readonly chart: "cusum" } & CusumDesign)
  | { readonly chart: "individuals"; readonly limitWidth: number };

const NEGLIGIBLE = 1e-14;
const MAX_READINGS = 200_000;

/**
 * Average number of readings until a chart signals a mean that drifts steadily: the mean of reading
 * t is t·drift standard deviations.
 *
 * The distribution of the chart's value is carried forward reading by reading until less than one
 * chart in 10¹⁴ is left without a signal. EWMA and individuals are two-sided, the CUSUM is the sum
 * on the side of the drift.
 *
 * @param design which chart, with its constants
 * @param driftPerReading rise of the mean from reading to reading, in standard deviations,
 *   1e-4 to 10
 * @param options `readingsBefore`: readings at the aim before the first that has drifted, 0 (default)
 *   to 1,000; they are counted
 * @returns readings to the signal, counted from the chart's start
 * @throws InputError if a number is out of range
 *
 * @example
 * driftRunLength({ chart: "individuals", limitWidth: 3 }, 0.02) // => 57.3746293
 *
 * Source: F. F. Gan, Journal of Quality Technology 24 (1992) 127–135 (CUSUM); L. A. Aerne,
 * C. W. Champ and S. E. Rigdon, Communications in Statistics, Theory and Methods 20 (1991).
 */
export function driftRunLength(
  design: DriftChart,
  driftPerReading: number,
  options: { readonly readingsBefore?: number } = {},
): number {
  const where = "driftRunLength";
  requireObject(where, "design", design, "an object");
  const drift = requireNumber(where, "driftPerReading", driftPerReading, {
    min: 1e-4,
    max: 10,
    hint: "the size; a fall is found like a rise",
  });
  const before = requireNumber(where, "readingsBefore", options.readingsBefore ?? 0, {
    min: 0,
    max: 1000,
    whole: true,
  });
  const meanAt = (t: number) => Math.max(0, t - before) * drift;
  if (design.chart === "individuals") {
    const limit = requireNumber(where, "limitWidth", design.limitWidth, { min: 0.1, max: 6 });
    return individuals(limit, meanAt);
  }
  if (design.chart === "cusum") {
    const k = requireNumber(where, "referenceValue", design.referenceValue, { min: 0, max: 5 });
    const h = requireNumber(where, "decisionInterval", design.decisionInterval, {
      min: 0.1,
      max: 40,
    });
    return carriedForward(upperCusumKernel(k, h), meanAt);
  }
  const lambda = requireNumber(where, "lambda", design.lambda, { min: 0.005, max: 1 });
  const width = requireNumber(where, "limitWidth", design.limitWidth, { min: 0.1, max: 6 });
  return carriedForward(twoSidedEwmaKernel(lambda, ewmaHalfWidth(lambda, width)), meanAt);
}

function individuals(limit: number, meanAt: (t: number) => number): number {
  let surviving = 1;
  let readings = 1;
  for (let t = 1; surviving > NEGLIGIBLE; t++) {
    surviving *= normalCdf(limit - meanAt(t)) - normalCdf(-limit - meanAt(t));
    readings += surviving;
  }
  return readings;
}

/** 1 + Σ P(no signal in t readings). */
function carriedForward(kernel: ChartKernel, meanAt: (t: number) => number): number {
  const carry = carrier(kernel);
  let readings = 1;
  for (let t = 1; t < MAX_READINGS; t++) {
    const left = sumOf(carry(meanAt(t)));
    readings += left;
    if (left < NEGLIGIBLE) return readings;
  }
  throw new InputError("driftRunLength", "driftPerReading", "too small", "write a larger drift");
}
