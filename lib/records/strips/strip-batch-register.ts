import type { Patches, StripBatch } from "../../control/strip.ts";
import type { LogOptions, LogProblem, ParsedLog } from "../reading/log-problem.ts";
import { readLog } from "../reading/read-log.ts";
import { type BatchRow, batchRowReader } from "./batch-row.ts";
import { patchColumns, wantedPatches } from "./patch-columns.ts";

/** What the reader of a strip-batch register may be told. */
export interface StripBatchRegisterOptions extends LogOptions {
  /** Ids of the processes; by default colour-negative and colour-paper. */
  readonly processes?: readonly string[];
}

/**
 * Reads the register of control-strip batches: two rows a batch, one with the reference strip as
 * read on the lab's own densitometer and one with the correction printed for the batch.
 *
 * Columns `strip_batch`, `process`, `reading` (`reference` or `correction`), three for each patch
 * as in the strip log, and optionally `first_used` (`2026-06-01`). Reference densities lie between
 * 0 and 4.5, corrections between −0.5 and 0.5. A patch may be left out of either row by three empty
 * cells. A batch with only one of its rows is reported and left out.
 *
 * @param text the file's text; commas, semicolons or tabs; a byte order mark and any line ends
 * @param options the file's name, and what to check the rows against
 * @returns the batches (`rows`), everything wrong by line and column, and warnings; `rowsRead` and
 *   `rowsRefused` count lines, two a batch
 * @throws InputError if `text` is not a string or an option cannot be meant; never for a bad file
 *
 * @example
 * parseStripBatchRegister("strip_batch,process,reading,ld_r,ld_g,ld_b\nP-7,colour-paper,reference,0.80,0.81,0.79\nP-7,colour-paper,correction,0,-0.01,0.01", { file: "batches.csv" }).rows[0].correction.ld.green // => -0.01
 */
export function parseStripBatchRegister(
  text: string,
  options: StripBatchRegisterOptions,
): ParsedLog<StripBatch> {
  const log = readLog<BatchRow>(text, options, {
    where: "parseStripBatchRegister",
    timeColumn: "strip_batch",
    timeOf: (row) => row.id,
    seriesOf: (row) => `${row.process}\n${row.id}\n${row.reading}`,
    twice: "a reading of this batch stands twice",
    twiceAdvice: "keep the row that is right",
    needs: (headers) => ({
      required: [
        "strip_batch",
        "process",
        "reading",
        ...wantedPatches(headers, []).flatMap(patchColumns),
      ],
      optional: ["first_used"],
    }),
    rowReader: (columns, report, context) =>
      batchRowReader(columns, report, context, options.processes),
  });
  return pairUp(log, options.columns?.reading ?? "reading");
}

/** Joins the two rows of each batch; a row without its fellow becomes a problem. */
function pairUp(log: ParsedLog<BatchRow>, header: string): ParsedLog<StripBatch> {
  const problems: LogProblem[] = [...log.problems];
  const pairs = new Map<string, Partial<Record<BatchRow["reading"], BatchRow>>>();
  for (const row of log.rows) {
    const key = `${row.process}\n${row.id}`;
    const pair = pairs.get(key) ?? {};
    pair[row.reading] = row;
    pairs.set(key, pair);
  }
  const rows: StripBatch[] = [];
  let alone = 0;
  for (const { reference, correction } of pairs.values()) {
    if (reference !== undefined && correction !== undefined) {
      const firstUsed = reference.firstUsed ?? correction.firstUsed;
      const { id, process, patches } = reference;
      const strips: { reference: Patches; correction: Patches } = {
        reference: patches,
        correction: correction.patches,
      };
      rows.push({ id, process, ...strips, ...(firstUsed === undefined ? {} : { firstUsed }) });
      continue;
    }
    const row = reference ?? correction;
    if (row === undefined) continue;
    alone += 1;
    problems.push(aloneProblem(log.file, header, row));
  }
  problems.sort((a, b) => a.line - b.line);
  return { ...log, rows, problems, rowsRefused: log.rowsRefused + alone };
}

function aloneProblem(file: string, column: string, row: BatchRow): LogProblem {
  const missing = row.reading === "reference" ? "correction" : "reference";
  return {
    file,
    line: row.source?.line ?? 0,
    column,
    value: row.reading,
    problem: `the batch ${row.id} has no usable row "${missing}"`,
    advice:
      missing === "correction"
        ? "add its correction; write 0.00 if none is printed"
        : "add the reading of its reference strip",
    rowUsed: false,
  };
}
