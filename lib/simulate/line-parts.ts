import type { SimulatedBatch } from "./simulated-batch.ts";
import type { SimulatedEvent } from "./simulated-event.ts";
import type { SimulatedHeater, SimulatedLine } from "./simulated-line.ts";

/** The batches of strips of a line; if it names none, one whose aims are the line's reference. */
export function batchesOf(line: SimulatedLine): readonly SimulatedBatch[] {
  const { id, process, reference } = line;
  const only = { id: `${id.slice(0, 1).toUpperCase()}-1`, process, reference, correction: {} };
  return line.batches ?? [only];
}

/** All that a line keeps warm: its baths, and its dryer. */
export function heatersOf({ id, baths, dryerC }: SimulatedLine): readonly SimulatedHeater[] {
  if (dryerC === undefined) return baths;
  return [...baths, { id: `${id}-dryer`, role: "dryer", setTemperatureC: dryerC }];
}

/** Clock times at which a line's developer is mixed afresh, by the day's index. */
export function freshBathsOf(
  { id }: SimulatedLine,
  events: readonly SimulatedEvent[],
): ReadonlyMap<number, string> {
  const fresh = events.filter((event) => event.kind === "fresh-bath");
  return new Map(fresh.filter(({ line }) => line === id).map(({ day, at }) => [day, at]));
}
