import { requireObject } from "../../input/index.ts";
import { dateOf } from "../strips/local-time.ts";
import type { StripHistory } from "../strips/strip-history.ts";
import { stripTable } from "../strips/strip-table.ts";
import { judgeStrips } from "./judge-strips.ts";
import { level } from "./limit-level.ts";
import type { Verdict } from "./verdict.ts";
import { type VerdictOptions, verdictSettings } from "./verdict-options.ts";

/** The verdict as it stood after one strip. */
export interface StripVerdict {
  /** Index into the strips that were given. */
  readonly row: number;
  readonly takenAt: string;
  /** Local date. */
  readonly day: string;
  readonly verdict: Verdict;
  readonly workMayRun: boolean;
  /** Whether it is the last strip of its day, whose verdict is the day's. */
  readonly endsDay: boolean;
}

/**
 * The verdict after every strip of a process, oldest first: the calendar of the line. By the rules of
 * `processVerdict`, without staleness; statistical limits are those of the one base period given, also
 * for strips before it.
 *
 * @param history strips, batches, crossovers, specification, and the time up to which strips count
 * @param options as for `processVerdict`
 * @returns one entry for each strip of the process, in the order of time
 * @throws InputError as `processVerdict`
 *
 * @example
 * const grey = (d: number) => ({ red: d, green: d, blue: d });
 * const reference = { dMin: grey(0.1), ld: grey(0.8), hd: grey(1.6), dMax: grey(2.4) };
 * const batches = [{ id: "77", process: "colour-paper", reference, correction: {} }];
 * const strips = [0.8, 0.93, 0.92].map((ld, i) => ({
 *   takenAt: `2026-08-14T07:${i + 1}0`, process: "colour-paper", stripBatch: "77", operator: "A",
 *   patches: { ...reference, ld: grey(ld), hd: grey(ld + 0.8) },
 * }));
 * const calendar = verdictHistory({ strips, batches, specification: colourPaperProcess });
 * calendar.map((each) => each.verdict) // => ["run", "act", "hold"]
 */
export function verdictHistory(
  history: StripHistory,
  options: VerdictOptions = {},
): readonly StripVerdict[] {
  const where = "verdictHistory";
  requireObject(where, "history", history, "an object with strips, batches and specification");
  const settings = verdictSettings(where, options);
  const table = stripTable(where, history);
  if (table.rows.length === 0) return [];
  const { worst } = judgeStrips(where, table, history.specification.id, settings);
  return table.takenAt.map((takenAt, i): StripVerdict => {
    const now = worst[i] ?? 0;
    const day = dateOf(takenAt);
    const following = table.takenAt[i + 1];
    return {
      row: table.rows[i] ?? 0,
      takenAt,
      day,
      verdict: now === level.hold ? "hold" : now === level.run ? "run" : "act",
      workMayRun: now < level.wait,
      endsDay: following === undefined || dateOf(following) !== day,
    };
  });
}
