import data from "../../../data/development/time-temperature.json" with { type: "json" };
import { requireOneOf } from "../../input/index.ts";
import type { TimeTemperatureRow } from "../rate/published-table-model.ts";

/** A printed table of developing times, keyed by the kind of developer and film. */
export interface PublishedTimeTable {
  readonly id: string;
  /** Kind of developer and its dilution. */
  readonly developer: string;
  readonly film: string;
  readonly format: string;
  /** What the film was developed in. */
  readonly vessel: string;
  /** Step to which the times are printed, minutes. */
  readonly roundingMin: number;
  readonly rows: readonly PublishedTimeRow[];
  readonly source: string;
  readonly howObtained: string;
}

/** A row with both printed temperatures; `temperatureC` is the exact conversion of the °F. */
export interface PublishedTimeRow extends TimeTemperatureRow {
  readonly printedF: number;
  readonly printedC: number;
}

/**
 * The printed time–temperature tables that come with the library
 * (data/development/time-temperature.json). Film names are letters: what matters is the kind of
 * developer; use the table of your own film wherever there is one.
 *
 * @example
 * publishedTimeTables.length // => 6
 *
 * Source: Kodak publication F-32, part 2.
 */
export const publishedTimeTables: readonly PublishedTimeTable[] = data.tables;

/**
 * One printed table by its id.
 *
 * @param id as in `publishedTimeTables`
 * @returns the table, with its rows, its source and the step of its times in minutes
 * @throws InputError that lists the ids
 *
 * @example
 * publishedTimeTable("ascorbate-1-1-135-film-a").rows[0].timeMin // => 8.75
 *
 * Source: Kodak publication F-32, part 2.
 */
export function publishedTimeTable(id: string): PublishedTimeTable {
  const ids = publishedTimeTables.map((each) => each.id);
  const known = requireOneOf("publishedTimeTable", "id", id, ids);
  const found = publishedTimeTables.find((each) => each.id === known);
  if (found === undefined) throw new Error("an id that passed the door has its table");
  return found;
}
