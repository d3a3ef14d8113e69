import { InputError, requireEntries } from "../../input/index.ts";
import { type GaugeReadings, gaugeDesign } from "./gauge-readings.ts";

/** One reading of a gauge study. */
export interface GaugeReading {
  readonly operator: string;
  readonly patch: string;
  readonly density: number;
}

/** A gauge study put in order. */
export interface CrossedReadings {
  readonly operators: readonly string[];
  readonly patches: readonly string[];
  /** `readings[operator][patch]` is the list of repeats, as the gauge studies take it. */
  readonly readings: GaugeReadings;
}

/**
 * Puts the rows of a gauge study in order: by operator, by patch, repeats in the order they were read.
 *
 * @param rows one a reading, in any order
 * @returns operators and patches in the order they first occur, and the readings
 * @throws InputError if a patch was not read by everybody as often, naming the first such patch
 *
 * @example
 * crossedReadings([["A", 1], ["B", 1], ["A", 2], ["B", 2]].flatMap(([operator, patch]) => [0, 1].map((density) => ({ operator, patch: `${patch}`, density })))).readings.length // => 2
 *
 * Source: AIAG, Measurement Systems Analysis, 4th ed. 2010, ch. III (crossed study).
 */
export function crossedReadings(rows: readonly GaugeReading[]): CrossedReadings {
  requireEntries("crossedReadings", "rows", rows);
  const operators = [...new Set(rows.map((row) => row.operator))];
  const patches = [...new Set(rows.map((row) => row.patch))];
  const of = (operator: string, patch: string) =>
    rows
      .filter((row) => row.operator === operator && row.patch === patch)
      .map((row) => row.density);
  const readings = operators.map((operator) => patches.map((patch) => of(operator, patch)));
  const repeats = readings[0]?.[0]?.length ?? 0;
  operators.forEach((operator, o) => {
    patches.forEach((patch, p) => {
      const found = readings[o]?.[p]?.length ?? 0;
      if (found === repeats) return;
      const advice = `read every patch ${repeats} times, or leave the patch out of the study`;
      const argument = `readings of ${patch} by ${operator}`;
      throw new InputError("crossedReadings", argument, found, advice);
    });
  });
  gaugeDesign("crossedReadings", readings);
  return { operators, patches, readings };
}
