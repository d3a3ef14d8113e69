import type { LogSource } from "../reading/log-problem.ts";

/** Pieces of one format that went through one line on one day. */
export interface ProductionRow {
  /** Local day, `"2026-08-14"`. */
  readonly date: string;
  /** Id of the process: `"colour-negative"`, `"colour-paper"` or the lab's own. */
  readonly process: string;
  /** Id of the format, whose area is looked up elsewhere: `"135-36"`, `"paper-102x152"`. */
  readonly format: string;
  /** Rolls, sheets or prints: a whole number, 0 or more. */
  readonly count: number;
  readonly source?: LogSource;
}

/** A measured calibration: what so many strokes put into a measuring cylinder. */
export interface CylinderCheck {
  readonly strokes: number;
  readonly volumeMl: number;
}

/** One reading of a replenisher pump. */
export interface PumpReading {
  /** Local time to the minute, `"2026-08-14T18:05"`. */
  readonly readAt: string;
  readonly pump: string;
  /** What the stroke counter shows; it only ever rises, except at a marked reset. */
  readonly counterStrokes: number;
  /** The volume per stroke the pump is set to. */
  readonly settingMlPerStroke: number;
  /** What left the replenisher tank since the reading before, if it was measured. */
  readonly deliveredMl?: number;
  /** Whether the counter was set back (or the pump replaced) since the reading before. */
  readonly counterReset: boolean;
  readonly cylinder?: CylinderCheck;
  readonly source?: LogSource;
}

/** One temperature of one bath by one instrument. */
export interface BathTemperature {
  /** Local time to the minute. */
  readonly readAt: string;
  readonly bath: string;
  /** What was read: the line's own `"controller"`, an independent `"thermometer"`, or another. */
  readonly instrument: string;
  readonly temperatureC: number;
  readonly source?: LogSource;
}

/** One day's prints and how many of them were made again, by reason. */
export interface RemakesDay {
  /** Local day. */
  readonly date: string;
  readonly printsMade: number;
  /** Prints made again, by reason: `{ tooBright: 3, tooDim: 1 }`; together at most `printsMade`. */
  readonly remade: Readonly<Record<string, number>>;
  readonly source?: LogSource;
}

/** One check of a line that gave a number. */
export interface LineCheck {
  /** Local time to the minute. */
  readonly readAt: string;
  /** Id of the line. */
  readonly line: string;
  /** What was checked: `"developer-time"`, `"specific-gravity"`, `"check-plaque"` … */
  readonly check: string;
  /** The number read, in a unit of the lab's own that stays the same. */
  readonly value: number;
  readonly source?: LogSource;
}

/** One piece of work at a line that was written down. */
export interface WorkEntry {
  /** Local time to the minute. */
  readonly doneAt: string;
  /** Id of the line. */
  readonly line: string;
  /** What was done: `"developer-mixed"`, `"fixer-handled"` … */
  readonly work: string;
  readonly source?: LogSource;
}
