import cautionData from "../../../data/solutions/cautions.json" with { type: "json" };

/** A class of substances that share a hazard, recognised by words in a name or by whole names. */
export interface HazardClass {
  readonly id: string;
  readonly words: readonly string[];
  /** Names that say it only when they stand alone: `"acid"`, but not ascorbic acid. */
  readonly names?: readonly string[];
  readonly cautions: readonly string[];
}

/** Two classes that must not meet, and why. */
export interface Incompatibility {
  readonly first: string;
  readonly second: string;
  readonly caution: string;
}

/** Hazard classes known to the library. */
export const hazardClasses: readonly HazardClass[] = cautionData.classes;

/** Pairs of classes that must not meet. */
export const incompatibilities: readonly Incompatibility[] = cautionData.mustNotMeet;

/** Cautions that stand on every sheet. */
export const everySheetCautions: readonly string[] = cautionData.always;
