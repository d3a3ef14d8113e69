import type { Patches, StripBatch } from "../control/index.ts";
import { InputError, requireNumber } from "../input/index.ts";
import { consecutiveDays } from "./days.ts";

/** A batch of control strips of a simulated line: as it is registered, and as it truly is. */
export interface SimulatedBatch extends StripBatch {
  /** By how much its strips truly lie off these aims, density: why a crossover is run. */
  readonly aimsOff?: Patches;
  /**
   * Mornings from `firstUsed` on, on which one of its strips runs beside one of the batch before; then
   * it takes over. Default 0.
   */
  readonly pairedDays?: number;
}

/** The batches as the lab's register has them. */
export function registeredBatches(batches: readonly SimulatedBatch[]): readonly StripBatch[] {
  return batches.map(({ aimsOff, pairedDays, ...registered }) => registered);
}

/** Which batch a day's strips come from, and which runs beside it at start-up. */
export interface BatchesOfDay {
  readonly used: SimulatedBatch;
  readonly paired?: SimulatedBatch;
}

/** Sorts out which batch is used when. The first is in use from the start. */
export function batchesByDay(
  where: string,
  batches: readonly SimulatedBatch[],
  days: readonly string[],
): readonly BatchesOfDay[] {
  const [first, ...later] = batches;
  if (first === undefined) {
    throw new InputError(where, "batches", batches, "write at least one batch of strips");
  }
  const changes = later.map((batch) => {
    const paired = requireNumber(where, `pairedDays of ${batch.id}`, batch.pairedDays ?? 0, {
      min: 0,
      whole: true,
    });
    const until = consecutiveDays(where, batch.firstUsed, paired + 1).at(-1) ?? "";
    return { batch, from: batch.firstUsed ?? "", until };
  });
  return days.map((day) => {
    const used = changes.findLast(({ until }) => until <= day)?.batch ?? first;
    const paired = changes.find(({ from, until }) => from <= day && day < until)?.batch;
    return paired === undefined ? { used } : { used, paired };
  });
}
