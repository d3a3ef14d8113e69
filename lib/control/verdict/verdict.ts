import type { ProcessLimits } from "../process/process-limits.ts";
import type { Colour } from "../strip.ts";

/** Run: customer work may go in. Act: look, or repeat the strip. Hold: no customer work. */
export type Verdict = "run" | "act" | "hold";

/** A statistical signal that stands on the latest reading. Looks for a cause; never stops a line. */
export interface StatisticalSignal {
  readonly chart: "individuals" | "moving range" | "EWMA" | "CUSUM";
  /** Rule id for the individuals chart, else `null`. */
  readonly rule: string | null;
  readonly sentence: string;
  /** Indices into the strips that were given. */
  readonly rows: readonly number[];
}

/** The verdict on one parameter in one colour. */
export interface ParameterVerdict {
  readonly parameter: string;
  readonly name: string;
  readonly colour: Colour | null;
  readonly verdict: Verdict;
  /** Whether this parameter lets customer work go in before anything else is done. */
  readonly workMayRun: boolean;
  /** Why, in one sentence. */
  readonly reason: string;
  /** What to do next, in one sentence. */
  readonly next: string;
  /** Deviation of the latest strip from aim, or `null` if its patch was not read. */
  readonly deviation: number | null;
  readonly limits: ProcessLimits;
  /** Indices into the strips that were given, oldest first. */
  readonly rows: readonly number[];
  readonly signals: readonly StatisticalSignal[];
}

/** How one parameter moved since the last day on which the verdict was run. */
export interface ParameterChange {
  readonly parameter: string;
  readonly name: string;
  readonly colour: Colour | null;
  readonly deviationThen: number;
  readonly deviationNow: number;
  readonly change: number;
  /** Size of the change as a share of the control limit (or the action limit where there is no other). */
  readonly changeOverLimit: number | null;
}

/** What changed since the last good day, largest share of the limit first. */
export interface ChangeSinceGoodDay {
  /** Local date of the last day before the latest strip's whose verdict was run. */
  readonly goodDay: string;
  /** Indices into the strips that were given. */
  readonly rowThen: number;
  readonly rowNow: number;
  readonly changes: readonly ParameterChange[];
}

/** The verdict on one process. */
export interface ProcessVerdict {
  readonly process: string;
  readonly name: string;
  readonly verdict: Verdict;
  /** Whether customer work may go in now. False while a repeat or a fresh strip is awaited. */
  readonly workMayRun: boolean;
  readonly reason: string;
  readonly next: string;
  readonly asOf: string;
  /** Index of the latest strip, or `null` if there is none. */
  readonly latestRow: number | null;
  readonly latestTakenAt: string | null;
  readonly stripBatch: string | null;
  readonly rows: readonly number[];
  readonly parameters: readonly ParameterVerdict[];
  readonly changeSinceGoodDay: ChangeSinceGoodDay | null;
  /** Things to know that do not change the verdict, e.g. that a repeat cleared a reading. */
  readonly notes: readonly string[];
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/** The verdicts on all processes of the lab: one object to print, file or test. */
export interface MorningCall {
  readonly verdict: Verdict;
  readonly reason: string;
  readonly asOf: string;
  readonly processes: readonly ProcessVerdict[];
}
