import type { ChartKernel } from "./chart-kernel.ts";
import type { AverageRunLength } from "./run-length.ts";
import { computable, dot, expectedReadings, quasiStationary } from "./survival-operator.ts";

/** Zero-state and steady-state run length of a chart from a start value. */
export function kernelRunLength(
  where: string,
  kernel: ChartKernel,
  shift: number,
  start: number,
): AverageRunLength {
  const readings = readingsFromStates(where, kernel, shift);
  const inControl = kernel.states.map((from) => kernel.row(from, 0));
  return {
    zeroState: computable(where, 1 + dot(kernel.row(start, shift), readings)),
    steadyState: computable(where, dot(quasiStationary(where, inControl), readings)),
  };
}

/** Run length from any start value (zero state), not yet looked at with `computable`. */
export function kernelReadingsFrom(
  where: string,
  kernel: ChartKernel,
  shift: number,
): (start: number) => number {
  const readings = readingsFromStates(where, kernel, shift);
  return (start) => 1 + dot(kernel.row(start, shift), readings);
}

function readingsFromStates(where: string, kernel: ChartKernel, shift: number): number[] {
  return expectedReadings(
    where,
    kernel.states.map((from) => kernel.row(from, shift)),
  );
}
