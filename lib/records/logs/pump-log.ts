import { momentColumns } from "../cells/time-cell.ts";
import type { LogOptions, ParsedLog } from "../reading/log-problem.ts";
import { readLog } from "../reading/read-log.ts";
import type { PumpReading } from "./log-rows.ts";
import { checkCounters } from "./pump-counter.ts";
import { pumpReader } from "./pump-reader.ts";

/** What the reader of a pump log may be told. */
export interface PumpLogOptions extends LogOptions {
  /** Ids of the pumps; without them any pump goes. */
  readonly pumps?: readonly string[];
}

/**
 * Reads a replenisher-pump log: one row a reading of one pump.
 *
 * Columns `read_at` (`2026-08-14T18:05`; or `date` and `time`), `pump`, `counter_strokes` (the
 * counter as it stands, whole), `setting_ml_per_stroke`; and, if the lab keeps them,
 * `delivered_ml` (what left the replenisher tank since the reading before), `counter_reset` (`yes`
 * when the counter was set back since the reading before, else empty or `no`), and
 * `cylinder_strokes` with `cylinder_ml` (a calibration: so many strokes into a measuring cylinder).
 * Optional cells may be empty. A counter that runs backwards without a marked reset is reported and
 * the reading left out.
 *
 * @param text the file's text; commas, semicolons or tabs; a byte order mark and any line ends
 * @param options the file's name, and what to check the rows against
 * @returns the good readings, everything wrong by line and column, and warnings
 * @throws InputError if `text` is not a string or an option cannot be meant; never for a bad file
 *
 * @example
 * parsePumpLog("read_at,pump,counter_strokes,setting_ml_per_stroke\n2026-08-14T18:05,film-developer,48120,2.0", { file: "pumps.csv" }).rows[0].counterStrokes // => 48120
 */
export function parsePumpLog(text: string, options: PumpLogOptions): ParsedLog<PumpReading> {
  const log = readLog<PumpReading>(text, options, {
    where: "parsePumpLog",
    timeColumn: "read_at",
    timeOf: (row) => row.readAt,
    seriesOf: (row) => row.pump,
    twice: "two readings of one pump at the same minute",
    twiceAdvice: "write the minute of each, or delete the one that is wrong",
    needs: (headers) => ({
      required: [
        ...momentColumns("read_at", headers),
        "pump",
        "counter_strokes",
        "setting_ml_per_stroke",
      ],
      optional: ["delivered_ml", "counter_reset", "cylinder_strokes", "cylinder_ml"],
    }),
    rowReader: (columns, report, context) => pumpReader(columns, report, context, options.pumps),
  });
  return checkCounters(log, options.columns?.counter_strokes ?? "counter_strokes");
}
