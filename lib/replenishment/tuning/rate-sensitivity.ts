import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { leastSquares, studentTQuantile } from "../../numerics/index.ts";

/** A change of rate that the lab made itself, at a known moment and of a known size. */
export interface KnownRateChange {
  readonly atTurnovers: number;
  /** Fraction of the rate before the first change in the history: 0.1 is 10 % more. */
  readonly fraction: number;
}

/** The answer of one channel to the rate. */
export interface ChannelSensitivity {
  /** Steady-state change for a rate 100 % higher (density per 1 = 100 %). */
  readonly sensitivity: number;
  readonly standardError: number;
  readonly interval: readonly [number, number];
  readonly residualSd: number;
}

/**
 * How each channel answers to the replenishment rate, from the lab's own history of deliberate rate
 * changes or from a step test: D(n) = b + S·x(n), b and S by least squares, with x the tank's answer to
 * the rates f that were set, x' = f/(1 + f) − x, solved exactly between the changes.
 *
 * @param history `turnovers` (as the pump was set, the changes included) and `deviations` of the strips, and the `changes` made, each a step of
 *   at most ±50 %
 * @param options `confidence` of the intervals, 0.5 to 0.999, default 0.95
 * @returns one sensitivity a channel
 * @throws InputError if there are too few strips, no change lies among them, or shapes disagree
 *
 * @example
 * const turnovers = Array.from({ length: 30 }, (_, i) => i / 5);
 * const deviations = turnovers.map((n, i) => [0.03 * (n > 2 ? 1 - Math.exp(2 - n) : 0) + 0.001 * (i % 2)]);
 * const [ld] = rateSensitivity({ turnovers, deviations, changes: [{ atTurnovers: 2, fraction: 0.1 }] });
 * ld?.sensitivity // => 0.33058
 *
 * Source: derived from the balance of a well-stirred tank; regression as in `leastSquares`.
 */
export function rateSensitivity(
  history: {
    readonly turnovers: readonly number[];
    readonly deviations: readonly (readonly number[])[];
    readonly changes: readonly KnownRateChange[];
  },
  options: { readonly confidence?: number } = {},
): readonly ChannelSensitivity[] {
  const where = "rateSensitivity";
  requireObject(where, "history", history, "an object with turnovers, deviations and changes");
  requireEntries(where, "changes", history.changes);
  requireEntries(where, "deviations", history.deviations);
  requireEntries(where, "turnovers", history.turnovers, "a list of numbers");
  const confidence = requireNumber(where, "confidence", options.confidence ?? 0.95, {
    min: 0.5,
    max: 0.999,
  });
  const { turnovers, deviations, changes } = history;
  requireNumber(where, "number of strips", turnovers.length, { min: 6 });
  if (changes.length === 0) {
    throw new InputError(where, "changes", "empty", "give at least one change of rate");
  }
  for (const change of changes) {
    requireNumber(where, "atTurnovers", change.atTurnovers, { below: turnovers.at(-1) ?? 0 });
    requireNumber(where, "fraction", change.fraction, { min: -0.5, max: 0.5 });
  }
  const answer = turnovers.map((n, i) => {
    requireNumber(where, `turnovers[${i}]`, n, { min: turnovers[i - 1] ?? 0 });
    return answerToChanges(changes, n);
  });
  const rows = answer.map((x) => [1, x]);
  const channels = deviations[0]?.length ?? 0;
  if (deviations.length !== turnovers.length || channels === 0) {
    const given = `${deviations.length} rows`;
    throw new InputError(where, "deviations", given, `write ${turnovers.length}, one a strip`);
  }
  deviations.forEach((row, i) => {
    if (row.length !== channels) {
      const advice = `write ${channels}, as in the first row; leave out strips that lack a reading (stripRows does)`;
      throw new InputError(where, `deviations[${i}]`, `${row.length} numbers`, advice);
    }
    row.forEach((value, j) => {
      requireNumber(where, `deviations[${i}][${j}]`, value);
    });
  });
  return Array.from({ length: channels }, (_, j) => {
    const fit = leastSquares({ rows, y: deviations.map((row) => row[j] ?? Number.NaN) });
    const sensitivity = fit.coefficients[1] ?? Number.NaN;
    const standardError = fit.standardErrors[1] ?? Number.NaN;
    const reach = standardError * studentTQuantile((1 + confidence) / 2, fit.degreesOfFreedom);
    return {
      sensitivity,
      standardError,
      interval: [sensitivity - reach, sensitivity + reach] as const,
      residualSd: fit.residualSd,
    };
  });
}

/** x at n turnovers: towards f/(1 + f) of the rate set last, from where the change before had led. */
function answerToChanges(changes: readonly KnownRateChange[], n: number): number {
  const inOrder = [...changes].sort((a, b) => a.atTurnovers - b.atTurnovers);
  let [x, fraction, at] = [0, 0, Number.NEGATIVE_INFINITY];
  const until = (moment: number) => {
    const settled = fraction / (1 + fraction);
    if (fraction !== 0 || x !== 0) x = settled + (x - settled) * Math.exp(at - moment);
    at = moment;
  };
  for (const change of inOrder) {
    if (change.atTurnovers >= n) break;
    until(change.atTurnovers);
    fraction += change.fraction;
  }
  until(n);
  return x;
}
