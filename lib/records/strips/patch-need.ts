import { type Columns, reportMissing } from "../cells/columns.ts";
import type { Report } from "../reading/report.ts";
import { patchColumns } from "./patch-columns.ts";
import type { StripLogOptions } from "./strip-log.ts";

/** What is asked of the patches of a strip. */
export interface PatchNeed {
  /** Whether the header has every patch that is asked for. */
  readonly isThere: () => boolean;
  /** Whether the three cells of a patch may be left empty. */
  readonly mayBeEmpty: (patch: string) => boolean;
}

/**
 * What one process asks of the patches. If the header lacks one of them, that is reported once,
 * when the first strip of the process is met, and the strips of the process cannot be used.
 */
export function patchNeed(
  needed: readonly string[],
  wanted: readonly string[],
  columns: Columns,
  report: Report,
): PatchNeed {
  const must = new Set(needed);
  const absent = needed.filter((patch) => !wanted.includes(patch)).flatMap(patchColumns);
  const headerLine = report.line;
  let told = false;
  const isThere = (): boolean => {
    if (!told && absent.length > 0) reportMissing(absent, headerLine, columns, report);
    told = true;
    return absent.length === 0;
  };
  return { isThere, mayBeEmpty: (patch: string) => !must.has(patch) };
}

/**
 * What a strip of a batch asks where nothing was stated for its process: all patches of the header,
 * but those that the batch has no reference reading of, which nothing could be compared with.
 */
export function batchNeed(
  batches: StripLogOptions["batches"] = [],
): (stripBatch: string, process: string) => PatchNeed {
  const everything: PatchNeed = { isThere: () => true, mayBeEmpty: () => false };
  const needs = new Map<string, PatchNeed>();
  for (const { id, process, reference } of batches) {
    if (reference === undefined) continue;
    const mayBeEmpty = (patch: string) => !Object.hasOwn(reference, patch);
    needs.set(`${id}\n${process}`, { ...everything, mayBeEmpty });
  }
  if (needs.size === 0) return () => everything;
  return (stripBatch, process) => needs.get(`${stripBatch}\n${process}`) ?? everything;
}
