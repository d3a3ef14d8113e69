import { requireNumber } from "../../input/index.ts";
import { studentTQuantile } from "../../numerics/index.ts";

/** A fitted number with its standard error and its confidence interval (Student's t). */
export interface FittedValue {
  readonly value: number;
  readonly standardError: number;
  readonly lower: number;
  readonly upper: number;
}

/** Half-width of a two-sided interval in standard errors. */
export function studentFactor(where: string, confidence: number, degreesOfFreedom: number): number {
  requireNumber(where, "confidence", confidence, {
    above: 0,
    below: 1,
    hint: "0.95 is the usual 95 %",
  });
  return studentTQuantile((1 + confidence) / 2, degreesOfFreedom);
}

/** A value with its error and interval, all multiplied by a scale. */
export function fittedValue(
  value: number,
  standardError: number,
  factor: number,
  scale = 1,
): FittedValue {
  return {
    value: value * scale,
    standardError: standardError * Math.abs(scale),
    lower: value * scale - factor * standardError * Math.abs(scale),
    upper: value * scale + factor * standardError * Math.abs(scale),
  };
}

/** The exponential of a value with its error (first order) and interval (exact). */
export function exponentialOf({ value, standardError, lower, upper }: FittedValue): FittedValue {
  return {
    value: Math.exp(value),
    standardError: Math.exp(value) * standardError,
    lower: Math.exp(lower),
    upper: Math.exp(upper),
  };
}
