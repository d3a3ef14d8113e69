import { LuDecomposition, Matrix } from "ml-matrix";
import { InputError } from "../../input/index.ts";

/**
 * A chart's memory as a finite set of states. Row i says with which weight state i leads to each
 * state without a signal (a probability, or a density times a quadrature weight).
 */
export type SurvivalMatrix = number[][];

const MAX_ROUNDS = 2000;
const SETTLED = 1e-14;

/** Beyond this the solution keeps fewer than five digits in double precision. */
const LONGEST = 1e11;

/**
 * Expected number of readings to the signal from each state: the solution N of (I − Q)·N = 1. A
 * number too long for double precision comes out wrong in size and even in sign, though not in
 * proportion between the states: let it out through `computable`.
 *
 * Source: D. Brook and D. A. Evans, Biometrika 59 (1972) 539–549.
 */
export function expectedReadings(where: string, step: SurvivalMatrix): number[] {
  const lu = new LuDecomposition(withoutSignal(step));
  if (lu.isSingular()) throw neverSignals(where);
  return lu.solve(Matrix.ones(step.length, 1)).to1DArray();
}

/** Lets a run length out if double precision could carry it. */
export function computable(where: string, readings: number): number {
  if (readings >= 1 && readings <= LONGEST) return readings;
  throw neverSignals(where);
}

/**
 * Long-run probabilities of the states given that no signal has come: the left eigenvector of Q for
 * its largest eigenvalue, by inverse iteration about 1 (that eigenvalue is the one closest to 1).
 *
 * Source: E. Seneta, Non-negative Matrices and Markov Chains, 2nd ed. 1981, 7.2.
 */
export function quasiStationary(where: string, step: SurvivalMatrix): number[] {
  const lu = new LuDecomposition(withoutSignal(step).transpose());
  if (lu.isSingular()) throw neverSignals(where);
  let vector = Matrix.ones(step.length, 1).div(step.length);
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const next = lu.solve(vector);
    next.div(next.sum());
    const change = Matrix.sub(next, vector).abs().max();
    vector = next;
    if (change < SETTLED) break;
  }
  return vector.to1DArray();
}

/** Σ aᵢ·bᵢ. */
export function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}

function withoutSignal(step: SurvivalMatrix): Matrix {
  return Matrix.eye(step.length).sub(new Matrix(step));
}

function neverSignals(where: string): InputError {
  return new InputError(
    where,
    "limits",
    "too wide",
    "the run length is beyond what double precision can carry; narrow the limits",
  );
}
