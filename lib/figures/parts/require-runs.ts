import { InputError, requireEntries } from "../../input/index.ts";

/** A named log of days, whatever the days hold. */
interface Run {
  readonly name: string;
  readonly log: { readonly days: readonly unknown[] };
}

/** Lets runs in that can be drawn over each other: one to four, each of two days or more. */
export function requireRuns(where: string, runs: readonly Run[]): void {
  requireEntries(where, "runs", runs);
  if (runs.length < 1 || runs.length > 4) {
    throw new InputError(where, "runs", runs.length, "write one to four { name, log }");
  }
  for (const { name, log } of runs) {
    if (log.days.length >= 2) continue;
    throw new InputError(where, `days of ${name}`, log.days.length, "write at least two days");
  }
}
