import type { Patches, Strip } from "../../control/strip.ts";
import { requireObject } from "../../input/index.ts";
import { momentColumns } from "../cells/time-cell.ts";
import type { LogOptions, ParsedLog } from "../reading/log-problem.ts";
import type { LogShape } from "../reading/log-shape.ts";
import { readLog } from "../reading/read-log.ts";
import { patchColumns, wantedPatches } from "./patch-columns.ts";
import { stripReader } from "./strip-reader.ts";

/** A batch of strips as the reader of a log has to know it; a `StripBatch` is one. */
export interface RegisteredBatch {
  readonly id: string;
  readonly process: string;
  readonly reference?: Patches;
}

/** What the reader of a control-strip log may be told. */
export interface StripLogOptions extends LogOptions {
  /**
   * The registered batches of strips; a strip of another batch, or of another process, is reported. A
   * patch that its batch has no reference reading of may be left empty.
   */
  readonly batches?: readonly RegisteredBatch[];
  /** Ids of the processes; by default those of the batches, else colour-negative and colour-paper. */
  readonly processes?: readonly string[];
  /**
   * Patches that every strip of a process must have: `{ "colour-negative": ["dMin", "ld", "hd"] }`.
   * A process that is not named needs all patches of the header that its batch has a reference of.
   */
  readonly patches?: Readonly<Record<string, readonly string[]>>;
}

/**
 * Reads a control-strip log: one row a strip, with red, green and blue densities of each patch.
 *
 * Columns `taken_at` (`2026-08-14T07:10`; or `date` and `time`), `process`, `strip_batch`,
 * `operator`, and three for each patch: `dmin_r`, `dmin_g`, `dmin_b`, `ld_r` … A patch may have any
 * name; `retained_silver_r` belongs to the patch `retainedSilver`, `dmin_r` to `dMin`. Densities lie
 * between 0 and 4.5. A repeat strip has its own minute; two strips of one process at one minute are
 * reported and the second is left out.
 *
 * @param text the file's text; commas, semicolons or tabs; a byte order mark and any line ends
 * @param options the file's name, and what to check the rows against
 * @returns the good strips, everything wrong by line and column, and warnings
 * @throws InputError if `text` is not a string or an option cannot be meant; never for a bad file
 *
 * @example
 * const log = parseStripLog("taken_at,process,strip_batch,operator,ld_r,ld_g,ld_b\n2026-08-14T07:10,colour-paper,P-7,MB,0.80,0,81,0.79\n2026-08-14T07:25,colour-paper,P-7,MB,0.80,0.81,0.79", { file: "paper.csv" })
 * log.rows[0].patches.ld.green // => 0.81
 * log.problems[0].problem // => "the row has 8 cells, the header 7"
 */
export function parseStripLog(text: string, options: StripLogOptions): ParsedLog<Strip> {
  requireObject("parseStripLog", "options", options, "an object with file");
  return readLog(text, options, stripShape(options));
}

function stripShape(options: StripLogOptions): LogShape<Strip> {
  const stated = Object.values(options.patches ?? {}).flat();
  return {
    where: "parseStripLog",
    timeColumn: "taken_at",
    timeOf: (strip) => strip.takenAt,
    seriesOf: (strip) => strip.process,
    twice: "two strips of one process at the same minute",
    twiceAdvice: "write the minute at which each was taken, or delete the one that is wrong",
    needs: (headers) => ({
      required: [
        ...momentColumns("taken_at", headers),
        "process",
        "strip_batch",
        "operator",
        ...wantedPatches(headers, stated).flatMap(patchColumns),
      ],
      optional: [],
    }),
    rowReader: (columns, report, context) => stripReader(columns, report, context, options),
  };
}
