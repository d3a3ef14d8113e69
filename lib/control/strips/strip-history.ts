import type { ProcessSpecification } from "../process/process-specification.ts";
import type { Strip, StripBatch } from "../strip.ts";
import type { Crossover } from "./crossover-result.ts";

/** The strips of a lab with all it takes to place them on a chart. */
export interface StripHistory {
  /** Strips of any process, in any order; those of other processes are passed over. */
  readonly strips: readonly Strip[];
  /** Every batch the strips came from. */
  readonly batches: readonly StripBatch[];
  /** Crossovers; their moved aims take the place of the new batch's own. */
  readonly crossovers?: readonly Crossover[];
  readonly specification: ProcessSpecification;
  /** Strips taken later than this local time are left out. */
  readonly asOf?: string;
}
