import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { requireNumber } from "../input/index.ts";

/** A stream of random numbers that is the same for the same seed, on every machine. */
export interface RandomStream {
  /** Uniform on [0, 1), with 53 random bits. */
  readonly uniform: () => number;
  /** Standard normal. */
  readonly normal: () => number;
  /** A whole number from `min` to `max`, both included and whole. */
  readonly integer: (min: number, max: number) => number;
}

/**
 * A seeded stream of random numbers (generator xoroshiro128+; normals by the polar method).
 *
 * @param seed a whole number
 * @returns `uniform`, `normal` and `integer`, which draw from one stream
 * @throws InputError if the seed is not a whole number
 *
 * @example
 * seededRandom(7).integer(1, 6) === seededRandom(7).integer(1, 6) // => true
 *
 * Source: G. Marsaglia and T. A. Bray, SIAM Review 6 (1964) 260–264 (polar method).
 */
export function seededRandom(seed: number): RandomStream {
  requireNumber("seededRandom", "seed", seed, { whole: true });
  const generator = xoroshiro128plus(seed);
  const bits = () => generator.next() >>> 0;
  const uniform = () => ((bits() >>> 5) * 67_108_864 + (bits() >>> 6)) / 9_007_199_254_740_992;
  let spare: number | undefined;
  const normal = () => {
    if (spare !== undefined) {
      const value = spare;
      spare = undefined;
      return value;
    }
    for (;;) {
      const u = 2 * uniform() - 1;
      const v = 2 * uniform() - 1;
      const s = u * u + v * v;
      if (s > 0 && s < 1) {
        const factor = Math.sqrt((-2 * Math.log(s)) / s);
        spare = v * factor;
        return u * factor;
      }
    }
  };
  const integer = (min: number, max: number) => {
    requireNumber("seededRandom", "min", min, { whole: true });
    requireNumber("seededRandom", "max", max, { whole: true, min });
    return min + Math.floor(uniform() * (max - min + 1));
  };
  return { uniform, normal, integer };
}
