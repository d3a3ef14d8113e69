/** What the strips say about a step in the delivered replenishment rate. */
export interface RateChange {
  readonly finding: "rate changed" | "no change to speak of" | "cannot tell yet";
  /** The finding and its ground in one sentence. */
  readonly reason: string;
  /** Fractional error of the delivered rate since the change: −0.15 is 15 % too little. */
  readonly error: number;
  /** Interval of the error that holds the truth with the stated confidence. */
  readonly errorInterval: readonly [number, number];
  /**
   * The same for a change that is at least one turnover old; null on fewer turnovers. Where nothing
   * changed this is what the strips rule out; `errorInterval` then also holds changes made this morning.
   */
  readonly oldErrorInterval: readonly [number, number] | null;
  /** Tank turnovers at the change. */
  readonly changeAtTurnovers: number;
  readonly changeAtInterval: readonly [number, number];
  /** Probability of a change at least as plain as this one where there is none. */
  readonly pValue: number;
  /** Fitted answer of the tank so far, in units of the sensitivity; it settles at ε/(1 + ε). */
  readonly reachedError: number;
  /** Weighted deviation before the change. */
  readonly baseline: number;
  /** Standard deviation of the weighted deviation: about the fit, and as the stated noise has it. */
  readonly residualSd: number;
  readonly statedSd: number;
  readonly strips: number;
  readonly turnovers: number;
  readonly confidence: number;
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}
