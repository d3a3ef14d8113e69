import { type ParsedLog, problemMessage } from "../../records/index.ts";

/** Which days a table of a log shows. */
export interface DayTableOptions {
  /** Local dates, oldest first. */
  readonly days: readonly string[];
  /** Rows later than this local time are left out. */
  readonly asOf?: string;
}

/** Whether a row of this time is to be shown. */
export function counts(time: string, { days, asOf }: DayTableOptions): boolean {
  return days.includes(time.slice(0, 10)) && (asOf === undefined || time <= asOf);
}

/** A local time to be read. */
export function clock(time: string): string {
  return time.replace("T", " ");
}

/** The sentence for a table without rows. */
export function nothing(what: string, log: ParsedLog<unknown> | undefined): string {
  return log === undefined
    ? `No log of ${what} is kept here.`
    : `${log.file}: no ${what} of these days.`;
}

/** What is wrong with the log, as notes below a table. */
export function problems(log: ParsedLog<unknown> | undefined): readonly string[] {
  return log === undefined || log.problems.length === 0 ? [] : [problemMessage(log, 5)];
}
