import { InputError, requireObject } from "../../input/index.ts";
import type { Aims, Colour } from "../strip.ts";
import type { CrossoverDifference, StripPair } from "./crossover-result.ts";
import { requirePatches, roundDensity } from "./density.ts";

/** Lets pairs in if each has a strip of the old batch and one of the same new batch, whose id it returns. */
export function requirePairs(where: string, oldAims: Aims, pairs: readonly StripPair[]): string {
  const to = pairs[0]?.new?.stripBatch;
  if (to === undefined) {
    throw new InputError(where, "pairs", "empty", "run at least one strip of each batch together");
  }
  if (to === oldAims.stripBatch) {
    const advice = `write strips of another batch than the old one (${oldAims.stripBatch})`;
    throw new InputError(where, "pairs[0].new.stripBatch", to, advice);
  }
  pairs.forEach((pair, i) => {
    requireObject(where, `pairs[${i}]`, pair, "{ old, new }, two strips");
    for (const [side, batch] of [
      ["old", oldAims.stripBatch],
      ["new", to],
    ] as const) {
      const strip = pair[side];
      const at = `pairs[${i}].${side}`;
      requireObject(where, at, strip, "a strip");
      if (strip.stripBatch !== batch) {
        const advice = `write a strip of batch ${JSON.stringify(batch)}`;
        throw new InputError(where, `${at}.stripBatch`, strip.stripBatch, advice);
      }
      if (strip.process !== oldAims.process) {
        const advice = `write a strip of process ${JSON.stringify(oldAims.process)}`;
        throw new InputError(where, `${at}.process`, strip.process, advice);
      }
      requirePatches(where, `${at}.patches`, strip.patches);
    }
  });
  return to;
}

/** Mean, scatter and moved aim of one patch and colour over its pairs. */
export function difference(
  patch: string,
  colour: Colour,
  pairs: readonly StripPair[],
  oldAim: number,
  ownAim: number | undefined,
): CrossoverDifference {
  const n = pairs.length;
  const steps = pairs.map(
    (pair) => (pair.new.patches[patch]?.[colour] ?? 0) - (pair.old.patches[patch]?.[colour] ?? 0),
  );
  const mean = steps.reduce((sum, step) => sum + step, 0) / n;
  const squares = steps.reduce((sum, step) => sum + (step - mean) ** 2, 0);
  const sd = n > 1 ? roundDensity(Math.sqrt(squares / (n - 1))) : null;
  const aim = roundDensity(oldAim + mean);
  return {
    patch,
    colour,
    pairs: n,
    meanDifference: roundDensity(mean),
    standardDeviation: sd,
    standardError: sd === null ? null : sd / Math.sqrt(n),
    aim,
    againstOwnAim: ownAim === undefined ? null : roundDensity(aim - ownAim),
  };
}
