/**
 * A point closer to a line than this many sigma is on it. Far finer than any reading, and coarser
 * than the rounding of double arithmetic, so that "strictly beyond" means what the printed decimals
 * say.
 */
export const onTheLineSigma = 1e-9;

/** Whether `distance` is strictly greater than `limit`, both in sigma. */
export function strictlyBeyond(distance: number, limit: number): boolean {
  return distance > limit + onTheLineSigma;
}
