import silverData from "../../../data/replenishment/silver.json" with { type: "json" };

/** Silver coated on a kind of material; a weak source, so a range. */
export interface CoatedSilver {
  readonly id: string;
  readonly what: string;
  readonly lowGPerM2: number;
  readonly highGPerM2: number;
  readonly source: string;
  readonly howObtained: string;
}

/** What a code expects recovery to reach. */
export interface RecoveryGoal {
  readonly id: string;
  readonly what: string;
  /** Share of the silver, 0 to 1. */
  readonly share: number;
  readonly source: string;
  readonly howObtained: string;
}

/** Coated silver by kind of material: ranges from a weak source. */
export const coatedSilver: readonly CoatedSilver[] = silverData.coated;

/** Shares of silver that one city's practice expects to be recovered. */
export const recoveryGoals: readonly RecoveryGoal[] = silverData.recovery;

/** Silver that makes a waste toxic by definition, mg/L. Not a limit of discharge. */
export const silverToxicityThreshold: {
  readonly mgPerL: number;
  readonly what: string;
  readonly source: string;
  readonly howObtained: string;
  readonly note: string;
} = silverData.toxicity;

/** What must be said wherever silver or fixer leaves. */
export const silverCautions: readonly string[] = silverData.cautions;
