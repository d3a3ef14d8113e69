import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import type { KitPart } from "../dilution/kit-sheet.ts";
import { requireVolumeMl, requireVolumeOrNoneMl } from "../dilution/require-volume.ts";

/** A replenisher as a lab's file names it: what it is used for, and what it is mixed from. */
export interface ReplenisherKit {
  readonly name: string;
  readonly rateMlPerM2: number;
  readonly parts: readonly KitPart[];
  /** Share of the final volume that is put in first, as for `kitSheet`. */
  readonly startWaterFraction: number;
  /** What the parts contain, for the cautions. */
  readonly substances: readonly string[];
}

/** How much of one replenisher to mix. */
export interface BatchesToMix {
  readonly name: string;
  readonly rateMlPerM2: number;
  readonly weekL: number;
  /** For filling fresh tanks, L. */
  readonly tankL: number;
  readonly needL: number;
  /** Whole batches that cover the need. */
  readonly batches: number;
  readonly mixL: number;
}

/**
 * Whole batches of each replenisher for a week's area, and for the fresh tanks filled from it.
 *
 * need = area · rate + tanks; batches = ⌈need / batch⌉
 *
 * @param given.replenishers name and rate in mL/m², at least 0
 * @param given.areaM2 area of the week, m², at least 0
 * @param given.batchMl volume of one batch, mL, above 0
 * @param given.forTanksMl mL of a replenisher that fresh tanks take, by its name; default none
 * @returns one row a replenisher, in L; a mix is never less than the need, nor a batch more
 * @throws InputError for a number out of range or a tank's replenisher that is not in the list
 *
 * @example
 * batchesToMix({ replenishers: [{ name: "fixer replenisher", rateMlPerM2: 780 }], areaM2: 24.68, batchMl: 5000 })[0]?.mixL // => 20
 *
 * Source: arithmetic.
 */
export function batchesToMix(given: {
  readonly replenishers: readonly Pick<ReplenisherKit, "name" | "rateMlPerM2">[];
  readonly areaM2: number;
  readonly batchMl: number;
  readonly forTanksMl?: Readonly<Record<string, number>>;
}): readonly BatchesToMix[] {
  const where = "batchesToMix";
  requireObject(where, "given", given, "an object with replenishers, areaM2 and batchMl");
  requireEntries(where, "replenishers", given.replenishers);
  const area = requireNumber(where, "areaM2", given.areaM2, { min: 0, max: 1e9, unit: "m²" });
  const batchL = requireVolumeMl(where, "batchMl", given.batchMl) / 1000;
  const tanks = given.forTanksMl ?? {};
  const names = given.replenishers.map(({ name }) => name);
  for (const name of Object.keys(tanks)) {
    if (names.includes(name)) continue;
    throw new InputError(where, "forTanksMl", name, `write one of ${names.join(", ")}`);
  }
  return given.replenishers.map(({ name, rateMlPerM2 }) => {
    const bounds = { min: 0, max: 1e6, unit: "mL/m²" };
    const rate = requireNumber(where, `rateMlPerM2 of ${name}`, rateMlPerM2, bounds);
    const weekL = (area * rate) / 1000;
    const tankL = requireVolumeOrNoneMl(where, `forTanksMl of ${name}`, tanks[name] ?? 0) / 1000;
    // A hair of slack: a need of exactly two batches is two.
    const batches = Math.ceil(((weekL + tankL) / batchL) * (1 - 1e-12));
    const mixL = batches * batchL;
    return { name, rateMlPerM2: rate, weekL, tankL, needL: weekL + tankL, batches, mixL };
  });
}
