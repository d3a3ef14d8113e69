import type { ChartChoices } from "../charts/chart-choices.ts";
import type { JudgedSeries } from "./judge-strips.ts";
import type { StatisticalBase } from "./verdict.ts";

/** Where the statistical limits are from, or why no series has any. */
export function statisticalBase(
  charts: ChartChoices | undefined,
  series: readonly JudgedSeries[],
): StatisticalBase {
  if (charts === undefined) return { charts: null, reason: "no base period was given" };
  const marks = series.flatMap((each) => each.marks ?? []);
  if (marks.some((each) => each.notCharted === null)) {
    return { charts, reason: periodWords(charts) };
  }
  // Spreads are never charted and come last; the first reason is that of a parameter with colours.
  return { charts: null, reason: marks[0]?.notCharted ?? "there are no readings" };
}

function periodWords({ basePeriod, exclude = [] }: ChartChoices): string {
  const period =
    "from" in basePeriod
      ? `the base period ${basePeriod.from} to ${basePeriod.to}`
      : `the base period from row ${basePeriod.firstRow} to row ${basePeriod.lastRow}`;
  return exclude.length === 0 ? period : `${period}, without ${exclude.join(", ")}`;
}
