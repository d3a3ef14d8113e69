import type { LogShape, SourcedRow, TimeSeries } from "./log-shape.ts";
import { type Report, remark } from "./report.ts";

/**
 * Puts the rows in order of time and takes out the second of two rows at one time.
 *
 * Each row is compared with the one before it in its series (one process, one pump, one bath). An
 * earlier time is reported and the row kept: it or the row before it is wrong, and nobody here can
 * know which. If there is any, all rows are sorted by time (rows of one time stay in the order of
 * the file). After that, a row at the same time as the one before it is reported and left out.
 */
export function keepOrder<Row extends SourcedRow>(
  rows: readonly Row[],
  shape: LogShape<Row>,
  report: Report,
  warnings: string[],
): readonly Row[] {
  const backwards = reportBackwards(rows, shape, report);
  if (backwards === 0) return withoutTwins(rows, shape, report);
  const word = backwards === 1 ? "row was" : "rows were";
  warnings.push(`${report.file}: ${backwards} ${word} out of order; the rows are sorted by time`);
  const sorted = [...rows].sort((a, b) => compareText(shape.timeOf(a), shape.timeOf(b)));
  return withoutTwins(sorted, shape, report);
}

function reportBackwards<Row extends SourcedRow>(
  rows: readonly Row[],
  shape: TimeSeries<Row>,
  report: Report,
): number {
  const last = new Map<string, Row>();
  let backwards = 0;
  for (const row of rows) {
    const series = shape.seriesOf(row);
    const before = last.get(series);
    last.set(series, row);
    if (before === undefined) continue;
    const time = shape.timeOf(row);
    const earlier = shape.timeOf(before);
    if (time >= earlier) continue;
    backwards += 1;
    const problem = `earlier than the row before it (${earlier} on line ${lineOf(before)})`;
    const advice = "correct whichever of the two is wrong, or put the rows in order of time";
    remark(report, lineOf(row), shape.timeColumn, time, problem, advice);
  }
  return backwards;
}

function withoutTwins<Row extends SourcedRow>(
  rows: readonly Row[],
  shape: TimeSeries<Row>,
  report: Report,
): readonly Row[] {
  const last = new Map<string, Row>();
  const twins = new Set<Row>();
  for (const row of rows) {
    const series = shape.seriesOf(row);
    const before = last.get(series);
    if (before === undefined || shape.timeOf(before) !== shape.timeOf(row)) {
      last.set(series, row);
      continue;
    }
    twins.add(row);
    const { problem, advice } = twinFault(before, row, shape);
    report.problems.push({
      file: report.file,
      line: lineOf(row),
      column: shape.timeColumn,
      value: shape.timeOf(row),
      problem,
      advice,
      rowUsed: false,
    });
  }
  return twins.size === 0 ? rows : rows.filter((row) => !twins.has(row));
}

function twinFault<Row extends SourcedRow>(before: Row, row: Row, shape: TimeSeries<Row>) {
  const line = lineOf(before);
  if (contents(before) === contents(row)) {
    return { problem: `the same row as on line ${line}`, advice: "delete one of the two" };
  }
  return { problem: `${shape.twice} (the other is on line ${line})`, advice: shape.twiceAdvice };
}

function contents(row: SourcedRow): string {
  return JSON.stringify({ ...row, source: undefined });
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function lineOf(row: SourcedRow): number {
  return row.source?.line ?? 0;
}
