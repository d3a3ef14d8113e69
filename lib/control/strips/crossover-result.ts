import type { Aims, Colour, Strip } from "../strip.ts";

/** Two strips that went through the process side by side, one from each batch. */
export interface StripPair {
  readonly old: Strip;
  readonly new: Strip;
}

/** How one patch and colour crossed over. */
export interface CrossoverDifference {
  readonly patch: string;
  readonly colour: Colour;
  readonly pairs: number;
  /** Mean of new − old reading. */
  readonly meanDifference: number;
  /** Scatter of the differences (sample standard deviation), `null` for one pair. */
  readonly standardDeviation: number | null;
  readonly standardError: number | null;
  /** Moved aim of the new batch. */
  readonly aim: number;
  /** Moved aim minus the new batch's own aim (reference + correction), `null` if that is unknown. */
  readonly againstOwnAim: number | null;
}

/** A change to a new batch of strips. */
export interface Crossover {
  readonly from: string;
  readonly to: string;
  readonly pairs: number;
  /** Aims of the new batch, moved so that the process keeps its place on the chart. */
  readonly aims: Aims;
  readonly differences: readonly CrossoverDifference[];
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/** Options of `crossover`. */
export interface CrossoverOptions {
  /** Fewer pairs than this are warned of. Default 3. */
  readonly minimumPairs?: number;
  /** Scatter of a difference above this density is warned of. Default 0.02 (common practice). */
  readonly widestScatter?: number;
  /** The new batch's own aims (reference + correction), to compare with. */
  readonly ownAims?: Aims;
  /** A moved aim this far (density) from the batch's own is warned of. Default 0.04. */
  readonly widestDisagreement?: number;
}
