import type { BatchChange, ParameterSeries } from "./parameter-series.ts";
import type { StripTable } from "./strip-table.ts";

/** One column of the table as a series: missing readings left out, batch changes and gaps marked. */
export function seriesOfTable(table: StripTable, k: number, process: string): ParameterSeries {
  const key = table.keys[k];
  const column = table.columns[k];
  if (key === undefined || column === undefined) throw new RangeError(`no series ${k}`);
  const rows: number[] = [];
  const takenAt: string[] = [];
  const deviations: number[] = [];
  const batchChanges: BatchChange[] = [];
  const gaps: number[] = [];
  let previousBatch = -1;
  let missed = false;
  for (let i = 0; i < column.length; i++) {
    const deviation = column[i] ?? Number.NaN;
    if (Number.isNaN(deviation)) {
      missed = true;
      continue;
    }
    const at = deviations.length;
    if (missed && at > 0) gaps.push(at);
    missed = false;
    const batch = table.batch[i] ?? 0;
    if (previousBatch >= 0 && batch !== previousBatch) {
      batchChanges.push({
        at,
        from: table.batchIds[previousBatch] ?? "",
        to: table.batchIds[batch] ?? "",
        // Going back to the old batch during a crossover is as continuous as going over.
        crossover: Boolean(table.crossedOver[batch] || table.crossedOver[previousBatch]),
      });
    }
    previousBatch = batch;
    rows.push(table.rows[i] ?? 0);
    takenAt.push(table.takenAt[i] ?? "");
    deviations.push(deviation);
  }
  return {
    process,
    parameter: key.parameter.id,
    name: key.parameter.name,
    colour: key.colour,
    limits: key.parameter.limits,
    rows,
    takenAt,
    deviations,
    batchChanges,
    gaps,
  };
}
