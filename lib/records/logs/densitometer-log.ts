import { numberCell } from "../cells/number-cell.ts";
import type { NumberKind } from "../cells/number-fault.ts";
import { momentCell, momentColumns } from "../cells/time-cell.ts";
import { wordCell } from "../cells/word-cell.ts";
import type { LogOptions, LogSource, ParsedLog } from "../reading/log-problem.ts";
import { readLog } from "../reading/read-log.ts";

/** One reading of one patch: of a gauge study, or of the patch that shows the instrument's zero. */
export interface DensitometerReading {
  /** Local time to the minute, `"2026-07-06T09:12"`. */
  readonly readAt: string;
  readonly operator: string;
  /** Which patch of which strip: `"N-41 17 May LD"`. */
  readonly patch: string;
  readonly density: number;
  readonly source?: LogSource;
}

/** A zero may read a little below nothing. */
const DENSITY: NumberKind = { what: "density", min: -0.2, max: 4.5 };

/**
 * Reads a densitometer log: one row a reading of one patch by one operator, for a gauge study or for
 * the drift of the zero.
 *
 * Columns `read_at` (`2026-07-06T09:12`; or `date` and `time`), `operator`, `patch` and `density`.
 * Repeats are further rows at other minutes.
 *
 * @param text the file's text; commas, semicolons or tabs; a byte order mark and any line ends
 * @param options the file's name, and what to check the rows against
 * @returns the good readings, everything wrong by line and column, and warnings
 * @throws InputError if `text` is not a string or an option cannot be meant; never for a bad file
 *
 * @example
 * parseDensitometerLog("read_at,operator,patch,density\n2026-07-06T09:12,MB,strip 1,0.752", { file: "gauge.csv" }).rows[0].density // => 0.752
 */
export function parseDensitometerLog(
  text: string,
  options: LogOptions,
): ParsedLog<DensitometerReading> {
  return readLog<DensitometerReading>(text, options, {
    where: "parseDensitometerLog",
    timeColumn: "read_at",
    timeOf: (row) => row.readAt,
    seriesOf: (row) => `${row.operator}\n${row.patch}`,
    twice: "two readings of one patch by one operator at the same minute",
    twiceAdvice: "write the minute of each, or delete the one that is wrong",
    needs: (headers) => ({
      required: [...momentColumns("read_at", headers), "operator", "patch", "density"],
      optional: [],
    }),
    rowReader: (columns, report, context) => {
      const readAtOf = momentCell(columns, "read_at", report, context);
      const operatorOf = wordCell(columns.get("operator"), { what: "operator" }, report);
      const patchOf = wordCell(columns.get("patch"), { what: "patch" }, report);
      const densityOf = numberCell(columns.get("density"), DENSITY, report, context);
      return (cells) => {
        const readAt = readAtOf(cells);
        const operator = operatorOf(cells);
        const patch = patchOf(cells);
        const density = densityOf(cells);
        if (readAt === "" || operator === "" || patch === "" || Number.isNaN(density)) {
          return undefined;
        }
        const source = { file: report.file, line: report.line };
        return { readAt, operator, patch, density, source };
      };
    },
  });
}
