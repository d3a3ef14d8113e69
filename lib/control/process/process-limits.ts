/** How a number was obtained; carried beside every limit. */
export type LimitOrigin =
  | "read in a copy"
  | "from memory, unverified"
  | "common practice, no source"
  | "illustrative"
  | "the lab's own";

/**
 * One pair of limits of a process, as deviations from aim in density. `null` on a side that has
 * none. A deviation exactly on a limit is within it.
 */
export interface ProcessLimit {
  /** At or below zero, or `null`. */
  readonly lower: number | null;
  /** At or above zero, or `null`. */
  readonly upper: number | null;
  readonly source: string;
  readonly howObtained: LimitOrigin;
}

/**
 * The limits published for a process. They say how far a process may stand from its aim before
 * pictures suffer, and know nothing of the lab's own variation: that is what `StatisticalLimits`
 * are for. The two never stand in for each other; the `kind` keeps them apart.
 */
export interface ProcessLimits {
  readonly kind: "process limits";
  /** Early warning: customer work may run, the cause is looked for. */
  readonly action: ProcessLimit | null;
  /** Stop: repeat the strip at once; if the second agrees, customer work stops. */
  readonly control: ProcessLimit | null;
  /** How close to aim a process should be brought when it is started or adjusted. */
  readonly adjustment: ProcessLimit | null;
}
