import { requireNumber } from "../input/index.ts";

/** Lets a probability in that a quantile exists for: greater than 0 and less than 1. */
export function requireProbability(where: string, p: number): number {
  return requireNumber(where, "p", p, { above: 0, below: 1 });
}

/** Lets degrees of freedom in: greater than 0. */
export function requireDegreesOfFreedom(where: string, degreesOfFreedom: number): number {
  return requireNumber(where, "degreesOfFreedom", degreesOfFreedom, { above: 0 });
}
