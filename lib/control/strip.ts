/** The three densities of one patch, as the densitometer reads them through its red, green and blue filters. */
export interface Densities {
  readonly red: number;
  readonly green: number;
  readonly blue: number;
}

/** A filter of the densitometer. */
export type Colour = keyof Densities;

/** The three filters in the order in which the trade writes them. */
export const stripColours: readonly Colour[] = ["red", "green", "blue"];

/**
 * Densities by patch. The names used by the process specifications that come with the library:
 * `dMin` (unexposed), `ld` (low density), `hd` (high density), `dMax` (full exposure, or the black
 * patch of a paper strip), `retainedSilver` (the yellow patch that stands beside `dMax` on a
 * colour-negative strip). A lab's own specification may name others.
 */
export type Patches = Readonly<Record<string, Densities>>;

/** Where a strip's reading stood in the lab's own file. */
export interface StripSource {
  readonly file: string;
  readonly line: number;
}

/** One control strip, processed and read. */
export interface Strip {
  /** Local time of processing, ISO 8601 without zone: `"2026-08-14T07:10"`. */
  readonly takenAt: string;
  /** Id of the process it ran through: `"colour-negative"`. */
  readonly process: string;
  /** Code number of the batch of strips it came from. */
  readonly stripBatch: string;
  readonly operator: string;
  readonly patches: Patches;
  readonly source?: StripSource;
}

/** A batch of control strips: its reference strip and the correction printed for its code number. */
export interface StripBatch {
  /** Code number of the batch. */
  readonly id: string;
  readonly process: string;
  /** The reference strip as read on the lab's own densitometer. */
  readonly reference: Patches;
  /** Correction to add to the reference reading; a patch that is left out has none. */
  readonly correction: Patches;
  /** Local date of first use, `"2026-06-01"`, if it was noted. */
  readonly firstUsed?: string;
  readonly note?: string;
}

/** What each patch should read: the zero line of the control chart. */
export interface Aims {
  readonly process: string;
  readonly stripBatch: string;
  readonly patches: Patches;
  /** How the aims came about. */
  readonly basis: "reference and correction" | "crossover";
}
