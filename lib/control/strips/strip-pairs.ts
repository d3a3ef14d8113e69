import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import type { Strip } from "../strip.ts";
import type { StripPair } from "./crossover-result.ts";
import { hoursBetween, requireLocalTime } from "./local-time.ts";

/** Which strips of a log were run side by side. */
export interface StripPairSearch {
  readonly process: string;
  /** Batch that is running out. */
  readonly from: string;
  /** New batch. */
  readonly to: string;
  /** Two strips this many minutes apart or closer were run side by side. Default 30. */
  readonly withinMinutes?: number;
}

/**
 * Finds the strips of an old and a new batch that were run side by side in a log: what a crossover
 * is computed from.
 *
 * Each strip of the new batch is paired with the nearest strip of the old batch that is not yet
 * taken and not farther away than the window; the closest pairs are made first.
 *
 * @param strips the log, any order, any processes
 * @param search process, the two batches, and the window in minutes (above 0, default 30)
 * @returns the pairs in the order of time; none if there are none
 * @throws InputError if the two batches are the same or a time is not valid
 *
 * @example
 * const strip = (takenAt: string, stripBatch: string) =>
 *   ({ takenAt, process: "colour-paper", stripBatch, operator: "A", patches: {} });
 * const log = [strip("2026-06-01T07:10", "1"), strip("2026-06-01T07:16", "2"), strip("2026-06-02T07:12", "2")];
 * stripPairs(log, { process: "colour-paper", from: "1", to: "2" }).length // => 1
 */
export function stripPairs(
  strips: readonly Strip[],
  search: StripPairSearch,
): readonly StripPair[] {
  const where = "stripPairs";
  requireEntries(where, "strips", strips);
  requireObject(where, "search", search, "an object with process, from and to");
  const { process, from, to } = search;
  if (from === to) throw new InputError(where, "to", to, "write another batch than from");
  const bounds = { above: 0, unit: "minutes" };
  const window = requireNumber(where, "withinMinutes", search.withinMinutes ?? 30, bounds);
  const ofBatch = (batch: string) => {
    const found = strips.filter((each) => each.process === process && each.stripBatch === batch);
    for (const each of found) requireLocalTime(where, "takenAt", each.takenAt);
    return found.sort((a, b) => (a.takenAt < b.takenAt ? -1 : a.takenAt > b.takenAt ? 1 : 0));
  };
  const old = ofBatch(from);
  const fresh = ofBatch(to);
  const near: { readonly i: number; readonly j: number; readonly apart: number }[] = [];
  let first = 0;
  fresh.forEach((strip, i) => {
    // Both lists are in time: strips of the old batch before the window never come back into it.
    while (first < old.length && minutes(old[first], strip) > window) first++;
    for (let j = first; j < old.length; j++) {
      const apart = minutes(old[j], strip);
      if (apart < -window) break;
      near.push({ i, j, apart: Math.abs(apart) });
    }
  });
  const taken = { old: new Set<number>(), fresh: new Set<number>() };
  const pairs: { readonly at: number; readonly pair: StripPair }[] = [];
  for (const { i, j } of near.sort((a, b) => a.apart - b.apart)) {
    const [a, b] = [old[j], fresh[i]];
    if (taken.old.has(j) || taken.fresh.has(i) || a === undefined || b === undefined) continue;
    taken.old.add(j);
    taken.fresh.add(i);
    pairs.push({ at: i, pair: { old: a, new: b } });
  }
  return pairs.sort((a, b) => a.at - b.at).map((each) => each.pair);
}

function minutes(earlier: Strip | undefined, later: Strip): number {
  return 60 * hoursBetween(earlier?.takenAt ?? later.takenAt, later.takenAt);
}
