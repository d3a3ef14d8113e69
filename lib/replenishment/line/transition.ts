import { matrixExponential } from "../../numerics/index.ts";
import type { Compartments } from "./compartments.ts";

/** What a stretch of time at constant flows makes of the grams, as one matrix; the last row is 1. */
export type Transition = readonly (readonly number[])[];

/** e^(M·t) of the bordered matrix M = [[A, b], [0, 0]]: flows and inflow in one exponential. */
export function transitionOf(
  { matrix, inflowG }: Pick<Compartments, "matrix" | "inflowG">,
  days: number,
): Transition {
  return matrixExponential([
    ...matrix.map((row, i) => [...row.map((v) => v * days), (inflowG[i] ?? 0) * days]),
    new Array<number>(matrix.length + 1).fill(0),
  ]);
}

/** The grams after that time. */
export function afterTransition(transition: Transition, grams: readonly number[]): number[] {
  const withOne = [...grams, 1];
  return grams.map((_, i) =>
    withOne.reduce((sum, gram, j) => sum + gram * (transition[i]?.[j] ?? 0), 0),
  );
}
