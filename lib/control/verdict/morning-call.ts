import { closestWord, InputError, requireEntries, requireObject } from "../../input/index.ts";
import type { BasePeriod } from "../charts/chart-choices.ts";
import type { ProcessSpecification } from "../process/process-specification.ts";
import type { Strip, StripBatch } from "../strip.ts";
import type { Crossover } from "../strips/crossover-result.ts";
import { chartsOfProcess, type MorningChartChoices } from "./charts-of-process.ts";
import { processVerdict } from "./process-verdict.ts";
import type { MorningCall, ProcessVerdict, Verdict } from "./verdict.ts";
import type { VerdictOptions } from "./verdict-options.ts";

/** What the morning call is made from. */
export interface MorningCallInput extends Omit<VerdictOptions, "charts"> {
  readonly strips: readonly Strip[];
  readonly batches: readonly StripBatch[];
  readonly crossovers?: readonly Crossover[];
  /** The processes to judge, in the order in which they are told. */
  readonly specifications: readonly ProcessSpecification[];
  /** Local time for which the verdict is asked. Default: the time of the latest strip of any process. */
  readonly asOf?: string;
  /**
   * Statistical charts. Without a base period each process takes its first days in control; a process
   * whose base period is too short has no statistical limits and says why. Left out, only the
   * process's limits are judged.
   */
  readonly charts?: MorningChartChoices;
  /** Base period of a single process where it differs from `charts.basePeriod`, by process id. */
  readonly basePeriods?: Readonly<Record<string, BasePeriod>>;
}

/**
 * The morning call: the verdict on every process of the lab from its strip log, as one JSON-safe
 * object. Each process is judged by `processVerdict`; the worst speaks for the lab.
 *
 * @param input strips of all processes, their batches, the specifications, the time for which the
 * verdict is asked, and the options of `processVerdict`; `charts: {}` gives every process its
 * statistical limits from its first three weeks in control
 * @returns the lab's verdict with the reason in one sentence, and each process's
 * @throws InputError if no specification is given or two share an id, and as `processVerdict`
 *
 * @example
 * const grey = (d: number) => ({ red: d, green: d, blue: d });
 * const reference = { dMin: grey(0.1), ld: grey(0.8), hd: grey(1.6), dMax: grey(2.4) };
 * const call = morningCall({
 *   strips: [{ takenAt: "2026-08-14T07:10", process: "colour-paper", stripBatch: "77", operator: "A", patches: reference }],
 *   batches: [{ id: "77", process: "colour-paper", reference, correction: {} }],
 *   specifications: [colourPaperProcess],
 *   asOf: "2026-08-14T07:30",
 * });
 * call.verdict // => "run"
 */
export function morningCall(input: MorningCallInput): MorningCall {
  const where = "morningCall";
  requireObject(where, "input", input, "an object with strips, batches and specifications");
  requireEntries(where, "strips", input.strips);
  requireEntries(where, "specifications", input.specifications);
  const { specifications, strips, basePeriods, charts } = input;
  const ids = specifications.map((each) => each.id);
  if (ids.length === 0) {
    throw new InputError(
      where,
      "specifications",
      "empty",
      "write at least one, e.g. [colourNegativeProcess]",
    );
  }
  const twice = ids.find((id, i) => ids.indexOf(id) !== i);
  if (twice !== undefined) {
    throw new InputError(where, "specifications", ids, `give ${JSON.stringify(twice)} once`);
  }
  for (const id of Object.keys(basePeriods ?? {})) {
    if (!ids.includes(id)) {
      throw new InputError(where, "basePeriods", id, `write one of ${ids.join(", ")}`);
    }
  }
  const asOf = input.asOf ?? latestOf(strips, ids);
  const processes = specifications.map((specification) => {
    const history = {
      strips,
      batches: input.batches,
      crossovers: input.crossovers ?? [],
      specification,
      ...(asOf === undefined ? {} : { asOf }),
    };
    const own = chartsOfProcess(history, charts, basePeriods?.[specification.id]);
    const { charts: _, ...options } = input;
    const verdict = processVerdict(history, {
      ...options,
      ...(own.charts === undefined ? {} : { charts: own.charts }),
    });
    return own.reason === null
      ? verdict
      : { ...verdict, statisticalBase: { ...verdict.statisticalBase, reason: own.reason } };
  });
  const order: readonly Verdict[] = ["hold", "act", "run"];
  const verdict = order.find((each) => processes.some((one) => one.verdict === each)) ?? "hold";
  return {
    verdict,
    reason: reasonOf(verdict, processes),
    asOf: asOf ?? "",
    processes,
    warnings: strangers(strips, ids),
  };
}

function latestOf(strips: readonly Strip[], ids: readonly string[]): string | undefined {
  let latest: string | undefined;
  for (const { process, takenAt } of strips) {
    if (ids.includes(process) && (latest === undefined || takenAt > latest)) latest = takenAt;
  }
  return latest;
}

function reasonOf(verdict: Verdict, processes: readonly ProcessVerdict[]): string {
  const some = processes.length === 1 ? "the process is" : `all ${processes.length} processes are`;
  if (verdict === "run") return `${some} within limits`;
  return processes
    .filter((each) => each.verdict === verdict)
    .map((each) => `${each.name}: ${each.reason}`)
    .join("; ");
}

function strangers(strips: readonly Strip[], ids: readonly string[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const { process } of strips) {
    if (!ids.includes(process)) counts.set(process, (counts.get(process) ?? 0) + 1);
  }
  return [...counts].map(([process, count]) => {
    const near = closestWord(process, ids);
    const meant = near === undefined ? "" : ` (did you mean ${JSON.stringify(near)}?)`;
    return `${count} strip${count === 1 ? "" : "s"} of process ${JSON.stringify(process)} not judged: no specification has that id${meant}`;
  });
}
