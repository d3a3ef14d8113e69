import type { Colour } from "../strip.ts";
import type { LogStatement } from "./lab-log.ts";
import type { SeparatingCheck } from "./separating-check.ts";

/** What one reading says about a fault, given all other readings. */
export interface ReadingEvidence {
  readonly parameter: string;
  readonly name: string;
  readonly colour: Colour;
  /** Mean deviation over the strips the fault touches, density. */
  readonly observed: number;
  /** Standard deviation of that mean from strip noise alone. */
  readonly observedSd: number;
  /** What the fault at its fitted size foretells from the other readings. */
  readonly expected: number;
  /** Standard deviation of that: noise, and scatter of the fault's own pattern. */
  readonly expectedSd: number;
  /** ln p(reading | the others, this fault) − ln p(reading | the others, nothing wrong). */
  readonly logWeight: number;
  /** Against also where the reading lies over 2.5 sd from what the fault foretells. */
  readonly speaks: "for" | "against" | "neither";
  readonly words: string;
}

/** One fault in the ranking. */
export interface RankedFault {
  readonly id: string;
  readonly name: string;
  readonly group: string;
  /** Posterior probability among all faults, "none of these" and "nothing wrong". */
  readonly probability: number;
  /** ln of the evidence of strips and logs together, beside "nothing wrong" and logs that show nothing. */
  readonly logEvidence: number;
  /** Size at the last strip it touches, in multiples of the limit its largest reading is held to. */
  readonly size: number;
  readonly sizeSd: number;
  /** How it most likely came. */
  readonly course: "step" | "gradual" | "single strip";
  /** Time of the first strip it most likely touched. */
  readonly since: string;
  readonly place: string;
  readonly confirm: string;
  readonly remedy: string;
}

/** Faults that densities do not tell apart. */
export interface FaultGroup {
  readonly id: string;
  readonly words: string;
  readonly probability: number;
  readonly faults: readonly string[];
}

/** What the first fault of the first group leaves unexplained. */
export interface FaultResidual {
  /** (observed − expected)ᵀ (a²C + Σ/n)⁻¹ (observed − expected). */
  readonly chiSquare: number;
  readonly degreesOfFreedom: number;
  /** Probability of a chi-square so large if the fault were the whole story. */
  readonly probability: number;
  /** Readings that differ most from what the fault would show, in words; empty if none does. */
  readonly notExplained: readonly string[];
}

/** The answer of `rankFaults`. */
export interface FaultRanking {
  readonly process: string;
  /** Most likely first; faults of equal probability keep the order of the table. */
  readonly faults: readonly RankedFault[];
  /** The same by group. */
  readonly groups: readonly FaultGroup[];
  readonly noneOfThese: number;
  readonly nothingWrong: number;
  /** What leads: the id of a group, or `"none-of-these"`, `"nothing-wrong"`. */
  readonly leading: string;
  /** The first fault of the first group: what `evidence` and `residual` speak of. */
  readonly evidenceFor: string;
  /** Evidence of every reading for it, largest weight first. */
  readonly evidence: readonly ReadingEvidence[];
  /** The first fault of the next group, `null` if there is none. */
  readonly next: string | null;
  /** Evidence of every reading for that. */
  readonly evidenceOfNext: readonly ReadingEvidence[];
  readonly residual: FaultResidual;
  /** What each of the lab's logs says, with the first fault's most likely course; empty without logs. */
  readonly logs: readonly LogStatement[];
  /** The one check that best separates the leading two, or `null` if there is none. */
  readonly check: SeparatingCheck | null;
  readonly sentence: string;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
  readonly cautions: readonly string[];
}
