import type { ChartChoices } from "../charts/chart-choices.ts";
import type { ProcessLimits } from "../process/process-limits.ts";
import type { Colour } from "../strip.ts";

/** Run: customer work may go in. Act: look, or repeat the strip. Hold: no customer work. */
export type Verdict = "run" | "act" | "hold";

/** The kinds of statistical signals. */
export type StatisticalSignalKind = "run rules" | "moving range" | "EWMA" | "CUSUM";

/** A statistical signal that stands on the latest reading. It asks to look; it never stops a line. */
export interface StatisticalSignal {
  readonly kind: StatisticalSignalKind;
  /** Rule id for the run rules, else `null`. */
  readonly rule: string | null;
  /** Whether signals of this kind turn "run" into "act" (option `actOn`). */
  readonly acts: boolean;
  readonly sentence: string;
  /** Indices into the strips that were given, oldest first. */
  readonly rows: readonly number[];
  /** The strip from which on it has stood without a break, as an index into the strips given. */
  readonly since: number;
  /** Readings on which it has stood without a break, the latest included. */
  readonly strips: number;
}

/** Where the statistical limits of a process are from, or why it has none. */
export interface StatisticalBase {
  /** The choices its charts are made with, as `controlCharts` takes them; `null` without charts. */
  readonly charts: ChartChoices | null;
  /** The base period, or why there are no statistical limits, in words. */
  readonly reason: string;
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
  /** The process's published limits; statistical limits never stand here. */
  readonly limits: ProcessLimits;
  /** Indices into the strips that were given of the readings that led to the verdict, oldest first. */
  readonly rows: readonly number[];
  /** Statistical signals on the latest reading. */
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
  /**
   * Size of the change as a share of the control limit on its side (of the action limit where there
   * is no control limit), `null` where there is neither.
   */
  readonly changeOverLimit: number | null;
}

/** What changed since the last good day, largest share of the limit first. */
export interface ChangeSinceGoodDay {
  /** Local date of the last day before the latest strip's on which the verdict ended as run. */
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
  /** Why, in one sentence. */
  readonly reason: string;
  /** What to do next, in one sentence. */
  readonly next: string;
  readonly asOf: string;
  /** Index of the latest strip, or `null` if there is none. */
  readonly latestRow: number | null;
  readonly latestTakenAt: string | null;
  readonly stripBatch: string | null;
  /** Indices into the strips that were given of the readings that led to the verdict. */
  readonly rows: readonly number[];
  readonly parameters: readonly ParameterVerdict[];
  /** Decimals to which the strips were read, and to which deviations are printed. */
  readonly readingDecimals: 2 | 3;
  readonly statisticalBase: StatisticalBase;
  /** `null` if there is no good day before the latest strip's day. */
  readonly changeSinceGoodDay: ChangeSinceGoodDay | null;
  /** Things to know that do not change the verdict, e.g. that a repeat cleared a reading. */
  readonly notes: readonly string[];
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
}

/** The verdicts on all processes of the lab: one object to print, file or test. */
export interface MorningCall {
  /** The worst of the processes' verdicts. */
  readonly verdict: Verdict;
  readonly reason: string;
  readonly asOf: string;
  readonly processes: readonly ProcessVerdict[];
  readonly warnings: readonly string[];
}
