import type { BatchChange, ParameterSeries } from "../../control/index.ts";
import { chartTime } from "../parts/chart-time.ts";

/** The readings of a series between two local times, with its batch changes. */
export function during(series: ParameterSeries, from?: string, to?: string): ParameterSeries {
  if (from === undefined && to === undefined) return series;
  const kept = series.takenAt.flatMap((time, i) => {
    const late = to !== undefined && time > (to.length === 10 ? `${to}T99` : to);
    return (from !== undefined && time < from) || late ? [] : [i];
  });
  const pick = <T>(values: readonly T[]) => kept.flatMap((i) => values.slice(i, i + 1));
  const first = kept[0] ?? 0;
  return {
    ...series,
    rows: pick(series.rows),
    takenAt: pick(series.takenAt),
    deviations: pick(series.deviations),
    batchChanges: series.batchChanges
      .filter(({ at }) => at > first && at < first + kept.length)
      .map((change) => ({ ...change, at: change.at - first })),
    gaps: series.gaps
      .filter((at) => at >= first && at < first + kept.length)
      .map((at) => at - first),
  };
}

/**
 * Batch changes, each once, half-way between the strips before and after it. Single strips of the
 * new batch, run beside the old one for the crossover, are not yet a change.
 */
export function batchChangesOf(
  series: readonly ParameterSeries[],
): readonly { readonly t: number; readonly label: string }[] {
  const found = new Map<string, number>();
  for (const { batchChanges, takenAt } of series) {
    for (const { at, from, to, crossover } of lastingChanges(batchChanges)) {
      const label = `batch ${from} → ${to}${crossover ? "" : " (no crossover)"}`;
      const after = chartTime("controlChartFigure", "takenAt", takenAt[at] ?? "");
      const before = chartTime(
        "controlChartFigure",
        "takenAt",
        takenAt[at - 1] ?? takenAt[at] ?? "",
      );
      if (!found.has(label)) found.set(label, (before + after) / 2);
    }
  }
  return [...found].map(([label, t]) => ({ t, label }));
}

/** Changes without those that are taken back with the very next strip. */
function lastingChanges(changes: readonly BatchChange[]): readonly BatchChange[] {
  const lasting: BatchChange[] = [];
  for (let i = 0; i < changes.length; i++) {
    const change = changes[i];
    const next = changes[i + 1];
    if (change === undefined) continue;
    if (next !== undefined && next.at === change.at + 1 && next.to === change.from) i++;
    else lasting.push(change);
  }
  return lasting;
}
