import { type ChartKernel, rowFrom, stepMatrix } from "./chart-kernel.ts";
import { dot } from "./flat-vectors.ts";
import type { AverageRunLength } from "./run-length.ts";
import {
  computable,
  expectedReadings,
  quasiStationary,
  type SurvivalOperator,
  survivalOperator,
} from "./survival-operator.ts";

/** Zero-state and steady-state run length of a chart from a start value. */
export function kernelRunLength(
  where: string,
  kernel: ChartKernel,
  shift: number,
  start: number,
): AverageRunLength {
  const inControl = operatorOf(where, kernel, 0);
  const shifted = shift === 0 ? inControl : operatorOf(where, kernel, shift);
  const readings = expectedReadings(shifted);
  return {
    zeroState: computable(where, 1 + dot(rowFrom(kernel, start, shift), readings)),
    steadyState: computable(where, dot(quasiStationary(inControl), readings)),
  };
}

/** Run length from any start value (zero state), not yet looked at with `computable`. */
export function kernelReadingsFrom(
  where: string,
  kernel: ChartKernel,
  shift: number,
): (start: number) => number {
  const readings = expectedReadings(operatorOf(where, kernel, shift));
  return (start) => 1 + dot(rowFrom(kernel, start, shift), readings);
}

/** Expected readings from each state (zero state), not yet looked at with `computable`. */
export function kernelReadings(where: string, kernel: ChartKernel, shift: number): Float64Array {
  return expectedReadings(operatorOf(where, kernel, shift));
}

function operatorOf(where: string, kernel: ChartKernel, shift: number): SurvivalOperator {
  return survivalOperator(where, stepMatrix(kernel, shift), kernel.states.length);
}
