import logsFile from "../../../data/faults/logs.json" with { type: "json" };

/** A kind of reading that a lab logs, and the check it stands for. */
export interface LogKind {
  readonly id: string;
  /** Id of the check whose outcomes it tells. */
  readonly check: string;
  readonly quantity: string;
  /** Unit of a change; `"%"` where changes are shares of the mean. */
  readonly unit: string;
  readonly relative: boolean;
  /** Standard deviation by which the mean drifts in an orderly line (a share if relative). */
  readonly wander: number;
  /** Most likely size of a shift that is one (a share if relative). */
  readonly scale: number;
  readonly above?: string;
  readonly within: string;
  readonly below?: string;
}

/** A kind of work that a lab writes down, and the faults that begin with it. */
export interface WorkKind {
  readonly id: string;
  readonly words: string;
  readonly recorded: Readonly<Record<string, number>>;
}

const file = logsFile as unknown as {
  readonly logError: number;
  readonly readings: readonly LogKind[];
  readonly work: readonly WorkKind[];
};

/**
 * The kinds of readings that `labLogs` knows, with the check each stands for (common practice, no
 * source; judged, not measured).
 *
 * @example
 * faultLogKinds.find(({ id }) => id === "developer-time")?.check // => "stopwatch"
 */
export const faultLogKinds: readonly LogKind[] = file.readings;

/**
 * The kinds of work that `labLogs` knows, with the faults that begin with each (common practice, no
 * source; judged, not measured).
 *
 * @example
 * faultWorkKinds.map(({ id }) => id) // => ["developer-mixed", "fixer-handled", "bleach-handled"]
 */
export const faultWorkKinds: readonly WorkKind[] = file.work;

/** Probability that a log says what is not so. */
export const LOG_ERROR: number = file.logError;
