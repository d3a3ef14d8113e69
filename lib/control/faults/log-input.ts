/** One temperature of one bath by one instrument, as a bath-temperature log holds it. */
export interface LoggedTemperature {
  readonly readAt: string;
  readonly bath: string;
  /** `"thermometer"` for an independent one, `"controller"` for the line's own. */
  readonly instrument: string;
  readonly temperatureC: number;
}

/** One reading of a replenisher pump, as a pump log holds it. */
export interface LoggedPump {
  readonly readAt: string;
  readonly pump: string;
  readonly counterStrokes: number;
  readonly settingMlPerStroke: number;
  readonly deliveredMl?: number;
  readonly counterReset: boolean;
  readonly cylinder?: { readonly strokes: number; readonly volumeMl: number };
}

/** Pieces of one format on one day, as a production log holds it. */
export interface LoggedProduction {
  readonly date: string;
  readonly process: string;
  readonly format: string;
  readonly count: number;
}

/** One check of a line, as a check log holds it. */
export interface LoggedCheck {
  readonly readAt: string;
  readonly line: string;
  /** Id of one of `faultLogKinds`: `"developer-time"`, `"specific-gravity"` … */
  readonly check: string;
  /** The number read, in a unit of the lab's own that stays the same. */
  readonly value: number;
}

/** One piece of work at a line, as a work log holds it. */
export interface LoggedWork {
  /** Local day or time. */
  readonly doneAt: string;
  readonly line: string;
  /** Id of one of `faultWorkKinds`: `"developer-mixed"`, `"fixer-handled"` … */
  readonly work: string;
}

/** The logs of one line; leave out those the lab does not keep. */
export interface LabLogsInput {
  /** A period in which nothing was wrong, by local dates; the same as for `faultEvidence`. */
  readonly basePeriod: { readonly from: string; readonly to: string };
  /** Entries after this local time are left out. Default: none is. */
  readonly asOf?: string;
  readonly temperatures?: {
    /** Id of the developer's bath in the log. */
    readonly bath: string;
    readonly readings: readonly LoggedTemperature[];
  };
  readonly pumps?: {
    /** Id of the pump of the developer's replenisher in the log. */
    readonly pump: string;
    readonly readings: readonly LoggedPump[];
  };
  /**
   * The line's work: with it, what the pump delivered is told for each square metre and not for each
   * stroke, so that strokes that are missing show as well.
   */
  readonly production?: {
    /** Id of the line's process in the log. */
    readonly process: string;
    readonly rows: readonly LoggedProduction[];
  };
  readonly checks?: { readonly line: string; readonly readings: readonly LoggedCheck[] };
  readonly work?: { readonly line: string; readonly entries: readonly LoggedWork[] };
}
