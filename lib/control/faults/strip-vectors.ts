import type { ParameterSpecification } from "../process/process-specification.ts";
import type { Colour } from "../strip.ts";
import type { ParameterSeries } from "../strips/parameter-series.ts";
import { seriesOfTable } from "../strips/series-of-table.ts";
import type { StripHistory } from "../strips/strip-history.ts";
import { stripTable } from "../strips/strip-table.ts";

/** The strips of a process in the order of time, one row of deviations each; NaN where not read. */
export interface StripVectors {
  readonly keys: readonly {
    readonly parameter: ParameterSpecification;
    readonly colour: Colour;
    readonly words: string;
  }[];
  readonly vectors: readonly (readonly number[])[];
  readonly takenAt: readonly string[];
  /** The strips as a series without readings, to find a base period in. */
  readonly calendar: ParameterSeries;
}

/** Turns columns of deviations into rows, without the colour spread, which follows from the rest. */
export function stripVectors(where: string, history: StripHistory): StripVectors {
  const table = stripTable(where, history);
  const columns: Float64Array[] = [];
  const keys: StripVectors["keys"][number][] = [];
  table.keys.forEach(({ parameter, colour }, k) => {
    const column = table.columns[k];
    if (colour === null || column === undefined) return;
    columns.push(column);
    keys.push({ parameter, colour, words: `${parameter.name}, ${colour}` });
  });
  const { rows, takenAt } = table;
  const first = seriesOfTable(table, 0, history.specification.id);
  return {
    keys,
    vectors: table.rows.map((_, i) => columns.map((column) => column[i] ?? Number.NaN)),
    takenAt,
    calendar: { ...first, name: "the strips", colour: null, rows, takenAt },
  };
}
