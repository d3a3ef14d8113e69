import { InputError } from "../../input/index.ts";
import { type LuFactors, luFactors } from "./lu.ts";

/**
 * I − Q taken apart. Q is a chart's memory as a finite set of states, row by row: row i says with
 * which weight state i leads to each state without a signal (a probability, or a density times a
 * quadrature weight).
 */
export interface SurvivalOperator extends LuFactors {
  readonly size: number;
}

const MAX_ROUNDS = 2000;
const SETTLED = 1e-14;

/** Beyond this the solution keeps fewer than five digits in double precision. */
const LONGEST = 1e11;

/** Takes I − Q apart; `step` holds Q and is left as it is. */
export function survivalOperator(
  where: string,
  step: Float64Array,
  size: number,
): SurvivalOperator {
  const without = step.map((weight) => -weight);
  for (let i = 0; i < size; i++) without[i * size + i] = 1 - (step[i * size + i] ?? 0);
  const factors = luFactors(without, size);
  if (factors.singular) throw neverSignals(where);
  return { ...factors, size };
}

/**
 * Expected number of readings to the signal from each state: the solution N of (I − Q)·N = 1. A
 * number too long for double precision comes out wrong in size and even in sign, though not in
 * proportion between the states: let it out through `computable`.
 *
 * Source: D. Brook and D. A. Evans, Biometrika 59 (1972) 539–549.
 */
export function expectedReadings(operator: SurvivalOperator): Float64Array {
  return operator.solve(new Float64Array(operator.size).fill(1));
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
export function quasiStationary(operator: SurvivalOperator): Float64Array {
  const { size } = operator;
  let vector: Float64Array = new Float64Array(size).fill(1 / size);
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const next = operator.solveTransposed(vector);
    const sum = next.reduce((total, each) => total + each, 0);
    let change = 0;
    for (let i = 0; i < size; i++) {
      const value = (next[i] ?? 0) / sum;
      change = Math.max(change, Math.abs(value - (vector[i] ?? 0)));
      next[i] = value;
    }
    vector = next;
    if (change < SETTLED) break;
  }
  return vector;
}

function neverSignals(where: string): InputError {
  return new InputError(
    where,
    "limits",
    "too wide",
    "the run length is beyond what double precision can carry; narrow the limits",
  );
}
