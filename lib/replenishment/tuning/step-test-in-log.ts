import { dateOfDay, dayNumber } from "../calendar.ts";
import type { SetRateChange } from "../rates/set-rate-changes.ts";
import type { KnownRateChange } from "./rate-sensitivity.ts";

/** A step test found in a log: the set rate was changed and brought back. */
export interface LoggedStepTest {
  readonly from: string;
  /** Last day whose strips belong to it. */
  readonly to: string;
  readonly watchFrom: string;
  /** Strips from the first on that belong to it. */
  readonly strips: number;
  readonly changes: readonly KnownRateChange[];
}

/** Turnovers after the return that still teach: three quarters of the way back. */
const TURNOVERS_AFTER = 1.5;
const BACK = 0.01;
const FEWEST_STRIPS = 10;

/**
 * The first stretch of a log in which the set rate was changed and came back to what it was, with the
 * strips until the bath has mostly followed; null if there is none.
 */
export function stepTestInLog(
  changes: readonly SetRateChange[],
  known: readonly KnownRateChange[],
  at: readonly string[],
  turnovers: readonly number[],
): LoggedStepTest | null {
  const back = changes.findIndex(({ fraction }, i) => i > 0 && Math.abs(fraction) < BACK);
  if (back < 0) return null;
  const end = (known[back]?.atTurnovers ?? 0) + TURNOVERS_AFTER;
  const nextChange = known[back + 1]?.atTurnovers ?? Number.POSITIVE_INFINITY;
  const strips = turnovers.filter((n) => n <= Math.min(end, nextChange)).length;
  const last = at[strips - 1]?.slice(0, 10);
  if (strips < FEWEST_STRIPS || last === undefined) return null;
  return {
    from: changes[0]?.date ?? "",
    to: last,
    watchFrom: dateOfDay(dayNumber("stepTestInLog", "at", last) + 1),
    strips,
    changes: known.slice(0, back + 1),
  };
}
