import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import type { LogProblem, ParsedLog } from "./log-problem.ts";
import { problemMessage } from "./problem-message.ts";

/**
 * A log with something wrong in it where only a clean one will do. The message is that of
 * `problemMessage`; `problems` holds the whole list.
 *
 * @example
 * new LogError(parseProductionLog("", { file: "production.csv" })).message // => "production.csv: 1 problem\n  line 1: the file is empty; write the header line and one line a reading"
 */
export class LogError extends InputError {
  readonly problems: readonly LogProblem[];

  constructor(log: ParsedLog<unknown>) {
    const first = log.problems[0];
    super(log.file, first?.column ?? "", first?.value ?? "", first?.advice ?? "");
    this.name = "LogError";
    this.message = problemMessage(log);
    this.problems = log.problems;
  }
}

/**
 * The rows of a log if nothing at all is wrong with it; an error with the whole list if anything is.
 * For work that must not go on with part of the readings.
 *
 * @param log what a reader of logs returned
 * @returns the rows
 * @throws LogError (an InputError) whose message is that of `problemMessage`
 *
 * @example
 * requireCleanLog(parseProductionLog("date,process,format,count\n2026-08-14,colour-negative,135-36,41", { file: "production.csv" })).length // => 1
 */
export function requireCleanLog<Row>(log: ParsedLog<Row>): readonly Row[] {
  requireObject("requireCleanLog", "log", log, "an object with file, rows, problems, …");
  requireEntries("requireCleanLog", "problems", log.problems);
  if (log.problems.length > 0) throw new LogError(log);
  return log.rows;
}
