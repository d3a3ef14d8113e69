import { requireEntries, requireObject } from "../../input/index.ts";
import type { Strip } from "../strip.ts";
import { dateOf } from "../strips/local-time.ts";
import type { MorningCall } from "./verdict.ts";

/**
 * The days a morning call compares: for each process the day of its latest strip, the last day before
 * it on which a strip was run, and the last good day. For looking up what else was logged then.
 *
 * @param call the morning call
 * @param strips the strips it was made from
 * @returns local dates, each once, oldest first
 *
 * @example
 * comparedDays({ verdict: "run", reason: "", asOf: "", processes: [], warnings: [] }, []) // => []
 */
export function comparedDays(call: MorningCall, strips: readonly Strip[]): readonly string[] {
  requireObject("comparedDays", "call", call, "an object with verdict, reason, asOf, …");
  requireEntries("comparedDays", "processes", call.processes);
  const days = new Set<string>();
  for (const { process, latestTakenAt, changeSinceGoodDay } of call.processes) {
    if (latestTakenAt === null) continue;
    const latest = dateOf(latestTakenAt);
    let before = "";
    for (const strip of strips) {
      const day = dateOf(strip.takenAt);
      if (strip.process === process && day < latest && day > before) before = day;
    }
    for (const day of [latest, before, changeSinceGoodDay?.goodDay ?? ""]) {
      if (day !== "") days.add(day);
    }
  }
  return [...days].sort();
}
