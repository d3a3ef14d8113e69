import { requireNumber, requireObject, requireOneOf } from "../../input/index.ts";
import { exactLimitsRunLength } from "./ewma-exact-limits.ts";
import { ewmaHalfWidth, twoSidedEwmaKernel, upperEwmaKernel } from "./ewma-kernel.ts";
import { kernelRunLength } from "./kernel-run-length.ts";
import type { AverageRunLength } from "./run-length.ts";

/** An EWMA chart of standardised readings. */
export interface EwmaDesign {
  /** Weight of the newest reading, from 0.005 to 1. */
  readonly lambda: number;
  /** Distance of the limits from the centre line in standard deviations of the average, the L of the literature; 0.1 to 6. */
  readonly limitWidth: number;
}

/** What the run length is wanted for. */
export interface EwmaRunLengthOptions {
  /** Shift of the mean in standard deviations of a reading, −10 to 10; default 0, in control. */
  readonly shift?: number;
  /** `"two-sided"` (default), or `"upper"`: the average never falls below the centre line. */
  readonly sides?: "two-sided" | "upper";
  /** `"asymptotic"` (default), or `"exact"`: limits that widen from the first reading (two-sided only). */
  readonly limits?: "asymptotic" | "exact";
  /** First value of the average as a fraction of the limit, −1 to 1; default 0. 0.5 is the usual fast initial response. */
  readonly headStart?: number;
}

/**
 * Average run length of an EWMA chart, Z = λ·X + (1 − λ)·Z, that signals when |Z| > L·√(λ/(2 − λ)).
 *
 * Solves N(z) = 1 + ∫ N(y)·φ((y − (1 − λ)z)/λ − shift)/λ dy by Gauss–Legendre collocation; good to
 * about ten digits. Readings are independent and normal with known mean and standard deviation;
 * a mean estimated from few readings makes the true run length differ.
 *
 * @param design `lambda` and `limitWidth`
 * @param options `shift`, `sides`, `limits`, `headStart`
 * @returns `zeroState` and `steadyState`, in readings
 * @throws InputError if an argument is out of range or the run length is beyond double precision
 *
 * @example
 * ewmaRunLength({ lambda: 0.1, limitWidth: 2.814 }).zeroState // => 499.5795501
 *
 * Source: S. V. Crowder, Technometrics 29 (1987) 401–407; J. M. Lucas and M. S. Saccucci,
 * Technometrics 32 (1990) 1–12.
 */
export function ewmaRunLength(
  design: EwmaDesign,
  options: EwmaRunLengthOptions = {},
): AverageRunLength {
  const where = "ewmaRunLength";
  requireObject(where, "design", design, "an object with lambda and limitWidth");
  const lambda = requireNumber(where, "lambda", design.lambda, { min: 0.005, max: 1 });
  const width = requireNumber(where, "limitWidth", design.limitWidth, { min: 0.1, max: 6 });
  const shift = requireNumber(where, "shift", options.shift ?? 0, { min: -10, max: 10 });
  const sides = requireOneOf(where, "sides", options.sides ?? "two-sided", ["two-sided", "upper"]);
  const both = sides === "two-sided";
  const kinds = both ? (["asymptotic", "exact"] as const) : (["asymptotic"] as const);
  const limits = requireOneOf<"asymptotic" | "exact">(
    where,
    "limits",
    options.limits ?? "asymptotic",
    kinds,
  );
  const headStart = requireNumber(where, "headStart", options.headStart ?? 0, {
    min: both ? -1 : 0,
    max: 1,
  });
  const half = ewmaHalfWidth(lambda, width);
  const kernel = both ? twoSidedEwmaKernel(lambda, half) : upperEwmaKernel(lambda, half);
  const result = kernelRunLength(where, kernel, shift, headStart * half);
  if (limits === "asymptotic") return result;
  return {
    ...result,
    zeroState: exactLimitsRunLength(where, kernel, lambda, shift, headStart * half, half),
  };
}
