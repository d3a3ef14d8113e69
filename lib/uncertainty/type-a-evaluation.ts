import { InputError, requireEntries, requireNumber } from "../input/index.ts";
import type { InputQuantity } from "./distribution.ts";

/** A square of more would be too large for a number. */
const LARGEST = 1e150;

/** What repeated readings of one quantity say. */
export interface TypeAEvaluation {
  readonly mean: number;
  /** Standard deviation of a single reading, divisor n − 1. */
  readonly standardDeviation: number;
  /** Standard uncertainty of the mean, s/√n. */
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
  readonly count: number;
}

/**
 * Mean of repeated readings and its standard uncertainty (a type A evaluation).
 *
 * x̄ = Σx/n, s² = Σ(x − x̄)²/(n − 1), u = s/√n, ν = n − 1.
 *
 * @param readings at least two, independent, in one unit
 * @returns mean, standard deviation and uncertainty in the readings' unit
 * @throws InputError for fewer than two readings or one that is not a finite number
 *
 * @example
 * typeAEvaluation([20.1, 20.3, 20.2]).standardUncertainty // => 0.057735
 *
 * Source: JCGM 100:2008, 4.2.1–4.2.6.
 */
export function typeAEvaluation(readings: readonly number[]): TypeAEvaluation {
  const where = "typeAEvaluation";
  requireEntries(where, "readings", readings, "a list of numbers");
  if (readings.length < 2) {
    throw new InputError(where, "readings", readings, "write at least two readings");
  }
  readings.forEach((reading, i) => {
    requireNumber(where, `readings[${i}]`, reading, { min: -LARGEST, max: LARGEST });
  });
  const count = readings.length;
  const first = readings[0] ?? 0;
  // Sums of differences from the first reading lose no digits where the readings are large.
  const mean = first + readings.reduce((sum, x) => sum + (x - first), 0) / count;
  const squares = readings.reduce((sum, x) => sum + (x - mean) ** 2, 0);
  const standardDeviation = Math.sqrt(squares / (count - 1));
  return {
    mean,
    standardDeviation,
    standardUncertainty: standardDeviation / Math.sqrt(count),
    degreesOfFreedom: count - 1,
    count,
  };
}

/**
 * An input quantity from repeated readings: a t distribution about their mean.
 *
 * @param name the name under which the model reads it
 * @param readings at least two, in one unit
 * @param unit for the budget
 * @returns an input quantity for `propagateUncertainty` and `monteCarloUncertainty`
 * @throws InputError as `typeAEvaluation`
 *
 * @example
 * readingsInput("T", [20.1, 20.3, 20.2], "°C").distribution.mean // => 20.2
 *
 * Source: JCGM 101:2008, 6.4.9.
 */
export function readingsInput(
  name: string,
  readings: readonly number[],
  unit?: string,
): InputQuantity {
  requireEntries("readingsInput", "readings", readings, "a list of numbers");
  const { mean, standardUncertainty, degreesOfFreedom } = typeAEvaluation(readings);
  const distribution = { kind: "t", mean, standardUncertainty, degreesOfFreedom } as const;
  return unit === undefined ? { name, distribution } : { name, unit, distribution };
}

/**
 * Correlation of the means of two quantities read together.
 *
 * r = Σ(x − x̄)(y − ȳ) / √(Σ(x − x̄)² Σ(y − ȳ)²)
 *
 * @param first readings of one quantity
 * @param second readings of the other, taken at the same moments; at least two pairs
 * @returns a pure number from −1 to 1
 * @throws InputError if the lists differ in length, are shorter than two, or one does not vary
 *
 * @example
 * correlationOfReadings([1, 2, 3], [2, 4, 6]) // => 1
 *
 * Source: JCGM 100:2008, 5.2.3, equations (17) and (14).
 */
export function correlationOfReadings(first: readonly number[], second: readonly number[]): number {
  const where = "correlationOfReadings";
  requireEntries(where, "first", first, "a list of numbers");
  requireEntries(where, "second", second, "a list of numbers");
  if (first.length !== second.length) {
    const advice = `write as many readings as in the first list (${first.length})`;
    throw new InputError(where, "second", second, advice);
  }
  const a = typeAEvaluation(first);
  const b = typeAEvaluation(second);
  if (a.standardDeviation === 0 || b.standardDeviation === 0) {
    const which = a.standardDeviation === 0 ? "first" : "second";
    const advice = "the readings do not vary, so they have no correlation; leave it out";
    throw new InputError(where, which, which === "first" ? first : second, advice);
  }
  const products = first.reduce((sum, x, i) => sum + (x - a.mean) * ((second[i] ?? 0) - b.mean), 0);
  const r = products / ((a.count - 1) * a.standardDeviation * b.standardDeviation);
  return Math.max(-1, Math.min(1, r));
}
