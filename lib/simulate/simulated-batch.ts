import { aimsOfBatch, type Patches, type StripBatch } from "../control/index.ts";
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
  process: string,
  batches: readonly SimulatedBatch[],
  days: readonly string[],
): readonly BatchesOfDay[] {
  requireBatches(where, process, batches);
  const [first, ...later] = batches;
  const changes = later.map((batch) => {
    const from = batch.firstUsed ?? "";
    const paired = requireNumber(where, `pairedDays of ${batch.id}`, batch.pairedDays ?? 0, {
      min: 0,
      max: 3660,
      whole: true,
    });
    const until = consecutiveDays(where, from, paired + 1).at(-1) ?? "";
    return { batch, from, until };
  });
  return days.flatMap((day) => {
    const used = changes.findLast(({ until }) => until <= day)?.batch ?? first;
    const paired = changes.find(({ from, until }) => from <= day && day < until)?.batch;
    if (used === undefined) return [];
    return [paired === undefined ? { used } : { used, paired }];
  });
}

/** Lets batches in that are of the line's process, told apart, and each later one dated after the last. */
function requireBatches(where: string, process: string, batches: readonly SimulatedBatch[]): void {
  if (!Array.isArray(batches) || batches.length === 0) {
    throw new InputError(where, "batches", batches, "write a list of at least one batch of strips");
  }
  batches.forEach((batch, i) => {
    if (batch.process !== process) {
      const advice = `write ${JSON.stringify(process)}, the line's own`;
      throw new InputError(where, `process of batch ${batch.id}`, batch.process, advice);
    }
    if (batches.findIndex(({ id }) => id === batch.id) < i) {
      throw new InputError(where, "batches.id", batch.id, "write each batch once");
    }
    // Adds up reference and correction, and says what is wrong with them.
    aimsOfBatch(batch);
    if (i === 0) return;
    const { firstUsed = "" } = batch;
    if (!isDate(firstUsed) || firstUsed <= (batches[i - 1]?.firstUsed ?? "")) {
      const advice =
        "write the day of the change as YYYY-MM-DD, each batch later than the one before";
      throw new InputError(where, `firstUsed of batch ${batch.id}`, batch.firstUsed, advice);
    }
  });
}

function isDate(text: string): boolean {
  const time = /^\d{4}-\d\d-\d\d$/.test(text) ? Date.parse(`${text}T00:00Z`) : Number.NaN;
  return !Number.isNaN(time) && new Date(time).toISOString().slice(0, 10) === text;
}
