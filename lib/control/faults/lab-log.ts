/** Readings of one instrument, counted from their mean while nothing was wrong. */
export interface LogOfReadings {
  readonly kind: "readings";
  /** Id of the log: `"thermometer"`, `"pump"`, `"developer-time"` … */
  readonly log: string;
  /** Id of the check (see `faultChecks`) that the log stands for. */
  readonly check: string;
  /** What was read, in words. */
  readonly quantity: string;
  /** Unit of the changes: `"°C"`, `"%"`, `"density"`, or `""` for a number without unit. */
  readonly unit: string;
  /** Those after the base period, the latest last. */
  readonly readings: readonly {
    /** Local time; of a pump the beginning of the time it tells of. */
    readonly at: string;
    /** Reading less the mean of the base period, in `unit`. */
    readonly change: number;
    /** How much it counts beside the others; 1 for most. */
    readonly weight: number;
  }[];
  /** Standard deviation of a reading of weight 1. */
  readonly sd: number;
  /** Sum of the weights of the base period. */
  readonly baseWeight: number;
  /** Standard deviation by which the mean of an orderly line or its instrument drifts, in `unit`. */
  readonly wander: number;
  /** Most likely size of a shift that is one: mode of a Rayleigh density, in `unit`. */
  readonly scale: number;
  /** Outcomes of the check that a shift up, none, and a shift down stand for. */
  readonly above?: string;
  readonly within: string;
  readonly below?: string;
  /** Probability that a log says what is not so, whatever the fault. */
  readonly logError: number;
}

/** Entries of one kind of work: what was mixed, filled or lifted, and when. */
export interface LogOfWork {
  readonly kind: "work";
  /** Id of the work: `"developer-mixed"` … */
  readonly log: string;
  readonly words: string;
  /** Local days or times. */
  readonly at: readonly string[];
  /** Entries a day while nothing was wrong. */
  readonly perDay: number;
  /** How likely the entry stands before the fault begins, if this fault is the cause. */
  readonly recorded: Readonly<Record<string, number>>;
}

/** What a lab's own logs hold for fault finding. */
export interface LabLogs {
  readonly logs: readonly (LogOfReadings | LogOfWork)[];
  readonly warnings: readonly string[];
}

/** What one log says about the causes, with the leading fault's beginning. */
export interface LogStatement {
  readonly log: string;
  /** The check it stands for, `null` for a log of work. */
  readonly check: string | null;
  /** Ids of faults it makes at least e times as likely beside others. */
  readonly speaksFor: readonly string[];
  /** Ids of faults it makes at most 1/e times as likely beside others. */
  readonly speaksAgainst: readonly string[];
  /** ln of the factor by which it moves the leading fault, beside a fault it says nothing of. */
  readonly logWeight: number;
  readonly words: string;
}
