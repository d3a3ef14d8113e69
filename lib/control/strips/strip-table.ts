import { closestWord, InputError, requireEntries, requireObject } from "../../input/index.ts";
import type { Aims, Strip } from "../strip.ts";
import { aimsOfBatch } from "./aims-of-batch.ts";
import { requireAims } from "./density.ts";
import { requireLocalTime } from "./local-time.ts";
import { requireSpecification } from "./require-specification.ts";
import { deviationRow, type SeriesKey, seriesKeys } from "./series-keys.ts";
import type { StripHistory } from "./strip-history.ts";

/**
 * The strips of one process in the order of time, as columns. NaN stands for a missing reading
 * inside this table and never leaves the room.
 */
export interface StripTable {
  readonly keys: readonly SeriesKey[];
  /** For each strip in the order of time, its index in the array that was given. */
  readonly rows: readonly number[];
  readonly takenAt: readonly string[];
  /** For each key, a deviation for each strip. */
  readonly columns: readonly Float64Array[];
  /** For each strip, its batch as an index into `batchIds`. */
  readonly batch: Int32Array;
  readonly batchIds: readonly string[];
  /** For each batch, whether its aims came from a crossover. */
  readonly crossedOver: readonly boolean[];
  /** Strips of this process left out because they are later than `asOf`. */
  readonly later: number;
}

/** Lays the strips of a process out as columns of deviations, in one pass. */
export function stripTable(where: string, history: StripHistory): StripTable {
  const { specification, asOf } = history;
  requireSpecification(where, specification);
  if (asOf !== undefined) requireLocalTime(where, "asOf", asOf);
  if (!Array.isArray(history.strips)) {
    throw new InputError(where, "strips", history.strips, "write an array of strips");
  }
  const { rows, later } = rowsInTime(where, history);
  const aims = aimsById(where, history);
  const indexOf = new Map<string, number>();
  const list = [...aims.values()];
  for (const [i, each] of list.entries()) indexOf.set(each.stripBatch, i);

  const keys = seriesKeys(specification);
  const columns = keys.map(() => new Float64Array(rows.length));
  const batch = new Int32Array(rows.length);
  const takenAt = new Array<string>(rows.length);
  const line = new Float64Array(keys.length);
  for (let i = 0; i < rows.length; i++) {
    const row = rows[i] ?? 0;
    const strip = history.strips[row];
    if (strip === undefined) continue;
    const index = indexOf.get(strip.stripBatch);
    const its = index === undefined ? undefined : list[index];
    if (index === undefined || its === undefined) throw unknownBatch(where, history, row, list);
    batch[i] = index;
    takenAt[i] = strip.takenAt;
    try {
      deviationRow(where, keys, strip.patches, its, line);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      const at = strip.source ? `${strip.source.file} line ${strip.source.line}` : `strips[${row}]`;
      const advice = error.message.slice(error.message.indexOf("; ") + 2);
      throw new InputError(where, `${at}: ${error.argument}`, error.value, advice);
    }
    for (let k = 0; k < columns.length; k++) {
      const column = columns[k];
      if (column !== undefined) column[i] = line[k] ?? Number.NaN;
    }
  }
  return {
    keys,
    rows,
    takenAt,
    columns,
    batch,
    batchIds: list.map((each) => each.stripBatch),
    crossedOver: list.map((each) => each.basis === "crossover"),
    later,
  };
}

function rowsInTime(
  where: string,
  history: StripHistory,
): { rows: readonly number[]; later: number } {
  const { strips, specification, asOf } = history;
  const rows: number[] = [];
  let later = 0;
  let sorted = true;
  let previous = "";
  for (let i = 0; i < strips.length; i++) {
    const strip = strips[i];
    if (strip === undefined || strip.process !== specification.id) continue;
    const time = requireLocalTime(where, `strips[${i}].takenAt`, strip.takenAt);
    if (typeof strip.patches !== "object" || strip.patches === null) noPatches(where, i, strip);
    // ISO 8601 local times sort as text.
    if (asOf !== undefined && time > asOf) {
      later++;
      continue;
    }
    if (time < previous) sorted = false;
    previous = time;
    rows.push(i);
  }
  const timeOf = (row: number) => strips[row]?.takenAt ?? "";
  // Array.prototype.sort is stable: strips of the same minute keep the order in which they came.
  if (!sorted) rows.sort((a, b) => (timeOf(a) < timeOf(b) ? -1 : timeOf(a) > timeOf(b) ? 1 : 0));
  return { rows, later };
}

function noPatches(where: string, i: number, strip: Strip): never {
  const advice = "write the readings of each patch, { ld: { red, green, blue }, … }";
  throw new InputError(where, `strips[${i}].patches`, strip.patches, advice);
}

function aimsById(where: string, history: StripHistory): ReadonlyMap<string, Aims> {
  const process = history.specification.id;
  const aims = new Map<string, Aims>();
  requireEntries(where, "batches", history.batches, "a list of batches of strips");
  for (const [i, batch] of history.batches.entries()) {
    requireObject(where, `batches[${i}]`, batch, "a batch of strips");
    if (batch.process === process) aims.set(batch.id, aimsOfBatch(batch));
  }
  const crossovers = history.crossovers ?? [];
  requireEntries(where, "crossovers", crossovers, "a list of crossovers, or leave it out");
  for (const [i, { aims: moved }] of crossovers.entries()) {
    requireAims(where, `crossovers[${i}].aims`, moved);
    if (moved.process === process) aims.set(moved.stripBatch, moved);
  }
  return aims;
}

function unknownBatch(
  where: string,
  history: StripHistory,
  row: number,
  known: readonly Aims[],
): InputError {
  const strip = history.strips[row];
  const id = strip?.stripBatch ?? "";
  const ids = known.map((each) => each.stripBatch);
  const near = closestWord(id, ids);
  const meant = near === undefined ? "" : ` (did you mean ${JSON.stringify(near)}?)`;
  const list = ids.length === 0 ? "none is registered" : `registered: ${ids.join(", ")}`;
  const at = strip?.source ? `${strip.source.file} line ${strip.source.line}` : `strips[${row}]`;
  const advice = `register the batch with its reference reading and correction; ${list}${meant}`;
  return new InputError(where, `${at}: stripBatch`, id, advice);
}
