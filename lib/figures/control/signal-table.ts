import type { ProcessVerdict, StatisticalSignal, Strip } from "../../control/index.ts";
import { requireObject } from "../../input/index.ts";
import { type Table, table } from "../parts/table.ts";
import { worstFirst } from "./worst-first.ts";

/**
 * The statistical signals that stand on a process's latest strip, one row for each parameter and
 * colour that has any. They ask to look; they stop nothing.
 *
 * A signal that has stood for a while is told once, with the strip on which it began and the number
 * of readings since: what is new this morning is what begins this morning.
 *
 * @param verdict the verdict on one process
 * @param strips the strips the verdict was made from, for the times of the readings
 * @returns table: which run rules (by family and number), which of the moving range, the EWMA and the
 *   CUSUM signal, the first strip of the longest-standing of them, and readings since; shows a
 *   sentence if there is no signal
 *
 * @example
 * const verdict = processVerdict({ strips: [], batches: [], specification: colourPaperProcess });
 * signalTable(verdict, []).caption // => "Colour-paper process: statistical signals on the latest strip, on 0 of 0 parameters and colours"
 */
export function signalTable(verdict: ProcessVerdict, strips: readonly Strip[]): Table {
  requireObject("signalTable", "verdict", verdict, "an object with process, name, verdict, …");
  const all = worstFirst(verdict);
  const rows = all.flatMap(({ subject, signals }) => {
    const longest = [...signals].sort((a, b) => b.strips - a.strips)[0];
    if (longest === undefined) return [];
    return [
      {
        subject,
        rules: ruleWords(signals.flatMap(({ rule }) => rule ?? [])),
        others: otherCharts(signals),
        since: strips[longest.since]?.takenAt.replace("T", " "),
        strips: longest.strips,
      },
    ];
  });
  const { charts, reason } = verdict.statisticalBase;
  return table(rows, {
    caption: `${verdict.name}: statistical signals on the latest strip, on ${rows.length} of ${all.length} parameters and colours`,
    ifEmpty:
      charts === null
        ? `${verdict.name}: no statistical limits, so no signals (${reason}).`
        : `${verdict.name}: no statistical signal stands on the latest strip.`,
    columns: [
      { field: "subject", heading: "Parameter" },
      { field: "rules", heading: "Run rules" },
      { field: "others", heading: "Other charts" },
      { field: "since", heading: "Since the strip of" },
      { field: "strips", heading: "Lasting", unit: "strips" },
    ],
  });
}

function otherCharts(signals: readonly StatisticalSignal[]): string {
  return signals.flatMap(({ kind }) => (kind === "run rules" ? [] : [kind])).join(", ");
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
