import { InputError, requireEntries, requireNumber, requireObject } from "../../input/index.ts";
import { type DevelopingTank, requireSpiral, type TankSpiral } from "./developing-tank.ts";
import { allPatterns, exactPacking, firstFit, packed, sum } from "./packing-search.ts";

/** Films that take the same place in a tank. */
export interface PackingKind {
  readonly spiral: TankSpiral;
  /** Working solution one such film must have, mL; 0 if only covering counts. */
  readonly leastMl: number;
  readonly films: number;
}

/** One batch: how many films of each kind, in the order of the kinds. */
export interface PackedBatch {
  readonly films: readonly number[];
  /** What covers the spirals, mL. */
  readonly coverMl: number;
  /** That, or more where the films must have more, mL. */
  readonly volumeMl: number;
  readonly spirals: number;
}

/** Fewest batches for some films in a tank. */
export interface PackedBatches {
  readonly batches: readonly PackedBatch[];
  /** True if no packing with fewer batches exists; false where only first-fit could be tried. */
  readonly proven: boolean;
}

/** More at a time is a slip of the pen. */
const MOST_FILMS = 10_000;

/** Films left times tank loads that the exact search may look at. */
const MOST_TRIALS = 1_000_000;

/**
 * Packs films into as few tanks as possible; among those with the fewest mixed formats and with
 * full tanks first.
 *
 * Exact by dynamic programming over how many films of each kind are left. A batch fits if its
 * spirals fit the column and its volume (the larger of what covers the spirals and what the films
 * must have) fits the tank.
 *
 * @param kinds films that take the same place, each with a count from 0 to 10,000
 * @param tank the tank
 * @returns batches, full ones first; `proven` is false only beyond about a million trials
 * @throws InputError if one film alone does not fit
 *
 * @example
 * const tank = developingTank("plastic, 2 reels")
 * const spiral = tank.spirals[0]
 * packBatches([{ spiral, leastMl: 0, films: 5 }], tank).batches.map((b) => b.films[0]) // => [2, 2, 1]
 */
export function packBatches(kinds: readonly PackingKind[], tank: DevelopingTank): PackedBatches {
  const where = "packBatches";
  requireEntries(where, "kinds", kinds);
  requireObject(where, "tank", tank, "an object with id, columnHeightMm, fullMl, …");
  requireNumber(where, "tank.columnHeightMm", tank.columnHeightMm, { above: 0, unit: "mm" });
  requireNumber(where, "tank.fullMl", tank.fullMl, { above: 0, unit: "mL" });
  kinds.forEach((kind, i) => {
    requireNumber(where, `kinds[${i}].films`, kind.films, {
      min: 0,
      max: MOST_FILMS,
      whole: true,
    });
    requireNumber(where, `kinds[${i}].leastMl`, kind.leastMl, { min: 0, unit: "mL" });
    requireSpiral(where, `kinds[${i}].spiral`, kind.spiral);
    requireOneFits(where, kind, tank);
  });
  const counts = kinds.map((kind) => kind.films);
  const states = counts.reduce((product, count) => product * (count + 1), 1);
  const patterns = allPatterns(kinds, tank);
  const proven = states * patterns.length <= MOST_TRIALS;
  const films = proven ? exactPacking(counts, patterns) : firstFit(counts, kinds, tank);
  const batches = films.map((each) => packed(each, kinds));
  batches.sort((a, b) => sum(b.films) - sum(a.films) || b.volumeMl - a.volumeMl);
  return { batches, proven };
}

function requireOneFits(where: string, kind: PackingKind, tank: DevelopingTank): void {
  const { spiral, leastMl } = kind;
  if (spiral.heightMm > tank.columnHeightMm || spiral.coverMl > tank.fullMl) {
    const advice = `write a bigger tank: one ${spiral.name} is ${spiral.heightMm} mm high and takes ${spiral.coverMl} mL, "${tank.id}" holds ${tank.columnHeightMm} mm and ${tank.fullMl} mL`;
    throw new InputError(where, "tank", tank.id, advice);
  }
  if (leastMl > tank.fullMl) {
    const advice = `write a stronger dilution or a bigger tank: one film must have ${Math.ceil(leastMl)} mL of working solution and "${tank.id}" holds ${tank.fullMl} mL`;
    throw new InputError(where, "leastMl", leastMl, advice);
  }
}
