import limitData from "../../../data/hazard-limits.json" with { type: "json" };

/** A limit: from this strength on, what carries `of` gives the solution `code`. */
export interface HazardLimit {
  readonly code: string;
  readonly of: string;
  readonly percent: number;
}

/** The limits of the GHS from which a solution carries the hazards of what is dissolved in it. */
export interface HazardLimits {
  readonly source: string;
  readonly howObtained: string;
  /** Each ingredient by itself. */
  readonly general: readonly {
    readonly code: string;
    readonly of: readonly string[];
    readonly percent: number;
  }[];
  /** All ingredients together: the sum of strength over limit reaches 1. */
  readonly summed: readonly {
    readonly code: string;
    readonly terms: readonly { readonly of: string; readonly percent: number }[];
  }[];
  /** Of single substances, by the id of the chemical. */
  readonly specific: readonly (HazardLimit & { readonly chemical: string })[];
  /** Statements that stand for weaker ones. */
  readonly covers: Readonly<Record<string, readonly string[]>>;
  readonly danger: readonly string[];
  readonly noSignalWord: readonly string[];
  /** Found by test and not by calculation: fire, oxidation, metals. */
  readonly byTest: readonly string[];
}

/** Limits for solutions, from the GHS. */
export const hazardLimits: HazardLimits = limitData;

/** What is dissolved, with the statements of its label. */
export interface DissolvedHazard {
  readonly chemicalId: string;
  readonly label: string;
  readonly massPercent: number;
  readonly codes: readonly string[];
}

/** How far an ingredient is towards a statement, by the limit that holds for it: 1 is enough. */
export function shareOfLimit(
  each: DissolvedHazard,
  code: string,
  of: string,
  percent: number,
): number {
  if (!each.codes.includes(of)) return 0;
  const own = hazardLimits.specific.find(
    (limit) => limit.chemical === each.chemicalId && limit.code === code && limit.of === of,
  );
  return each.massPercent / (own?.percent ?? percent);
}
