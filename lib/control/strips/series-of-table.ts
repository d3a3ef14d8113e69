import type { BatchChange, ParameterSeries } from "./parameter-series.ts";
import type { StripTable } from "./strip-table.ts";

/** One column of the table as a series: missing readings left out, batch changes and gaps marked. */
export function seriesOfTable(table: StripTable, k: number, process: string): ParameterSeries {
  const key = table.keys[k];
  const column = table.columns[k];
  if (key === undefined || column === undefined) throw new RangeError(`no series ${k}`);
  const kept = column.includes(Number.NaN)
    ? withoutMissing(table, column)
    : wholeColumn(table, column);
  return {
    process,
    parameter: key.parameter.id,
    name: key.parameter.name,
    colour: key.colour,
    limits: key.parameter.limits,
    ...kept,
  };
}

type Kept = Pick<ParameterSeries, "rows" | "takenAt" | "deviations" | "batchChanges" | "gaps">;

/** Nothing is missing: the series share the table's rows and times. */
function wholeColumn(table: StripTable, column: Float64Array): Kept {
  const batchChanges: BatchChange[] = [];
  for (let i = 1; i < column.length; i++) {
    if (table.batch[i] !== table.batch[i - 1]) batchChanges.push(batchChange(table, i - 1, i, i));
  }
  const { rows, takenAt } = table;
  return { rows, takenAt, deviations: Array.from(column), batchChanges, gaps: [] };
}

function withoutMissing(table: StripTable, column: Float64Array): Kept {
  const rows: number[] = [];
  const takenAt: string[] = [];
  const deviations: number[] = [];
  const batchChanges: BatchChange[] = [];
  const gaps: number[] = [];
  let previous = -1;
  for (let i = 0; i < column.length; i++) {
    const deviation = column[i] ?? Number.NaN;
    if (Number.isNaN(deviation)) continue;
    const at = deviations.length;
    if (at > 0 && previous !== i - 1) gaps.push(at);
    if (at > 0 && table.batch[i] !== table.batch[previous]) {
      batchChanges.push(batchChange(table, previous, i, at));
    }
    previous = i;
    rows.push(table.rows[i] ?? 0);
    takenAt.push(table.takenAt[i] ?? "");
    deviations.push(deviation);
  }
  return { rows, takenAt, deviations, batchChanges, gaps };
}

function batchChange(table: StripTable, before: number, after: number, at: number): BatchChange {
  const from = table.batch[before] ?? 0;
  const to = table.batch[after] ?? 0;
  return {
    at,
    from: table.batchIds[from] ?? "",
    to: table.batchIds[to] ?? "",
    // Going back to the old batch during a crossover is as continuous as going over.
    crossover: Boolean(table.crossedOver[from] || table.crossedOver[to]),
  };
}
