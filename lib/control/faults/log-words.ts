import type { FaultCheck } from "./fault-check.ts";
import type { CourseShape } from "./fault-courses.ts";
import type { FaultTable } from "./fault-table.ts";
import type { LogOfReadings, LogOfWork, LogStatement } from "./lab-log.ts";
import { changeSince, entriesAt, type LogTerm } from "./log-likelihood.ts";

/** A log with what it makes of each hypothesis. */
export interface WeighedLog {
  readonly log: LogOfReadings | LogOfWork;
  readonly check: FaultCheck | undefined;
  readonly term: LogTerm;
}

/** A fault no table knows of: what a log says beside it is what it says at all. */
const UNLISTED = "none-of-these";

/** What each log says if the leading fault took its most likely course. */
export function logStatements(
  logs: readonly WeighedLog[],
  table: FaultTable,
  takenAt: readonly string[],
  leading: { readonly fault: string; readonly course: CourseShape },
): readonly LogStatement[] {
  return logs.map(({ log, check, term }) => {
    const weightOf = (id: string) => term(id, leading.course) - term(UNLISTED, leading.course);
    const speaking = (holds: (weight: number) => boolean) =>
      table.faults.filter(({ id }) => holds(weightOf(id))).map(({ id }) => id);
    const speaksFor = speaking((weight) => weight >= 1);
    const speaksAgainst = speaking((weight) => weight <= -1);
    const namesOf = (ids: readonly string[]) =>
      ids.map((id) => table.faults.find((fault) => fault.id === id)?.name ?? id).join(", ");
    const says = [
      ...(speaksFor.length > 0 ? [`speaks for ${namesOf(speaksFor)}`] : []),
      ...(speaksAgainst.length > 0 ? [`speaks against ${namesOf(speaksAgainst)}`] : []),
    ];
    const seen =
      log.kind === "readings"
        ? readingsWords(log, takenAt, leading.course)
        : workWords(log, takenAt, leading.course);
    return {
      log: log.log,
      check: check?.id ?? null,
      speaksFor,
      speaksAgainst,
      logWeight: weightOf(leading.fault),
      words: `${seen}; ${says.length > 0 ? says.join(", ") : "says little"}`,
    };
  });
}

function readingsWords(
  log: LogOfReadings,
  takenAt: readonly string[],
  course: CourseShape,
): string {
  const change = changeSince(log, takenAt, course);
  if (change === undefined) return `${log.quantity}: no reading since it began`;
  const sd = Math.sqrt(change.variance);
  const digits = Math.max(0, Math.min(4, 1 - Math.floor(Math.log10(sd))));
  const size = Math.abs(change.mean).toFixed(digits);
  const sign = Number(size) === 0 ? "" : change.mean < 0 ? "−" : "+";
  const unit = log.unit === "" ? "" : ` ${log.unit}`;
  const of = change.readings === 1 ? "1 reading" : `mean of ${change.readings} readings`;
  return `${log.quantity} ${sign}${size} ± ${sd.toFixed(digits)}${unit} against the base period (${of} since it began)`;
}

function workWords(log: LogOfWork, takenAt: readonly string[], course: CourseShape): string {
  const { found } = entriesAt(log, takenAt, course);
  const rate = log.perDay > 0.95 ? "daily" : `about every ${Math.round(1 / log.perDay)} days`;
  return found.length > 0
    ? `${log.words}: entered ${found.join(", ")}, where it began (usually ${rate})`
    : `${log.words}: no entry where it began`;
}
