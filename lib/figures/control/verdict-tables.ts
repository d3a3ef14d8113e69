import type { ProcessVerdict } from "../../control/index.ts";
import { requireObject } from "../../input/index.ts";
import { type Table, type TableColumn, table } from "../parts/table.ts";
import { subjectOf, worstFirst } from "./worst-first.ts";

const subject: readonly TableColumn[] = [{ field: "subject", heading: "Parameter" }];

/**
 * The parameters of a process that ask for attention, worst first, with deviation, verdict, reason.
 *
 * @param verdict the verdict on one process
 * @returns table; its caption counts them; shows a sentence if every parameter says run
 *
 * @example
 * const verdict = processVerdict({ strips: [], batches: [], specification: colourPaperProcess });
 * attentionTable(verdict).caption // => "Colour-paper process: 0 of 0 parameters and colours ask for attention"
 */
export function attentionTable(verdict: ProcessVerdict): Table {
  requireObject("attentionTable", "verdict", verdict, "an object with process, name, verdict, …");
  const all = worstFirst(verdict);
  const rows = all.filter((one) => one.verdict !== "run");
  const digits = verdict.readingDecimals;
  return table(rows, {
    caption: `${verdict.name}: ${rows.length} of ${all.length} parameters and colours ask for attention`,
    ifEmpty:
      all.length === 0
        ? `${verdict.name}: ${verdict.reason}.`
        : `${verdict.name}: none of the ${all.length} parameters and colours asks for attention.`,
    columns: [
      ...subject,
      { field: "deviation", heading: "Deviation", unit: "density", digits, signed: true },
      { field: "verdict", heading: "Verdict" },
      { field: "workMayRun", heading: "Work may run" },
      { field: "reason", heading: "Reason" },
    ],
  });
}

/**
 * What changed since the last good day, largest share of the limit first.
 *
 * @param verdict the verdict on one process
 * @param most rows shown at most, 1 or more; by default 6
 * @returns table; shows a sentence if there was no good day before
 *
 * @example
 * const verdict = processVerdict({ strips: [], batches: [], specification: colourPaperProcess });
 * changeTable(verdict).caption // => "Colour-paper process: no good day before the latest strip's"
 */
export function changeTable(verdict: ProcessVerdict, most = 6): Table {
  requireObject("changeTable", "verdict", verdict, "an object with process, name, verdict, …");
  const since = verdict.changeSinceGoodDay;
  const rows = (since?.changes ?? []).slice(0, most).map((one) => ({
    ...one,
    subject: subjectOf(one),
    percent: one.changeOverLimit === null ? null : 100 * one.changeOverLimit,
  }));
  const density = { unit: "density", digits: verdict.readingDecimals, signed: true };
  return table(rows, {
    caption:
      since === null
        ? `${verdict.name}: no good day before the latest strip's`
        : `${verdict.name}: what changed since the last good day, ${since.goodDay}`,
    ifEmpty: `${verdict.name}: no earlier day ended with run, so there is nothing to compare with.`,
    columns: [
      ...subject,
      { field: "deviationThen", heading: "Then", ...density },
      { field: "deviationNow", heading: "Now", ...density },
      { field: "change", heading: "Change", ...density },
      { field: "percent", heading: "Change", unit: "% of the process limit", digits: 0 },
    ],
  });
}
