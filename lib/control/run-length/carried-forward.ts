import { normalCdf } from "../../numerics/index.ts";
import { type ChartKernel, rowFrom, stepMatrix } from "./chart-kernel.ts";
import { vectorTimes } from "./flat-vectors.ts";

/** The share of charts in each state, one reading further with every call. */
export type Carrier = (mean: number) => Float64Array;

/** Beyond this the factors below leave the range of double precision. */
const LARGEST_EXPONENT = 300;

/**
 * Carries the distribution of a chart's value forward while its mean moves.
 *
 * A step with the mean m is the step in control between two diagonals, since
 * φ(a − m) = φ(a)·exp(a·m)·exp(−m²/2) and a is a difference, target less centre: no new exponentials
 * but two for each state.
 */
export function carrier(kernel: ChartKernel): Carrier {
  const { states, targets } = kernel;
  const inControl = stepMatrix(kernel, 0);
  const centres = states.map(kernel.centre);
  const widest = [...targets, ...centres].reduce((most, each) => Math.max(most, Math.abs(each)), 0);
  let mass: Float64Array | undefined;
  return (mean) => {
    if (mass === undefined) {
      mass = rowFrom(kernel, 0, mean);
    } else if (widest * Math.abs(mean) > LARGEST_EXPONENT || Math.abs(mean) > 20) {
      mass = vectorTimes(mass, stepMatrix(kernel, mean));
    } else {
      const before = mass;
      const scaled = before.map((each, i) => each * Math.exp(-(centres[i] ?? 0) * mean));
      mass = vectorTimes(scaled, inControl);
      scale(mass, targets, mean);
      if (kernel.barrier) mass[targets.length] = ontoBarrier(before, centres, mean);
    }
    return mass;
  };
}

function scale(mass: Float64Array, targets: Float64Array, mean: number): void {
  for (let j = 0; j < targets.length; j++) {
    mass[j] = (mass[j] ?? 0) * Math.exp((targets[j] ?? 0) * mean - (mean * mean) / 2);
  }
}

function ontoBarrier(mass: Float64Array, centres: Float64Array, mean: number): number {
  let total = 0;
  for (let i = 0; i < mass.length; i++) {
    const weight = mass[i] ?? 0;
    if (weight > 1e-30) total += weight * normalCdf(-(centres[i] ?? 0) - mean);
  }
  return total;
}
