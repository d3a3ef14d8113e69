import type { Patches } from "../../control/strip.ts";
import type { Columns } from "../cells/columns.ts";
import { CORRECTION, DENSITY } from "../cells/density-kind.ts";
import { processKind } from "../cells/process-kind.ts";
import { dayCell } from "../cells/time-cell.ts";
import { wordCell } from "../cells/word-cell.ts";
import type { LogSource } from "../reading/log-problem.ts";
import type { ReadContext, RowReader } from "../reading/log-shape.ts";
import type { Report } from "../reading/report.ts";
import { wantedPatches } from "./patch-columns.ts";
import { patchReader } from "./patch-reader.ts";

/** One row of the register: half of a batch. */
export interface BatchRow {
  readonly id: string;
  readonly process: string;
  readonly reading: "reference" | "correction";
  readonly patches: Patches;
  readonly firstUsed?: string;
  readonly source?: LogSource;
}

const READING = { what: "kind of reading", allowed: ["reference", "correction"] };

/** Builds the reader of one row of the strip-batch register. */
export function batchRowReader(
  columns: Columns,
  report: Report,
  context: ReadContext,
  processes: readonly string[] | undefined,
): RowReader<BatchRow> {
  const idOf = wordCell(columns.get("strip_batch"), { what: "strip batch" }, report);
  const processOf = wordCell(columns.get("process"), processKind(processes), report);
  const readingOf = wordCell(columns.get("reading"), READING, report);
  const patches = wantedPatches(columns.names, []);
  const referenceOf = patchReader(patches, columns, DENSITY, report, context);
  const correctionOf = patchReader(patches, columns, CORRECTION, report, context);
  const firstUsedColumn = columns.find("first_used");
  const firstUsedOf =
    firstUsedColumn === undefined ? () => "" : dayCell(firstUsedColumn, report, context);
  const always = () => true;
  return (cells) => {
    const before = report.problems.length;
    const id = idOf(cells);
    const process = processOf(cells);
    const reading = readingOf(cells) === "correction" ? "correction" : "reference";
    const read = reading === "correction" ? correctionOf : referenceOf;
    const patches = read(cells, always);
    const stated = (cells[firstUsedColumn?.index ?? -1] ?? "").trim() !== "";
    const firstUsed = stated ? firstUsedOf(cells) : "";
    if (report.problems.length > before || patches === undefined) return undefined;
    const source = { file: report.file, line: report.line };
    return { id, process, reading, patches, ...(firstUsed ? { firstUsed } : {}), source };
  };
}
