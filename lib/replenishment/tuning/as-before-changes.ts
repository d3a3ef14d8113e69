import type { KnownAnswer } from "./known-rate-answer.ts";

/**
 * A strip's deviations as they would be had the lab not changed the rate itself: the tank's answer x to
 * those changes taken off, and what is left put up for them. An error ε moves a bath that answers to them
 * by y' = ε·(1 − x) − (1 + ε)·y, so y is that of an unchanged bath times 1 less x as the tank carries it
 * on: exactly where x has settled, and to the second order of both where it has not.
 */
export function asBeforeChanges(
  deviations: readonly number[],
  sensitivity: readonly number[],
  { answer, carried }: KnownAnswer,
): number[] {
  return deviations.map((d, c) => (d - (sensitivity[c] ?? 0) * answer) / (1 - carried));
}
