import { InputError, requireEntries, requireNumber } from "../../input/index.ts";

/** One remake, or several for the same reason. */
export interface RemakeEntry {
  readonly reason: string;
  readonly count: number;
  /** Cost of one remake in the lab's money; counted as 0 where it is left out. */
  readonly costEach?: number;
}

/** A reason with its weight. */
export interface RankedReason {
  readonly reason: string;
  readonly count: number;
  readonly cost: number;
  /** Share of all remakes, and of this and all larger reasons together. */
  readonly share: number;
  readonly cumulativeShare: number;
}

/**
 * Reasons of remakes ranked, by count or by cost.
 *
 * @param entries reason, count and cost of one
 * @param by `"count"` (default) or `"cost"`
 * @returns reasons from the largest to the smallest; equal ones in the order of the alphabet
 * @throws InputError if a count or cost is negative, or by cost if no entry has one
 *
 * @example
 * rankedReasons([{ reason: "too dark", count: 2 }, { reason: "dust", count: 6 }])[0]?.share // => 0.75
 *
 * Source: J. M. Juran, Quality Control Handbook (ranking of causes).
 */
export function rankedReasons(
  entries: readonly RemakeEntry[],
  by: "count" | "cost" = "count",
): readonly RankedReason[] {
  requireEntries("rankedReasons", "entries", entries);
  if (by === "cost" && entries.length > 0 && entries.every((one) => one.costEach === undefined)) {
    const advice = "write what one remake costs, or rank by count";
    throw new InputError("rankedReasons", "costEach", "missing in every entry", advice);
  }
  const totals = new Map<string, { count: number; cost: number }>();
  entries.forEach((entry, i) => {
    const count = requireNumber("rankedReasons", `entries[${i}].count`, entry.count, { min: 0 });
    const each = requireNumber("rankedReasons", `entries[${i}].costEach`, entry.costEach ?? 0, {
      min: 0,
    });
    const total = totals.get(entry.reason) ?? { count: 0, cost: 0 };
    totals.set(entry.reason, { count: total.count + count, cost: total.cost + count * each });
  });
  const sorted = [...totals].sort(([a, x], [b, y]) => y[by] - x[by] || a.localeCompare(b, "en"));
  const all = sorted.reduce((total, [, each]) => total + each[by], 0);
  let running = 0;
  return sorted.map(([reason, total]) => {
    running += total[by];
    const share = (part: number) => (all === 0 ? 0 : part / all);
    return { reason, ...total, share: share(total[by]), cumulativeShare: share(running) };
  });
}
