import type { ProcessLimits } from "../process/process-limits.ts";
import type { Colour } from "../strip.ts";

/** A change to another batch of strips within a series. */
export interface BatchChange {
  /** Position in the series of the first reading from the new batch. */
  readonly at: number;
  readonly from: string;
  readonly to: string;
  /** True if the new batch's aims were moved by a crossover, so that the history is continuous. */
  readonly crossover: boolean;
}

/** The deviations of one parameter in one colour, in the order of time. */
export interface ParameterSeries {
  readonly process: string;
  /** Id of the parameter in the process specification. */
  readonly parameter: string;
  /** The trade's name of the parameter. */
  readonly name: string;
  /** The filter, or `null` for a parameter with one value a strip (colour spread). */
  readonly colour: Colour | null;
  readonly limits: ProcessLimits;
  /** For each reading, the index of its strip in the array that was given. */
  readonly rows: readonly number[];
  readonly takenAt: readonly string[];
  /** Deviations from aim in density. */
  readonly deviations: readonly number[];
  readonly batchChanges: readonly BatchChange[];
  /** Positions before which at least one strip lacks this reading. */
  readonly gaps: readonly number[];
}
