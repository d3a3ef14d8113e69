/** Where a row or a cell stands: the file as the caller named it, and its line, the first being 1. */
export interface LogSource {
  readonly file: string;
  readonly line: number;
}

/** One thing wrong with one cell, one row or one file. */
export interface LogProblem {
  /** The file, as the caller named it. */
  readonly file: string;
  /** Line in the file; the header of most files is line 1. */
  readonly line: number;
  /** The column, as the file's header writes it; `""` when the whole row or file is meant. */
  readonly column: string;
  /** What stands there, as it stands there. */
  readonly value: string;
  /** What is wrong with it. */
  readonly problem: string;
  /** What to write instead. */
  readonly advice: string;
  /** Whether the row is among the usable rows all the same (a time out of order, for instance). */
  readonly rowUsed: boolean;
}

/**
 * A log that was read: every good row, and everything that was wrong.
 * `rows.length + rowsRefused` is `rowsRead`.
 */
export interface ParsedLog<Row> {
  readonly file: string;
  /** The good rows, in the order of the file (sorted by time if the file was not; a warning says so). */
  readonly rows: readonly Row[];
  /** Everything that is wrong, by line; the whole list, however long. */
  readonly problems: readonly LogProblem[];
  /** What the reader should know, though no cell is wrong. */
  readonly warnings: readonly string[];
  /** Rows that hold data, good and bad, without the header. */
  readonly rowsRead: number;
  /** Rows left out because of a problem. */
  readonly rowsRefused: number;
}

/** What every log's reader may be told. */
export interface LogOptions {
  /** The file's name, for the messages. */
  readonly file: string;
  /** The file's own header for a column of ours: `{ strip_batch: "Batch no." }`. */
  readonly columns?: Readonly<Record<string, string>>;
  /** `true` if the file writes decimals with a comma (1,23); a point is then refused. */
  readonly decimalComma?: boolean;
  /** Last day that may occur, `"2026-08-14"`; later rows are reported. Without it nothing is. */
  readonly today?: string;
}
