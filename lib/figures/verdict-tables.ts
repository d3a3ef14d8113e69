import type { ProcessVerdict, Strip } from "../control/index.ts";
import { type Table, type TableColumn, table } from "./table.ts";

const subject: readonly TableColumn[] = [{ field: "subject", heading: "Parameter" }];
const SEVERITY = { hold: 0, act: 1, run: 2 } as const;

/** Every parameter, the worst verdict first, in the order of the specification otherwise. */
function worstFirst({ parameters }: ProcessVerdict) {
  return [...parameters]
    .sort((a, b) => SEVERITY[a.verdict] - SEVERITY[b.verdict])
    .map((one) => ({ ...one, subject: subjectOf(one) }));
}

function subjectOf({ name, colour }: { name: string; colour: string | null }): string {
  return colour === null ? name : `${name} ${colour}`;
}

/**
 * The parameters of a process that ask for attention, worst first, with deviation, verdict, reason.
 *
 * @param verdict the verdict on one process
 * @returns table; its caption counts them; without rows if every parameter says run
 *
 * @example
 * const verdict = processVerdict({ strips: [], batches: [], specification: colourPaperProcess });
 * attentionTable(verdict).caption // => "Colour-paper process: 0 of 0 parameters and colours ask for attention"
 */
export function attentionTable(verdict: ProcessVerdict): Table {
  const all = worstFirst(verdict);
  const rows = all.filter((one) => one.verdict !== "run");
  return table(rows, {
    caption: `${verdict.name}: ${rows.length} of ${all.length} parameters and colours ask for attention`,
    columns: [
      ...subject,
      { field: "deviation", heading: "Deviation", unit: "density", digits: 3, signed: true },
      { field: "verdict", heading: "Verdict" },
      { field: "workMayRun", heading: "Work may run" },
      { field: "reason", heading: "Reason" },
    ],
  });
}

/**
 * The statistical signals that stand on a process's latest strip, one row for each parameter and
 * colour that has any. They ask to look; they stop nothing.
 *
 * @param verdict the verdict on one process
 * @param strips the strips the verdict was made from, for the times of the readings
 * @returns table: which run rules (by family and number), whether the moving range, the EWMA and
 *   the CUSUM signal, and the first strip of the oldest of these patterns
 *
 * @example
 * const verdict = processVerdict({ strips: [], batches: [], specification: colourPaperProcess });
 * signalTable(verdict, []).caption // => "Colour-paper process: 0 parameters and colours with statistical signals on the latest strip"
 */
export function signalTable(verdict: ProcessVerdict, strips: readonly Strip[]): Table {
  const rows = worstFirst(verdict).flatMap(({ signals, ...one }) => {
    if (signals.length === 0) return [];
    const has = (kind: string) => (signals.some((each) => each.kind === kind) ? "signals" : null);
    const first = Math.min(...signals.flatMap((each) => each.rows));
    return [
      {
        subject: one.subject,
        rules: ruleWords(signals.flatMap(({ rule }) => rule ?? [])),
        range: has("moving range"),
        ewma: has("EWMA"),
        cusum: has("CUSUM"),
        since: strips[first]?.takenAt.replace("T", " "),
      },
    ];
  });
  return table(rows, {
    caption: `${verdict.name}: ${rows.length} parameters and colours with statistical signals on the latest strip`,
    columns: [
      ...subject,
      { field: "rules", heading: "Run rules" },
      { field: "range", heading: "Moving range" },
      { field: "ewma", heading: "EWMA" },
      { field: "cusum", heading: "CUSUM" },
      { field: "since", heading: "First strip of it" },
    ],
  });
}

/** "Western Electric 2, 3; Nelson 5". */
function ruleWords(rules: readonly string[]): string {
  const families = [
    ["western-electric-", "Western Electric"],
    ["nelson-", "Nelson"],
  ] as const;
  return families
    .flatMap(([prefix, name]) => {
      const own = rules.filter((rule) => rule.startsWith(prefix));
      return own.length === 0 ? [] : `${name} ${own.map((r) => r.slice(prefix.length)).join(", ")}`;
    })
    .join("; ");
}

/**
 * What changed since the last good day, largest share of the limit first.
 *
 * @param verdict the verdict on one process
 * @param most rows shown at most, 1 or more; by default 6
 * @returns table; without rows if there was no good day before
 *
 * @example
 * const verdict = processVerdict({ strips: [], batches: [], specification: colourPaperProcess });
 * changeTable(verdict).caption // => "Colour-paper process: no good day before the latest strip's"
 */
export function changeTable(verdict: ProcessVerdict, most = 6): Table {
  const since = verdict.changeSinceGoodDay;
  const rows = (since?.changes ?? []).slice(0, most).map((one) => ({
    ...one,
    subject: subjectOf(one),
    percent: one.changeOverLimit === null ? null : 100 * one.changeOverLimit,
  }));
  const density = { unit: "density", digits: 3, signed: true };
  return table(rows, {
    caption:
      since === null
        ? `${verdict.name}: no good day before the latest strip's`
        : `${verdict.name}: what changed since the last good day, ${since.goodDay}`,
    columns: [
      ...subject,
      { field: "deviationThen", heading: "Then", ...density },
      { field: "deviationNow", heading: "Now", ...density },
      { field: "change", heading: "Change", ...density },
      { field: "percent", heading: "Change", unit: "% of the process limit", digits: 0 },
    ],
  });
}
