import type { DeveloperState } from "./developer-over-days.ts";
import type { LineState } from "./simulate-checks.ts";
import type { CheckedFault } from "./simulated-fault.ts";

/** The faults of one line as functions of the day's index. */
export interface FaultsOfLine {
  readonly all: readonly CheckedFault[];
  readonly standing: (day: number) => readonly CheckedFault[];
  /** Fraction by which the developer's pump delivers too much. */
  readonly pumpError: (day: number) => number;
  readonly heaterErrorC: (day: number) => number;
  readonly timeFactor: (day: number) => number;
  /** How badly the first strip of a day is mishandled; 0 on other days. */
  readonly mishandled: (day: number) => number;
  /** Density by which the printer is off. */
  readonly printerDensity: (day: number) => number;
  /** What checks of the line could tell of a day, with a developer of these contents. */
  readonly checked: (day: number, developer: DeveloperState) => LineState;
}

/** Sorts out what a line's faults do. */
export function faultsOfLine(line: string, faults: readonly CheckedFault[]): FaultsOfLine {
  const all = faults.filter((fault) => fault.line === line);
  const standing = (day: number) =>
    all.filter(({ fromDay, untilDay }) => fromDay <= day && day < untilDay);
  const size = (day: number, kind: string) =>
    standing(day).reduce((sum, fault) => sum + (fault.kind === kind ? fault.size : 0), 0);
  const difference = (more: string, less: string) => (day: number) =>
    size(day, more) - size(day, less);
  const time = difference("developer-too-long", "developer-too-short");
  return {
    all,
    standing,
    pumpError: difference("over-replenished", "under-replenished"),
    heaterErrorC: difference("developer-too-warm", "developer-too-cool"),
    timeFactor: (day) => 1 + time(day),
    mishandled: (day) =>
      all.reduce(
        (sum, f) => sum + (f.kind === "strip-mishandled" && f.fromDay === day ? f.size : 0),
        0,
      ),
    printerDensity: (day) => size(day, "printer-at-fault"),
    checked: (day, developer) => ({
      developer,
      timeFactor: 1 + time(day),
      fixerLost: size(day, "fixer-exhausted"),
      washLost: size(day, "wash-poor"),
      zeroDrift: size(day, "densitometer-at-fault"),
    }),
  };
}
