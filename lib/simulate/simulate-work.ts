import type { RandomStream } from "../numerics/index.ts";
import type { WorkEntry } from "../records/index.ts";
import type { CheckedFault } from "./simulated-fault.ts";

/** Invented: racks are lifted and baths filled once in so many days, for no reason but upkeep. */
const HANDLED_EVERY_DAYS = 12;
/** Work that lets a fault in is written down so often. */
const RECORDED = 0.85;
/** Local time of work before the start-up strip. */
const EARLY = "06:40";

/** The work that goes before a fault of the developer's contents. */
const workBefore: Readonly<Record<string, string>> = {
  "developer-too-strong": "developer-mixed",
  "developer-too-weak": "developer-mixed",
  "contaminated-with-fixer": "fixer-handled",
  "contaminated-with-bleach": "bleach-handled",
};

/**
 * Work that a lab writes down: replenisher mixed anew, fixer and bleach handled, whether anything went
 * wrong with it or not. What went wrong is never written, and now and then the work is not either.
 *
 * @param mixesOn whether replenisher is mixed on a day, by index
 * @param freshAt days on which the bath is mixed afresh, by index, and the local time
 */
export function simulateWork(
  line: string,
  days: readonly string[],
  mixesOn: (day: number) => boolean,
  freshAt: ReadonlyMap<number, string>,
  faults: readonly CheckedFault[],
  { uniform }: RandomStream,
): readonly WorkEntry[] {
  return days.flatMap((date, day) => {
    const begun = faults.filter(({ fromDay }) => fromDay === day);
    const draws = ["developer-mixed", "fixer-handled", "bleach-handled"].map((work) => {
      const [usual, written] = [uniform(), uniform()];
      const mixed = work === "developer-mixed";
      const upkeep = mixed ? mixesOn(day) : usual < 1 / HANDLED_EVERY_DAYS;
      const letIn = begun.some(({ kind }) => workBefore[kind] === work) && written < RECORDED;
      const early = upkeep || letIn ? [EARLY] : [];
      const fresh = mixed ? freshAt.get(day) : undefined;
      const times = [...new Set([...early, ...(fresh === undefined ? [] : [fresh])])];
      return times.map((time) => ({ doneAt: `${date}T${time}`, line, work }));
    });
    return draws.flat();
  });
}
