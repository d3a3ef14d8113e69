import { InputError, requireEntries, requireObject } from "../../input/index.ts";
import { faultEvidence } from "../faults/fault-evidence.ts";
import type { FaultRanking } from "../faults/fault-ranking.ts";
import { labLogs } from "../faults/lab-logs.ts";
import type { LabLogsInput } from "../faults/log-input.ts";
import { rankFaults } from "../faults/rank-faults.ts";
import type { MorningCallInput } from "./morning-call.ts";
import { stripHistories } from "./strip-histories.ts";
import type { MorningCall } from "./verdict.ts";

/** Strips looked at: those since the last good day, within these bounds; a trouble that is over stays out. */
const STRIPS = { fewest: 6, most: 60 };

/** The logs of the developer of one process, as `developerLogs` gathers them. */
export interface ProcessLogs extends Omit<LabLogsInput, "basePeriod" | "asOf"> {
  readonly process: string;
}

/** The likely causes for one process, or why there is no ranking. */
export interface LikelyCause {
  readonly process: string;
  readonly name: string;
  readonly ranking: FaultRanking | null;
  /** The ranking in one sentence, or the reason why there is none. */
  readonly sentence: string;
}

/**
 * The likely causes of what the morning call found: a ranking of faults for every process that may
 * not simply run, from its strips since the last good day (6 to 60) against the base period of its
 * statistical limits, and from the logs of its developer.
 *
 * @param lab what the morning call was made from
 * @param call the morning call
 * @param logs logs of the developer, one entry for each process that has any
 * @returns one entry for each process of which a reading asks to act or hold, none for one that only
 * waits for a fresh strip; a process without base period, with too few strips or without a table of
 * faults says why it has no ranking
 * @throws InputError as `labLogs`
 *
 * @example
 * const grey = (d: number) => ({ red: d, green: d, blue: d });
 * const reference = { dMin: grey(0.1), ld: grey(0.8), hd: grey(1.6), dMax: grey(2.4) };
 * const off = { ...reference, ld: grey(0.95) };
 * const lab = {
 *   strips: [{ takenAt: "2026-08-14T07:10", process: "colour-paper", stripBatch: "77", operator: "A", patches: off }],
 *   batches: [{ id: "77", process: "colour-paper", reference, correction: {} }],
 *   specifications: [colourPaperProcess],
 * };
 * likelyCauses(lab, morningCall(lab))[0].sentence // => "No ranking of causes: no base period was given."
 */
export function likelyCauses(
  lab: MorningCallInput,
  call: MorningCall,
  logs: readonly ProcessLogs[] = [],
): readonly LikelyCause[] {
  requireObject("likelyCauses", "call", call, "an object with verdict, reason, asOf, …");
  requireEntries("likelyCauses", "processes", call.processes);
  const histories = stripHistories(lab);
  const time = lab.asOf === undefined ? {} : { asOf: lab.asOf };
  return call.processes
    .filter(({ parameters }) => parameters.some(({ verdict }) => verdict !== "run"))
    .map(({ process, name, statisticalBase: { charts, reason }, changeSinceGoodDay }) => {
      const without = (why: string) => {
        return { process, name, ranking: null, sentence: `No ranking of causes: ${why}.` };
      };
      const history = histories.find(({ specification }) => specification.id === process);
      if (charts === null || history === undefined) return without(reason);
      const { basePeriod, exclude = [] } = charts;
      if (!("from" in basePeriod)) return without("the base period is not given by dates");
      const own = logs.find((each) => each.process === process);
      const kept = own && labLogs({ ...own, basePeriod, ...time });
      try {
        const goodDay = changeSinceGoodDay?.goodDay ?? "";
        const since = lab.strips.filter(
          (strip) =>
            strip.process === process &&
            strip.takenAt.slice(0, 10) > goodDay &&
            strip.takenAt <= (lab.asOf ?? strip.takenAt),
        ).length;
        const lastStrips = Math.min(STRIPS.most, Math.max(STRIPS.fewest, since));
        const window = { basePeriod, exclude, lastStrips };
        const evidence = faultEvidence({ ...history, ...window });
        const ranking = rankFaults(evidence, kept === undefined ? {} : { logs: kept });
        return { process, name, ranking, sentence: ranking.sentence };
      } catch (error) {
        if (error instanceof InputError) return without(error.message);
        throw error;
      }
    });
}
