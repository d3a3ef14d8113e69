import { InputError, requireNumber } from "../input/index.ts";

/** Lets a probability in that a quantile exists for: greater than 0 and less than 1. */
export function requireProbability(where: string, p: number): number {
  return requireNumber(where, "p", p, { above: 0, below: 1 });
}

/** Lets degrees of freedom in: greater than 0, and not above what the function is exact for. */
export function requireDegreesOfFreedom(
  where: string,
  degreesOfFreedom: number,
  max?: number,
): number {
  const bounds = max === undefined ? { above: 0 } : { above: 0, max };
  return requireNumber(where, "degreesOfFreedom", degreesOfFreedom, bounds);
}

/** Lets a quantile out if a number can hold it: with few degrees of freedom the tails are long. */
export function requireFiniteQuantile(where: string, p: number, quantile: number): number {
  if (Number.isFinite(quantile)) return quantile;
  const advice =
    "the quantile is too large for a number; write a p further from 0 and 1, or more degrees of freedom";
  throw new InputError(where, "p", p, advice);
}
