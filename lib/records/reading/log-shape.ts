import type { ColumnNeeds, Columns } from "../cells/columns.ts";
import type { LogSource } from "./log-problem.ts";
import type { Report } from "./report.ts";
import type { Separator } from "./separator.ts";

/** A row that knows where it came from. */
export interface SourcedRow {
  readonly source?: LogSource;
}

/** What cell readers have to know of the file and the caller's wishes. */
export interface ReadContext {
  readonly separator: Separator;
  readonly decimalComma: boolean;
  readonly today: string | undefined;
}

/** Turns one row's cells into a row, or reports why not. */
export type RowReader<Row> = (cells: readonly string[]) => Row | undefined;

/** How the rows of a log follow one another in time. */
export interface TimeSeries<Row> {
  /** Name of the column that holds the time, for messages. */
  readonly timeColumn: string;
  /** Local time as ISO 8601 text, so that text order is time order. */
  readonly timeOf: (row: Row) => string;
  /** Which series a row belongs to; within one, times rise and none occurs twice. */
  readonly seriesOf: (row: Row) => string;
  /** What is wrong with two rows of one series at one time, and what to do: in words. */
  readonly twice: string;
  readonly twiceAdvice: string;
}

/** What one kind of log looks like. */
export interface LogShape<Row extends SourcedRow> extends TimeSeries<Row> {
  /** The function the user called, for errors about its arguments. */
  readonly where: string;
  /** Which columns are needed, given the headers there are. */
  readonly needs: (headers: readonly string[]) => ColumnNeeds;
  /** Builds the reader of one row. */
  readonly rowReader: (columns: Columns, report: Report, context: ReadContext) => RowReader<Row>;
}
