import { requireNumber, requireOneOf } from "../../input/index.ts";
import type { FaultCheck } from "./fault-check.ts";
import type { FaultTable } from "./fault-table.ts";
import type { LabLogs } from "./lab-log.ts";

/** How `rankFaults` weighs what it knows beforehand. */
export interface RankFaultsOptions {
  /** Signatures. Default: the library's own table of the evidence's process. */
  readonly table?: FaultTable;
  /** How often each fault occurs, relative to 1, by id: `{ "developer-too-warm": 3 }`. Default: all 1. */
  readonly frequencies?: Readonly<Record<string, number>>;
  /** Probability beforehand that nothing is wrong. Default 0.25. */
  readonly nothingWrong?: number;
  /** Probability beforehand of a fault that the table lacks. Default 0.1. */
  readonly noneOfThese?: number;
  /** Most likely size beforehand, in multiples of the limit: mode of a Rayleigh density. Default 1.5. */
  readonly sizeScale?: number;
  /**
   * What a fault outside the table may do at size 1: standard deviation of each reading, in multiples
   * of its limit. Default 1.
   */
  readonly diffuseScale?: number;
  readonly checks?: readonly FaultCheck[];
  /** The line's own logs, from `labLogs`. Default: none, the strips alone. */
  readonly logs?: LabLogs;
}

/** Options with nothing left open. */
export interface CheckedOptions {
  readonly priorOf: Readonly<Record<string, number>>;
  readonly nothingWrong: number;
  readonly noneOfThese: number;
  readonly sizeScale: number;
  readonly diffuseScale: number;
}

/** Checks the options and turns frequencies into probabilities. */
export function checkedOptions(
  where: string,
  table: FaultTable,
  options: RankFaultsOptions,
): CheckedOptions {
  const ids = table.faults.map(({ id }) => id);
  const frequencies = options.frequencies ?? {};
  for (const id of Object.keys(frequencies)) requireOneOf(where, "frequencies", id, ids);
  const share = { above: 0, below: 1 };
  const nothingWrong = requireNumber(where, "nothingWrong", options.nothingWrong ?? 0.25, share);
  const noneOfThese = requireNumber(where, "noneOfThese", options.noneOfThese ?? 0.1, {
    above: 0,
    below: 1 - nothingWrong,
    hint: "it and nothingWrong together stay below 1",
  });
  const weights = ids.map((id) =>
    requireNumber(where, `frequencies.${id}`, frequencies[id] ?? 1, { min: 0 }),
  );
  const total = requireNumber(
    where,
    "sum of frequencies",
    weights.reduce((sum, w) => sum + w, 0),
    { above: 0 },
  );
  const left = 1 - nothingWrong - noneOfThese;
  return {
    priorOf: Object.fromEntries(ids.map((id, i) => [id, (left * (weights[i] ?? 0)) / total])),
    nothingWrong,
    noneOfThese,
    sizeScale: requireNumber(where, "sizeScale", options.sizeScale ?? 1.5, { above: 0, max: 100 }),
    diffuseScale: requireNumber(where, "diffuseScale", options.diffuseScale ?? 1, {
      above: 0,
      max: 100,
    }),
  };
}
