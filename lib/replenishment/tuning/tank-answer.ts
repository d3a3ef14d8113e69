import { requireNumber } from "../../input/index.ts";

/**
 * How a tank answers to a rate that is off by the fraction ε, in units of the sensitivity, `turnovers`
 * after the change. From the balance, x' = ε − (1 + ε)·x with turnovers counted as the pump is set:
 *
 * x(n) = ε/(1 + ε) · (1 − e^(−(1 + ε)·n))
 *
 * Near ε = 0 that is ε·(1 − e^−n). A pump that under-delivers also exchanges the bath more slowly and
 * leads farther: 30 % too little settles where a linear answer would say 43 %.
 *
 * @param error fraction by which the delivered rate is off, −1 or more
 * @param turnovers since the change, counted as the pump is set; 0 before it
 * @returns x; times the sensitivity it is a density
 * @throws InputError if one of the two is no finite number
 *
 * @example
 * rateAnswer(-0.16, 2) // => -0.154976
 *
 * Source: derived from the balance of a well-stirred tank.
 */
export function rateAnswer(error: number, turnovers: number): number {
  // Told apart first: this stands in the innermost loop of the fits.
  if (!Number.isFinite(error + turnovers)) {
    requireNumber("rateAnswer", "error", error);
    requireNumber("rateAnswer", "turnovers", turnovers);
  }
  if (turnovers <= 0) return 0;
  const x = (1 + error) * turnovers;
  return error * turnovers * (x < 1e-9 ? 1 - x / 2 : -Math.expm1(-x) / x);
}

/** Share of the full answer reached, 1 − e^−n. */
export function responseShare(turnoversSince: number): number {
  return turnoversSince > 0 ? -Math.expm1(-turnoversSince) : 0;
}
