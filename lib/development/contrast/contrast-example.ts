import data from "../../../data/development/contrast-time-illustrative.json" with { type: "json" };
import type { ContrastReading } from "./contrast-from-two-times.ts";

/** An invented set of contrast readings, to try the functions with. */
export interface ContrastExample {
  readonly film: string;
  readonly developer: string;
  readonly temperatureC: number;
  readonly rows: readonly ContrastReading[];
  readonly source: string;
  readonly howObtained: string;
}

/**
 * Invented readings of contrast index against developing time
 * (data/development/contrast-time-illustrative.json). No such table was found in print: read your
 * own from a step tablet developed for four or five times.
 *
 * @example
 * contrastExample.rows.length // => 6
 *
 * Source: invented, for illustration only.
 */
export const contrastExample: ContrastExample = data;
