import { requireEntries } from "../../input/index.ts";
import type { Aims, Strip, StripBatch } from "../strip.ts";
import { aimsOfBatch } from "./aims-of-batch.ts";
import { crossover } from "./crossover.ts";
import type { Crossover, CrossoverOptions } from "./crossover-result.ts";
import { requireLocalTime } from "./local-time.ts";
import { stripPairs } from "./strip-pairs.ts";

/** How all crossovers of a log are found. */
export interface CrossoverSearch extends Omit<CrossoverOptions, "ownAims"> {
  /** Two strips this many minutes apart or closer were run side by side. Default 30. */
  readonly withinMinutes?: number;
  /** Strips taken later than this local time are left out. */
  readonly asOf?: string;
}

/**
 * All crossovers of a lab: for each process, the batches in the order in which they came into use,
 * each new one crossed over from the one before it by the strips of both that were run side by side.
 *
 * `aim_new = aim_old + mean(reading_new − reading_old)`, where the old aims are themselves those of a
 * crossover if there was one. A batch that shares no pair with the one before it keeps its own aims
 * (reference + correction) and has no entry.
 *
 * @param strips the log, any order, any processes
 * @param batches the register of the batches
 * @param search window of a pair (minutes, default 30), what to warn of, and the local time up to
 * which strips count
 * @returns the crossovers, oldest first in each process, as `seriesOfStrips` and `morningCall` take them
 * @throws InputError as `aimsOfBatch`, `stripPairs` and `crossover`
 *
 * @example
 * const grey = (d: number) => ({ red: d, green: d, blue: d });
 * const batch = (id: string, ld: number) => ({ id, process: "colour-paper", reference: { ld: grey(ld) }, correction: {} });
 * const strip = (takenAt: string, stripBatch: string, ld: number) =>
 *   ({ takenAt, process: "colour-paper", stripBatch, operator: "A", patches: { ld: grey(ld) } });
 * const strips = [1, 2, 3].flatMap((day) =>
 *   [strip(`2026-06-0${day}T07:10`, "1", 0.81), strip(`2026-06-0${day}T07:16`, "2", 0.85)]);
 * const [change] = crossoversOfStrips(strips, [batch("1", 0.8), batch("2", 0.83)]);
 * change?.aims.patches.ld?.red // => 0.84
 *
 * Source: Kodak publication, minilab manual section 3.
 */
export function crossoversOfStrips(
  strips: readonly Strip[],
  batches: readonly StripBatch[],
  search: CrossoverSearch = {},
): readonly Crossover[] {
  const where = "crossoversOfStrips";
  requireEntries(where, "strips", strips);
  requireEntries(where, "batches", batches);
  const { asOf, withinMinutes, ...options } = search;
  if (asOf !== undefined) requireLocalTime(where, "asOf", asOf);
  const counted = asOf === undefined ? strips : strips.filter((one) => one.takenAt <= asOf);
  const window = withinMinutes === undefined ? {} : { withinMinutes };
  const found: Crossover[] = [];
  for (const [process, ids] of batchesInUse(counted)) {
    let oldAims: Aims | undefined;
    for (const to of ids) {
      const batch = batches.find((one) => one.id === to && one.process === process);
      if (batch === undefined) continue;
      const ownAims = aimsOfBatch(batch);
      const pairs =
        oldAims === undefined
          ? []
          : stripPairs(counted, { process, from: oldAims.stripBatch, to, ...window });
      if (oldAims === undefined || pairs.length === 0) {
        oldAims = ownAims;
        continue;
      }
      const change = crossover(oldAims, pairs, { ...options, ownAims });
      found.push(change);
      oldAims = change.aims;
    }
  }
  return found;
}

/** For each process, its batches in the order of their first strips. */
function batchesInUse(strips: readonly Strip[]): ReadonlyMap<string, readonly string[]> {
  const first = new Map<string, Map<string, string>>();
  for (const { process, stripBatch, takenAt } of strips) {
    const times = first.get(process) ?? new Map<string, string>();
    first.set(process, times);
    const before = times.get(stripBatch);
    if (before === undefined || takenAt < before) times.set(stripBatch, takenAt);
  }
  const inTime = (times: ReadonlyMap<string, string>) =>
    [...times].sort(([, a], [, b]) => (a < b ? -1 : a > b ? 1 : 0)).map(([id]) => id);
  return new Map([...first].map(([process, times]) => [process, inTime(times)]));
}
