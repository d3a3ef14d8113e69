import type { Strip } from "../../control/strip.ts";
import type { Column, Columns } from "../cells/columns.ts";
import { DENSITY } from "../cells/density-kind.ts";
import { processKind } from "../cells/process-kind.ts";
import { momentCell } from "../cells/time-cell.ts";
import { wordCell } from "../cells/word-cell.ts";
import type { ReadContext, RowReader } from "../reading/log-shape.ts";
import { type Report, refuse } from "../reading/report.ts";
import { wantedPatches } from "./patch-columns.ts";
import { batchNeed, patchNeed } from "./patch-need.ts";
import { patchReader } from "./patch-reader.ts";
import type { StripLogOptions } from "./strip-log.ts";

/** Builds the reader of one row of a control-strip log. */
export function stripReader(
  columns: Columns,
  report: Report,
  context: ReadContext,
  options: StripLogOptions,
): RowReader<Strip> {
  const { batches, patches: stated = {} } = options;
  const processes = options.processes ?? batches?.map((batch) => batch.process);
  const batchColumn = columns.get("strip_batch");
  const takenAtOf = momentCell(columns, "taken_at", report, context);
  const processOf = wordCell(columns.get("process"), processKind(processes), report);
  const batchOf = wordCell(batchColumn, batchKind(batches), report);
  const operatorOf = wordCell(columns.get("operator"), { what: "operator" }, report);
  const wanted = wantedPatches(columns.names, Object.values(stated).flat());
  const patchesOf = patchReader(wanted, columns, DENSITY, report, context);
  const belongs = batchCheck(batches, batchColumn, report);
  const needs = new Map(
    Object.entries(stated).map(([process, needed]) => [
      process,
      patchNeed(needed, wanted, columns, report),
    ]),
  );
  const byBatch = batchNeed(batches);

  return (cells) => {
    const takenAt = takenAtOf(cells);
    const process = processOf(cells);
    const stripBatch = batchOf(cells);
    const operator = operatorOf(cells);
    const { isThere, mayBeEmpty } = needs.get(process) ?? byBatch(stripBatch, process);
    const patches = isThere() ? patchesOf(cells, mayBeEmpty) : undefined;
    const good = process === "" || stripBatch === "" || belongs(stripBatch, process);
    if (takenAt === "" || process === "" || stripBatch === "" || operator === "") return undefined;
    if (patches === undefined || !good) return undefined;
    const source = { file: report.file, line: report.line };
    return { takenAt, process, stripBatch, operator, patches, source };
  };
}

function batchKind(batches: StripLogOptions["batches"]) {
  const ids = batches?.map((batch) => batch.id);
  const ifUnknown = "register the batch: its reference strip and its correction";
  return { what: "strip batch", ifUnknown, ...(ids === undefined ? {} : { allowed: ids }) };
}

function batchCheck(
  batches: StripLogOptions["batches"],
  { header }: Column,
  report: Report,
): (stripBatch: string, process: string) => boolean {
  if (batches === undefined) return () => true;
  const registered = new Map<string, Set<string>>();
  for (const { id, process } of batches) {
    registered.set(id, (registered.get(id) ?? new Set()).add(process));
  }
  return (stripBatch, process) => {
    const processes = registered.get(stripBatch);
    if (processes?.has(process)) return true;
    const known = [...(processes ?? [])].join(", ");
    const advice = "correct the process or the strip batch";
    refuse(report, header, stripBatch, `a batch registered for ${known}, not ${process}`, advice);
    return false;
  };
}
