import { type RandomStream, seededRandom } from "../numerics/index.ts";

/**
 * A stream of its own for each part of the lab, so that a change to one leaves the others as they are.
 * Seeds that lie side by side are scattered first (the finaliser of MurmurHash3, in the public domain).
 */
export function partStream(seed: number, part: string): RandomStream {
  // A seed beyond 32 bits, or below zero, must not meet another one.
  let hash = scatter(seed ^ scatter(Math.floor(seed / 2 ** 32)));
  for (const letter of part) hash = scatter(hash ^ (letter.codePointAt(0) ?? 0));
  return seededRandom(hash);
}

function scatter(value: number): number {
  let x = value | 0;
  x = Math.imul(x ^ (x >>> 16), 0x85ebca6b);
  x = Math.imul(x ^ (x >>> 13), 0xc2b2ae35);
  return (x ^ (x >>> 16)) | 0;
}
