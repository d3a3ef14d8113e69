import { InputError, requireNumber } from "../../input/index.ts";
import { type FaultCheck, faultChecks } from "./fault-check.ts";
import type { LabLogs } from "./lab-log.ts";
import { readingsTerm, workTerm } from "./log-likelihood.ts";
import type { WeighedLog } from "./log-words.ts";

const MINUTE = /^\d{4}-\d\d-\d\dT\d\d:\d\d/;

/** Lets logs in and makes each ready to be weighed. */
export function requireLabLogs(
  where: string,
  given: LabLogs | undefined,
  checks: readonly FaultCheck[],
  takenAt: readonly string[],
): readonly WeighedLog[] {
  if (given === undefined) return [];
  if (!Array.isArray(given.logs)) {
    throw new InputError(where, "logs", given, "write what labLogs returned");
  }
  for (const [i, at] of takenAt.entries()) {
    if (MINUTE.test(at)) continue;
    const advice = 'with logs, write local times to the minute: "2026-08-14T07:10"';
    throw new InputError(where, `takenAt[${i}]`, at, advice);
  }
  return given.logs.map((log) => {
    if (log.kind === "work") {
      requireNumber(where, `${log.log}: perDay`, log.perDay, { above: 0 });
      return { log, check: undefined, term: workTerm(log, takenAt) };
    }
    for (const name of ["sd", "baseWeight", "wander", "scale"] as const) {
      requireNumber(where, `${log.log}: ${name}`, log[name], { above: 0 });
    }
    const check = [...checks, ...faultChecks].find(({ id }) => id === log.check);
    if (check === undefined) {
      const advice = "write options.checks that have it, or leave this log out";
      throw new InputError(where, `${log.log}: check`, log.check, advice);
    }
    return { log, check, term: readingsTerm(log, check, takenAt) };
  });
}
