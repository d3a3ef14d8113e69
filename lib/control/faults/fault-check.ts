import checksFile from "../../../data/faults/checks.json" with { type: "json" };

/** A check at the bath, the densitometer or the strip, with what each fault would make of it. */
export interface FaultCheck {
  readonly id: string;
  /** What is done, as an instruction. */
  readonly name: string;
  readonly tool: string;
  /** How long it takes, min. */
  readonly minutes: number;
  readonly outcomes: readonly string[];
  /** Probability of each outcome for a fault that is not listed under `expects`. */
  readonly otherwise: readonly number[];
  /** Probability of each outcome by fault id, or `"nothing-wrong"`. */
  readonly expects: Readonly<Record<string, readonly number[]>>;
  readonly howObtained: string;
}

/**
 * The checks that come with the library. How likely each outcome is was judged, not measured
 * (common practice, no source).
 */
export const faultChecks: readonly FaultCheck[] =
  checksFile.checks as unknown as readonly FaultCheck[];

/** How likely each outcome of a check is under a hypothesis. */
export function outcomeProbabilities(check: FaultCheck, hypothesis: string): readonly number[] {
  const listed = Object.hasOwn(check.expects, hypothesis) ? check.expects[hypothesis] : undefined;
  if (listed !== undefined) return listed;
  if (hypothesis !== "none-of-these") return check.otherwise;
  // A fault that nobody listed may do anything: half as an unlisted fault, half evenly.
  return check.otherwise.map((p) => (p + 1 / check.outcomes.length) / 2);
}
